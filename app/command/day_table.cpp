#include "app/command/day_table.h"

#include "app/words/format.h"
#include "app/words/reasons.h"
#include "app/words/sharing.h"
#include "core/intake/fit_json.h"
#include "core/intake/fit_question_json.h"

#include <QLocale>

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

using Row = std::vector<QString>;

const shop::HeldOrder* find(const std::vector<shop::HeldOrder>& orders, shop::OrderId id)
{
    const auto found = std::find_if(orders.begin(), orders.end(), [&](const auto& held) { return held.id == id; });
    return found == orders.end() ? nullptr : &*found;
}

// "1042 + 1043" of joined orders.
std::vector<std::string> order_numbers(const planning::ParcelPlan& parcel, const std::vector<shop::HeldOrder>& orders)
{
    std::vector<std::string> numbers;
    for (const shop::Piece& piece : parcel.pieces) {
        const shop::HeldOrder* held = find(orders, piece.order);
        if (held == nullptr) continue;
        if (std::find(numbers.begin(), numbers.end(), held->order.key.number) == numbers.end()) {
            numbers.push_back(held->order.key.number);
        }
    }
    return numbers;
}

const postage::Quote* chosen(const planning::ParcelPlan& parcel)
{
    return parcel.chosen ? &parcel.quotes[*parcel.chosen] : nullptr;
}

Row row_of(const planning::ParcelPlan& parcel, const std::vector<shop::HeldOrder>& orders, const std::string& number)
{
    const QLocale plain = QLocale::c();
    QString order;
    for (const std::string& n : order_numbers(parcel, orders)) {
        if (!order.isEmpty()) order += QStringLiteral(" + ");
        order += QString::fromStdString(n);
    }
    if (parcel.parts > 1) order += QStringLiteral(" %1/%2").arg(parcel.part).arg(parcel.parts);
    QString outer = QString::fromStdString(parcel.outer.text);
    if (parcel.cut_at) outer += QObject::tr(" cut to %1").arg(words::length(*parcel.cut_at, plain));
    const QString filler = parcel.filler ? words::litres(parcel.filler_volume, plain) : QStringLiteral("–");
    const postage::Quote* quote = chosen(parcel);
    const postage::Price* price = quote != nullptr ? quote->price() : nullptr;
    const shop::HeldOrder* held = find(orders, parcel.pieces.front().order);
    return {QString::fromStdString(number),
            order,
            held != nullptr ? QString::fromStdString(held->order.to.name + ", " + held->order.to.country) : QString(),
            outer,
            parcel.proven_smallest ? QObject::tr("proven") : QObject::tr("smallest found"),
            filler,
            words::weight_and_spread(parcel.weight, plain),
            quote != nullptr ? QString::fromStdString(quote->carrier + " " + quote->service_name) : QObject::tr("none"),
            price != nullptr ? words::money(price->total, plain) : QString(),
            price != nullptr && price->step_edge ? words::weight(*price->step_edge, plain) : QStringLiteral("–")};
}

nlohmann::json sharing_json(const planning::DaySharing& sharing)
{
    nlohmann::json scarce = nlohmann::json::array();
    for (const planning::ScarceSupply& s : sharing.scarce) {
        scarce.push_back({{"supply", s.supply.text},
                          {"more", static_cast<double>(s.more.thousandths) / 1000.0},
                          {"more_orders_go", s.more_go},
                          {"saves", to_text(s.saves)},
                          {"smaller_l", in_litres(s.smaller)}});
    }
    nlohmann::json told{{"stepped_back", sharing.moved},
                        {"more_orders_go", sharing.more_go},
                        {"more_in_time", sharing.more_in_time},
                        {"saves", to_text(sharing.saves)},
                        {"smaller_l", in_litres(sharing.smaller)},
                        {"proven", !sharing.gap},
                        {"scarce", std::move(scarce)}};
    if (sharing.gap) {
        const double most = static_cast<double>(sharing.gap->most);
        switch (sharing.gap->in) {
        case planning::SharingGap::In::orders_going: told["more_may_go"] = sharing.gap->most; break;
        case planning::SharingGap::In::orders_in_time: told["more_may_be_in_time"] = sharing.gap->most; break;
        case planning::SharingGap::In::filler_and_tape: told["less_may_be_over"] = most / 1000; break;
        case planning::SharingGap::In::wish: told["gap_percent"] = most / 10; break;
        }
    }
    return told;
}

} // namespace

void print_day(std::ostream& out, const planning::DayPlan& plan, const std::vector<shop::HeldOrder>& orders,
               const shop::Cupboard& cupboard, const std::vector<std::string>& numbers)
{
    if (plan.parcels.empty()) {
        out << QObject::tr("No parcel is planned: there is no checked order that can go.").toStdString() << '\n';
    }
    const QLocale plain = QLocale::c();
    std::vector<Row> rows{{QObject::tr("parcel"), QObject::tr("order"), QObject::tr("to"), QObject::tr("outer"),
                           QObject::tr("smallest?"), QObject::tr("filler"), QObject::tr("weight ± 2σ"),
                           QObject::tr("service"), QObject::tr("price"), QObject::tr("step edge")}};
    for (std::size_t i = 0; i < plan.parcels.size(); ++i) {
        rows.push_back(row_of(plan.parcels[i], orders, i < numbers.size() ? numbers[i] : std::string()));
    }
    std::vector<qsizetype> widths(rows.front().size(), 0);
    for (const Row& row : rows) {
        for (std::size_t c = 0; c < row.size(); ++c) widths[c] = std::max(widths[c], row[c].size());
    }
    constexpr std::size_t first_number = 5; // from here on right-aligned, but for the service
    constexpr std::size_t service = 7;
    for (const Row& row : rows) {
        QString line;
        for (std::size_t c = 0; c < row.size(); ++c) {
            const bool right = c >= first_number && c != service;
            line += (right ? row[c].rightJustified(widths[c]) : row[c].leftJustified(widths[c])) + QStringLiteral("  ");
        }
        while (line.endsWith(QLatin1Char(' '))) line.chop(1);
        out << line.toStdString() << '\n';
    }
    out << '\n'
        << QObject::tr("%1 parcels · postage %2 · packaging %3 · filler %4 · tape %5")
               .arg(plan.parcels.size())
               .arg(words::money_with_currency(plan.postage, plain), words::money_with_currency(plan.packaging, plain),
                    words::litres(plan.filler, plain), words::metres(plan.tape, plain))
               .toStdString()
        << '\n';
    for (const planning::StuckOrder& stuck : plan.stuck) {
        const shop::HeldOrder* held = find(orders, stuck.order);
        out << QObject::tr("Not planned: %1 (%2)")
                   .arg(held != nullptr ? QString::fromStdString(held->order.key.number) : QString(),
                        words::stuck(stuck))
                   .toStdString()
            << '\n';
    }
    for (const planning::Shortage& shortage : plan.shortages) {
        const shop::Supply* supply = cupboard.supply(shortage.supply);
        const shop::Unit unit = supply != nullptr ? supply->unit : shop::Unit::piece;
        out << QObject::tr("Runs short: %1, %2 needed, %3 on hand")
                   .arg(QString::fromStdString(shortage.supply.text), words::amount(shortage.needed, unit, plain),
                        words::amount(shortage.on_hand, unit, plain))
                   .toStdString()
            << '\n';
    }
    if (const QString shared = words::sharing(plan.sharing, plain); !shared.isEmpty())
        out << shared.toStdString() << '\n';
    for (const planning::ScarceSupply& scarce : plan.sharing.scarce) {
        const shop::Supply* supply = cupboard.supply(scarce.supply);
        const shop::Unit unit = supply != nullptr ? supply->unit : shop::Unit::piece;
        out << words::scarce(scarce, QString::fromStdString(scarce.supply.text), unit, plain).toStdString() << '\n';
    }
}

nlohmann::json day_json(const planning::DayPlan& plan, const std::vector<shop::HeldOrder>& orders,
                        const std::vector<std::string>& numbers, const std::optional<Timing>& timing)
{
    using nlohmann::json;
    json parcels = json::array();
    std::size_t proven = 0;
    std::map<int, int> histogram; // pieces in a parcel → parcels
    for (std::size_t i = 0; i < plan.parcels.size(); ++i) {
        const planning::ParcelPlan& parcel = plan.parcels[i];
        proven += parcel.proven_smallest ? 1 : 0;
        int pieces = 0;
        for (const shop::Piece& piece : parcel.pieces) pieces += piece.count;
        ++histogram[pieces];
        fitting::Answer answer;
        answer.verdict = fitting::Verdict::fits;
        answer.outer = parcel.outer.text;
        answer.cut_height = parcel.cut_height;
        answer.contents_thickness = parcel.contents_thickness;
        answer.placements = parcel.placements;
        answer.proven_smallest = parcel.proven_smallest;
        json row{{"orders", order_numbers(parcel, orders)},
                 {"pieces", pieces},
                 {"outer", parcel.outer.text},
                 {"proven_smallest", parcel.proven_smallest},
                 {"filler_l", in_litres(parcel.filler_volume)},
                 {"tape_m", in_mm(parcel.tape) / 1000.0},
                 {"weight_g", in_grams(parcel.weight.mean)},
                 {"spread_g", in_grams(parcel.weight.spread)},
                 {"question", json::parse(intake::write_fit_question(parcel.question))},
                 {"answer", json::parse(intake::write_fit_answer({parcel.question, {}, 0}, answer, 0))}};
        if (i < numbers.size()) row["number"] = numbers[i];
        if (const postage::Quote* quote = chosen(parcel)) {
            row["service"] = quote->carrier + " " + quote->service_name;
            row["price"] = to_text(quote->price()->total);
            if (quote->price()->step_edge) row["step_edge_g"] = in_grams(*quote->price()->step_edge);
        }
        if (timing && i < timing->parcel_ms.size()) row["prove_ms"] = timing->parcel_ms[i];
        parcels.push_back(std::move(row));
    }
    json stuck = json::array();
    for (const planning::StuckOrder& s : plan.stuck) {
        const shop::HeldOrder* held = find(orders, s.order);
        stuck.push_back({{"order", held != nullptr ? held->order.key.number : std::string()},
                         {"why", words::stuck(s).toStdString()}});
    }
    json pieces = json::object();
    for (const auto& [n, count] : histogram) pieces[std::to_string(n)] = count;
    json document{{"day", to_text(plan.day)},
                  {"preference", std::string(planning::name_of(plan.preference))},
                  {"parcels", std::move(parcels)},
                  {"stuck", std::move(stuck)},
                  {"pieces_histogram", std::move(pieces)},
                  {"share_proven", plan.parcels.empty() ? 1.0 : double(proven) / double(plan.parcels.size())},
                  {"postage", to_text(plan.postage)},
                  {"packaging", to_text(plan.packaging)},
                  {"shared_out", sharing_json(plan.sharing)}};
    if (timing) {
        document["all_verified_ms"] = timing->all_verified.count();
        document["all_proven_ms"] = timing->all_proven.count();
    }
    return document;
}

} // namespace stow::command
