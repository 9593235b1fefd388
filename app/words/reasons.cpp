#include "app/words/reasons.h"

#include "app/words/format.h"
#include "app/words/texts.h"

namespace stow::words {

QString reason(const fitting::Refusal& refusal)
{
    using fitting::Reason;
    if (refusal.verdict == fitting::Verdict::undecided) return Words::tr("not decided in the time");
    if (refusal.short_by) return Words::tr("%1 short").arg(length(*refusal.short_by));
    switch (refusal.reason) {
    case Reason::volume: return Words::tr("too little room in all");
    case Reason::edge:
        return refusal.item.empty() ? Words::tr("one edge is too long")
                                    : Words::tr("%1 is too long").arg(text(refusal.item));
    case Reason::turns: return Words::tr("does not fit the right way up");
    case Reason::cross_section: return Words::tr("not side by side");
    case Reason::weight: return Words::tr("too heavy for it");
    case Reason::bound: return Words::tr("does not go in: proven");
    case Reason::exhausted: return Words::tr("no way to arrange it");
    case Reason::sleeve: return Words::tr("too thick to slide in");
    case Reason::tube_section: return Words::tr("too thick for the tube");
    }
    return {};
}

QString reason(const planning::PassedOver& passed)
{
    using Why = planning::PassedOver::Why;
    switch (passed.why) {
    case Why::does_not_fit:
    case Why::undecided: return reason(passed.refusal);
    case Why::none_left: return Words::tr("none free");
    case Why::no_service: return Words::tr("no service takes it");
    case Why::dearer: return Words::tr("dearer in all");
    case Why::too_little_cushion: return Words::tr("too little cushion at its walls");
    case Why::too_late: return Words::tr("no service with it keeps the promised day");
    }
    return {};
}

QString violation(const fitting::Violation& v)
{
    using fitting::Rule;
    const QString item = text(v.item);
    switch (v.rule) {
    case Rule::complete: return Words::tr("%1 is missing, or there twice").arg(item);
    case Rule::inside: return Words::tr("%1 reaches out of the box by %2").arg(item, length(v.by));
    case Rule::apart: return Words::tr("%1 and %2 overlap by %3").arg(item, text(v.other), length(v.by));
    case Rule::turned: return Words::tr("%1 is turned as it may not be").arg(item);
    case Rule::load: return Words::tr("the content is too heavy for the box");
    case Rule::supported: return Words::tr("%1 hangs in the air").arg(item);
    case Rule::overloaded: return Words::tr("too much stands on %1").arg(item);
    case Rule::sleeve: return Words::tr("the content is too thick for the mailer by %1").arg(length(v.by));
    case Rule::tube: return Words::tr("%1 does not go into the tube").arg(item);
    case Rule::known_outer: return Words::tr("the box %1 is not known").arg(item);
    }
    return {};
}

// The limit of a format, which the core names in the words of a rate sheet.
static QString limit_named(const std::string& name)
{
    if (name == "length") return Words::tr("length");
    if (name == "width") return Words::tr("width");
    if (name == "height") return Words::tr("height");
    if (name == "sum") return Words::tr("all three sides together");
    if (name == "girth") return Words::tr("length and girth");
    if (name == "volume") return Words::tr("volume");
    return text(name);
}

QString reason(const postage::Refused& refused)
{
    using postage::NotTaken;
    const bool size = refused.reason == NotTaken::too_big || refused.reason == NotTaken::too_small;
    const QString what = size ? limit_named(refused.what) : text(refused.what);
    switch (refused.reason) {
    case NotTaken::not_valid_then: return Words::tr("no prices for that day");
    case NotTaken::no_zone: return Words::tr("does not go to that country");
    case NotTaken::too_big:
        return refused.over_by ? Words::tr("%1 too much (%2)").arg(length(*refused.over_by), what)
                               : Words::tr("too big (%1)").arg(what);
    case NotTaken::too_small: return Words::tr("too small (%1)").arg(what);
    case NotTaken::too_heavy: return Words::tr("too heavy");
    case NotTaken::not_admitted: return Words::tr("does not carry: %1").arg(what);
    case NotTaken::not_covered: return Words::tr("worth more than its cover");
    case NotTaken::no_price: return Words::tr("no price for this format and zone");
    }
    return {};
}

QString stuck(const planning::StuckOrder& s)
{
    using planning::Stuck;
    const QString good = text(s.good.text);
    switch (s.why) {
    case Stuck::unmatched_good: return Words::tr("a title that is not matched to a good yet");
    case Stuck::unknown_good: return Words::tr("%1 is not among the goods").arg(good);
    case Stuck::unpaid: return Words::tr("not paid yet");
    case Stuck::set_aside: return Words::tr("set aside");
    case Stuck::short_of_goods: return Words::tr("%n of %1 missing on the shelf", nullptr, s.missing).arg(good);
    case Stuck::nothing_holds_it: return Words::tr("no outer on hand holds it");
    case Stuck::no_service: return Words::tr("no service takes it");
    case Stuck::missing_size: return Words::tr("%1 has no size or weight yet").arg(good);
    case Stuck::no_gift_box_left: return Words::tr("no gift box for %1 left").arg(good);
    }
    return {};
}

QString what_is_wrong(const intake::Problem& p)
{
    using intake::ProblemKind;
    const QString value = text(p.value);
    const QString detail = text(p.detail);
    switch (p.kind) {
    case ProblemKind::unreadable_file: return Words::tr("cannot be opened");
    case ProblemKind::empty_file: return Words::tr("is empty");
    case ProblemKind::binary_file: return Words::tr("is not a table of text");
    case ProblemKind::file_too_large: return Words::tr("is larger than %1").arg(detail);
    case ProblemKind::line_too_long:
        return Words::tr("a line is longer than %1; perhaps a quotation mark is not closed").arg(detail);
    case ProblemKind::too_many_rows: return Words::tr("has more rows than can be taken at once (%1)").arg(detail);
    case ProblemKind::too_many_columns: return Words::tr("has more columns than can be taken (%1)").arg(detail);
    case ProblemKind::text_too_long: return Words::tr("the text is longer than %1 bytes").arg(detail);
    case ProblemKind::unreadable_text: return Words::tr("is written in letters that could not be read");
    case ProblemKind::uneven_row: return Words::tr("has more or fewer cells than there are headings");
    case ProblemKind::missing_column: return Words::tr("this column is missing");
    case ProblemKind::missing_value: return Words::tr("nothing stands here");
    case ProblemKind::not_a_number: return Words::tr("“%1” is not a number").arg(value);
    case ProblemKind::not_positive: return Words::tr("“%1” must be more than zero").arg(value);
    case ProblemKind::out_of_range: return Words::tr("“%1” is out of range (%2)").arg(value, detail);
    case ProblemKind::not_a_date: return Words::tr("“%1” is not a date").arg(value);
    case ProblemKind::unknown_word: return Words::tr("“%1” is not one of: %2").arg(value, detail);
    case ProblemKind::unknown_code: return Words::tr("“%1” is not known").arg(value);
    case ProblemKind::unknown_currency: return Words::tr("“%1” is not a currency (ISO 4217)").arg(value);
    case ProblemKind::unknown_country: return Words::tr("“%1” is not a country").arg(value);
    case ProblemKind::bad_postcode:
        return Words::tr("the postcode “%1” does not look like one of that country").arg(value);
    case ProblemKind::bad_check_digit: return Words::tr("the check digit of “%1” is wrong").arg(value);
    case ProblemKind::duplicate: return Words::tr("“%1” stands here twice; the first was kept").arg(value);
    case ProblemKind::conflicting_rows: return Words::tr("rows of one order disagree: “%1”").arg(value);
    case ProblemKind::order_incomplete:
        return Words::tr("another row of order “%1” is wrong, so all of it waits").arg(value);
    case ProblemKind::unknown_member: return Words::tr("nothing of that name is known here");
    case ProblemKind::bad_json: return Words::tr("is not JSON: %1").arg(detail);
    }
    return {};
}

// Of the kinds after which nothing of a file is taken.
static bool refuses_the_file(intake::ProblemKind kind)
{
    using Kind = intake::ProblemKind;
    for (const Kind whole : {Kind::binary_file, Kind::file_too_large, Kind::line_too_long, Kind::too_many_rows,
                             Kind::too_many_columns, Kind::unreadable_text}) {
        if (kind == whole) return true;
    }
    return false;
}

QString problem(const intake::Problem& p)
{
    QString where = text(p.file);
    if (p.row > 0) where += Words::tr(", row %1").arg(p.row);
    if (!p.column.empty())
        where += p.member ? Words::tr(", at %1").arg(text(p.column)) : Words::tr(", column %1").arg(text(p.column));
    QString sentence = where + QStringLiteral(": ") + what_is_wrong(p) + QLatin1Char('.');
    if (refuses_the_file(p.kind))
        sentence += QLatin1Char(' ') + Words::tr("Nothing was taken from this file.");
    else if (p.row > 0)
        sentence +=
            QLatin1Char(' ') + (p.stops ? Words::tr("This row was left out.") : Words::tr("The row was taken."));
    return sentence;
}

QString finding(const shop::OrderFinding& f)
{
    using shop::OrderProblem;
    switch (f.problem) {
    case OrderProblem::unmatched_good: return Words::tr("line %1 is not matched to a good").arg(f.line + 1);
    case OrderProblem::unpaid: return Words::tr("not paid yet");
    case OrderProblem::bad_postcode: return Words::tr("the postcode does not look right");
    case OrderProblem::unknown_country: return Words::tr("the country is not known");
    case OrderProblem::missing_street: return Words::tr("no street");
    case OrderProblem::promised_passed: return Words::tr("the promised day has passed");
    case OrderProblem::joinable: return Words::tr("same buyer and address as another order");
    case OrderProblem::changed: return Words::tr("changed since you looked");
    case OrderProblem::note_to_read: return Words::tr("there is a note to read");
    }
    return {};
}

QString fault(const postage::SheetProblem& p)
{
    using postage::SheetFault;
    const auto what = [&]() -> QString {
        switch (p.fault) {
        case SheetFault::no_steps: return Words::tr("there are no prices");
        case SheetFault::gap_in_zones: return Words::tr("a place is in no zone");
        case SheetFault::overlap_in_zones: return Words::tr("a place is in two zones");
        case SheetFault::falling_price: return Words::tr("the price falls as the weight grows");
        case SheetFault::unreachable_step: return Words::tr("this step is never used");
        case SheetFault::unknown_service: return Words::tr("the service is not listed");
        case SheetFault::unknown_zone: return Words::tr("the zone is not listed");
        case SheetFault::unknown_format: return Words::tr("the format is not listed");
        case SheetFault::dates_reversed: return Words::tr("it ends before it begins");
        case SheetFault::expired: return Words::tr("it is no longer valid");
        case SheetFault::mixed_currency: return Words::tr("another currency than the sheet's");
        case SheetFault::repeated_step: return Words::tr("this stands there twice");
        case SheetFault::unknown_surcharge: return Words::tr("the surcharge it counts in does not stand before it");
        case SheetFault::missing_country: return Words::tr("you send there, and no zone names it");
        case SheetFault::expires_soon: return Words::tr("it ends soon, and no sheet follows");
        }
        return {};
    }();
    return text(p.where) + QStringLiteral(": ") + what;
}

QString state(shop::OrderState s)
{
    switch (s) {
    case shop::OrderState::arrived: return Words::tr("arrived");
    case shop::OrderState::checked: return Words::tr("checked");
    case shop::OrderState::set_aside: return Words::tr("set aside");
    case shop::OrderState::called_off: return Words::tr("called off");
    }
    return {};
}

QString state(shop::ParcelState s)
{
    switch (s) {
    case shop::ParcelState::planned: return Words::tr("planned");
    case shop::ParcelState::picked: return Words::tr("picked");
    case shop::ParcelState::packed: return Words::tr("packed");
    case shop::ParcelState::labelled: return Words::tr("labelled");
    case shop::ParcelState::handed_over: return Words::tr("handed over");
    case shop::ParcelState::came_back: return Words::tr("came back");
    }
    return {};
}

QString preference(planning::Preference p)
{
    switch (p) {
    case planning::Preference::smallest: return Words::tr("smallest box first");
    case planning::Preference::cheapest: return Words::tr("cheapest first");
    case planning::Preference::least_material: return Words::tr("least material first");
    }
    return {};
}

} // namespace stow::words
