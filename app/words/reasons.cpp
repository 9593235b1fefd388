#include "app/words/reasons.h"

#include "app/words/format.h"

#include <QCoreApplication>

namespace stow::words {

namespace {

QString say(const char* text) { return QCoreApplication::translate("words", text); }

QString text(const std::string& s) { return QString::fromStdString(s); }

} // namespace

QString reason(const fitting::Refusal& refusal)
{
    using fitting::Reason;
    if (refusal.verdict == fitting::Verdict::undecided) return say("not decided in the time");
    if (refusal.short_by) return say("%1 short").arg(length(*refusal.short_by));
    switch (refusal.reason) {
    case Reason::volume: return say("too little room in all");
    case Reason::edge: return refusal.item.empty() ? say("one edge is too long") : say("%1 is too long").arg(text(refusal.item));
    case Reason::turns: return say("does not fit the right way up");
    case Reason::cross_section: return say("not side by side");
    case Reason::weight: return say("too heavy for it");
    case Reason::bound: return say("does not go in: proven");
    case Reason::exhausted: return say("no way to arrange it");
    case Reason::sleeve: return say("too thick to slide in");
    case Reason::tube_section: return say("too thick for the tube");
    }
    return {};
}

QString reason(const planning::PassedOver& passed)
{
    using Why = planning::PassedOver::Why;
    switch (passed.why) {
    case Why::does_not_fit:
    case Why::undecided: return reason(passed.refusal);
    case Why::none_left: return say("none left");
    case Why::no_service: return say("no service takes it");
    case Why::dearer: return say("dearer in all");
    }
    return {};
}

QString violation(const fitting::Violation& v)
{
    using fitting::Rule;
    const QString item = text(v.item);
    switch (v.rule) {
    case Rule::complete: return say("%1 is missing, or there twice").arg(item);
    case Rule::inside: return say("%1 reaches out of the box by %2").arg(item, length(v.by));
    case Rule::apart: return say("%1 and %2 overlap by %3").arg(item, text(v.other), length(v.by));
    case Rule::turned: return say("%1 is turned as it may not be").arg(item);
    case Rule::load: return say("the content is too heavy for the box");
    case Rule::supported: return say("%1 hangs in the air").arg(item);
    case Rule::overloaded: return say("too much stands on %1").arg(item);
    case Rule::sleeve: return say("the content is too thick for the mailer by %1").arg(length(v.by));
    case Rule::tube: return say("%1 does not go into the tube").arg(item);
    case Rule::known_outer: return say("the box %1 is not known").arg(item);
    }
    return {};
}

QString reason(const postage::Refused& refused)
{
    using postage::NotTaken;
    const QString what = text(refused.what);
    switch (refused.reason) {
    case NotTaken::not_valid_then: return say("no prices for that day");
    case NotTaken::no_zone: return say("does not go to that country");
    case NotTaken::too_big: return refused.over_by ? say("%1 too much (%2)").arg(length(*refused.over_by), what) : say("too big (%1)").arg(what);
    case NotTaken::too_small: return say("too small (%1)").arg(what);
    case NotTaken::too_heavy: return say("too heavy");
    case NotTaken::not_admitted: return say("does not carry: %1").arg(what);
    case NotTaken::not_covered: return say("worth more than its cover");
    case NotTaken::no_price: return say("no price for this format and zone");
    }
    return {};
}

QString stuck(const planning::StuckOrder& s)
{
    using planning::Stuck;
    const QString good = text(s.good.text);
    switch (s.why) {
    case Stuck::unmatched_good: return say("a title that is not matched to a good yet");
    case Stuck::unknown_good: return say("%1 is not among the goods").arg(good);
    case Stuck::unpaid: return say("not paid yet");
    case Stuck::set_aside: return say("set aside");
    case Stuck::short_of_goods: return say("%n of %1 missing on the shelf").replace(QStringLiteral("%n"), QString::number(s.missing)).arg(good);
    case Stuck::nothing_holds_it: return say("no outer on hand holds it");
    case Stuck::no_service: return say("no service takes it");
    case Stuck::missing_size: return say("%1 has no size or weight yet").arg(good);
    }
    return {};
}

QString problem(const intake::Problem& p)
{
    using intake::ProblemKind;
    QString where = text(p.file);
    if (p.row > 0) where += say(", row %1").arg(p.row);
    if (!p.column.empty()) where += say(", column %1").arg(text(p.column));
    const QString value = text(p.value);
    const QString detail = text(p.detail);
    const auto what = [&]() -> QString {
        switch (p.kind) {
        case ProblemKind::unreadable_file: return say("cannot be opened");
        case ProblemKind::empty_file: return say("is empty");
        case ProblemKind::binary_file: return say("is not a table of text");
        case ProblemKind::line_too_long: return say("a line is longer than %1").arg(detail);
        case ProblemKind::too_many_rows: return say("has more rows than can be taken at once (%1)").arg(detail);
        case ProblemKind::unreadable_text: return say("is written in letters that could not be read");
        case ProblemKind::uneven_row: return say("has more or fewer cells than there are headings");
        case ProblemKind::missing_column: return say("this column is missing");
        case ProblemKind::missing_value: return say("nothing stands here");
        case ProblemKind::not_a_number: return say("“%1” is not a number").arg(value);
        case ProblemKind::not_positive: return say("“%1” must be more than zero").arg(value);
        case ProblemKind::out_of_range: return say("“%1” is out of range (%2)").arg(value, detail);
        case ProblemKind::not_a_date: return say("“%1” is not a date").arg(value);
        case ProblemKind::unknown_word: return say("“%1” is not one of: %2").arg(value, detail);
        case ProblemKind::unknown_code: return say("“%1” is not known").arg(value);
        case ProblemKind::unknown_currency: return say("“%1” is not a currency (ISO 4217)").arg(value);
        case ProblemKind::unknown_country: return say("“%1” is not a country").arg(value);
        case ProblemKind::bad_postcode: return say("the postcode “%1” does not look like one of that country").arg(value);
        case ProblemKind::bad_check_digit: return say("the check digit of “%1” is wrong").arg(value);
        case ProblemKind::duplicate: return say("“%1” stands here twice; the first was kept").arg(value);
        case ProblemKind::conflicting_rows: return say("rows of one order disagree: “%1”").arg(value);
        case ProblemKind::unknown_member: return say("“%1” is not known here").arg(value);
        case ProblemKind::bad_json: return say("is not JSON: %1").arg(detail);
        }
        return {};
    }();
    QString sentence = where + QStringLiteral(": ") + what + QLatin1Char('.');
    if (p.row > 0) sentence += QLatin1Char(' ') + (p.stops ? say("This row was left out.") : say("The row was taken."));
    return sentence;
}

QString finding(const shop::OrderFinding& f)
{
    using shop::OrderProblem;
    switch (f.problem) {
    case OrderProblem::unmatched_good: return say("line %1 is not matched to a good").arg(f.line + 1);
    case OrderProblem::unpaid: return say("not paid yet");
    case OrderProblem::bad_postcode: return say("the postcode does not look right");
    case OrderProblem::unknown_country: return say("the country is not known");
    case OrderProblem::missing_street: return say("no street");
    case OrderProblem::promised_passed: return say("the promised day has passed");
    case OrderProblem::joinable: return say("same buyer and address as another order");
    case OrderProblem::changed: return say("changed since you looked");
    case OrderProblem::note_to_read: return say("there is a note to read");
    }
    return {};
}

QString fault(const postage::SheetProblem& p)
{
    using postage::SheetFault;
    const auto what = [&]() -> QString {
        switch (p.fault) {
        case SheetFault::no_steps: return say("there are no prices");
        case SheetFault::gap_in_zones: return say("a place is in no zone");
        case SheetFault::overlap_in_zones: return say("a place is in two zones");
        case SheetFault::falling_price: return say("the price falls as the weight grows");
        case SheetFault::unreachable_step: return say("this step is never used");
        case SheetFault::unknown_service: return say("the service is not listed");
        case SheetFault::unknown_zone: return say("the zone is not listed");
        case SheetFault::unknown_format: return say("the format is not listed");
        case SheetFault::dates_reversed: return say("it ends before it begins");
        case SheetFault::expired: return say("it is no longer valid");
        case SheetFault::mixed_currency: return say("another currency than the sheet's");
        case SheetFault::repeated_step: return say("this step stands there twice");
        }
        return {};
    }();
    return text(p.where) + QStringLiteral(": ") + what;
}

QString state(shop::OrderState s)
{
    switch (s) {
    case shop::OrderState::arrived: return say("arrived");
    case shop::OrderState::checked: return say("checked");
    case shop::OrderState::set_aside: return say("set aside");
    case shop::OrderState::called_off: return say("called off");
    }
    return {};
}

QString state(shop::ParcelState s)
{
    switch (s) {
    case shop::ParcelState::planned: return say("planned");
    case shop::ParcelState::picked: return say("picked");
    case shop::ParcelState::packed: return say("packed");
    case shop::ParcelState::labelled: return say("labelled");
    case shop::ParcelState::handed_over: return say("handed over");
    case shop::ParcelState::came_back: return say("came back");
    }
    return {};
}

QString preference(planning::Preference p)
{
    switch (p) {
    case planning::Preference::smallest: return say("smallest box first");
    case planning::Preference::cheapest: return say("cheapest first");
    case planning::Preference::least_material: return say("least material first");
    }
    return {};
}

} // namespace stow::words
