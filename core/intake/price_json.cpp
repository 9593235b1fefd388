#include "core/intake/price_json.h"

#include "core/intake/json_measures.h"
#include "core/intake/rate_sheet_csv.h"
#include "core/intake/strict_json.h"
#include "core/measure/decimal.h"

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>

namespace stow::intake {

namespace {

using nlohmann::json;

constexpr std::size_t most_bytes = 8 << 20;
constexpr std::int64_t most_size = 1'000'000;       // 100 m, in 0.1 mm
constexpr std::int64_t most_weight = 1'000'000'000; // 100 t, in 0.1 g

std::string text_of(const json& value, const std::string& member)
{
    if (!value.is_string()) refuse(ProblemKind::bad_json, member, value.dump(), "a text");
    return value.get<std::string>();
}

// A number above zero in tenths, rounded up, by way of its decimal digits.
std::int64_t tenths_of(const json& value, const std::string& member, std::int64_t most)
{
    const auto tenths = value.is_number() ? scaled(value.dump(), 1, Rounding::up) : std::nullopt;
    if (!value.is_number()) refuse(ProblemKind::not_a_number, member, value.dump());
    if (!tenths) refuse(ProblemKind::out_of_range, member, value.dump());
    if (*tenths <= 0) refuse(ProblemKind::not_positive, member, value.dump());
    if (*tenths > most) refuse(ProblemKind::out_of_range, member, value.dump());
    return *tenths;
}

Size size_of(const json& value, const std::string& member)
{
    if (!value.is_array() || value.size() != 3) refuse(ProblemKind::bad_json, member, value.dump(), "three numbers");
    const auto edge = [&](std::size_t i) { return Length{tenths_of(value[i], member, most_size)}; };
    return {edge(0), edge(1), edge(2)};
}

Money money_of(const std::string& text, const std::string& member)
{
    const auto space = text.find(' ');
    if (space == std::string::npos) refuse(ProblemKind::unknown_currency, member, text, "12.34 EUR");
    const auto currency = Currency::from(text.substr(space + 1));
    if (!currency) refuse(ProblemKind::unknown_currency, member, text);
    const auto money = parse_money(text.substr(0, space), *currency);
    if (!money) refuse(ProblemKind::not_a_number, member, text);
    if (money->minor < 0) refuse(ProblemKind::not_positive, member, text);
    return *money;
}

std::vector<std::string> texts_of(const json& value, const std::string& member)
{
    if (!value.is_array()) refuse(ProblemKind::bad_json, member, value.dump(), "a list of texts");
    std::vector<std::string> texts;
    for (const json& one : value) texts.push_back(text_of(one, member));
    return texts;
}

std::string country_of(const std::string& text, const std::string& member)
{
    const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
    if (text.size() != 2 || !capital(text[0]) || !capital(text[1])) refuse(ProblemKind::unknown_country, member, text);
    return text;
}

postage::ParcelFacts parcel_of(const json& value)
{
    Members m(value, "parcel");
    postage::ParcelFacts p;
    p.closed = size_of(m.need("closed_mm"), m.at("closed_mm"));
    p.weight = Weight{tenths_of(m.need("weight_g"), m.at("weight_g"), most_weight)};
    p.country = country_of(text_of(m.need("country"), m.at("country")), m.at("country"));
    const std::string day = text_of(m.need("hand_over"), m.at("hand_over"));
    const auto date = parse_date(day);
    if (!date) refuse(ProblemKind::not_a_date, m.at("hand_over"), day);
    p.hand_over = *date;
    if (const json* roll = m.find("roll")) {
        if (!roll->is_boolean()) refuse(ProblemKind::bad_json, m.at("roll"), roll->dump(), "true or false");
        p.roll = roll->get<bool>();
    }
    if (const json* soft = m.find("soft")) {
        if (!soft->is_boolean()) refuse(ProblemKind::bad_json, m.at("soft"), soft->dump(), "true or false");
        p.soft = soft->get<bool>();
    }
    if (const json* postcode = m.find("postcode")) p.postcode = text_of(*postcode, m.at("postcode"));
    if (const json* worth = m.find("value")) p.value = money_of(text_of(*worth, m.at("value")), m.at("value"));
    if (const json* holds = m.find("holds")) p.holds = texts_of(*holds, m.at("holds"));
    m.no_others();
    if (p.roll && p.closed.x != p.closed.y) {
        refuse(ProblemKind::out_of_range, m.at("closed_mm"), value["closed_mm"].dump(), "diameter, diameter, length");
    }
    return p;
}

using Ordered = nlohmann::ordered_json;

void describe(Ordered& out, const postage::Price& price)
{
    out["total"] = to_text(price.total);
    out["parts"] = Ordered::array();
    for (const postage::Part& part : price.parts) {
        out["parts"].push_back({{"kind", name_of(part.kind)}, {"name", part.name}, {"amount", to_text(part.amount)}});
    }
    out["zone"] = price.zone;
    out["format"] = price.format;
    out["charged_g"] = grams_of(price.charged);
    if (price.step_edge) out["step_edge_g"] = grams_of(*price.step_edge);
    if (price.next_step) out["next_step"] = to_text(*price.next_step);
    if (price.covered) out["covered"] = *price.covered;
}

void describe(Ordered& out, const postage::Refused& refused)
{
    out["reason"] = name_of(refused.reason);
    if (!refused.what.empty()) out["what"] = refused.what;
    if (!refused.format.empty()) out["format"] = refused.format;
    if (refused.over_by) out["over_by_mm"] = mm_of(*refused.over_by);
    if (refused.heavier_by) out["heavier_by_g"] = grams_of(*refused.heavier_by);
}

tl::expected<std::string, Problem> load(const std::string& path)
{
    std::ifstream in(path, std::ios::binary);
    std::error_code unknown;
    if (in && !std::filesystem::is_directory(path, unknown)) { // which opens, and has nothing to read
        std::string text(most_bytes + 1, '\0');
        in.read(text.data(), static_cast<std::streamsize>(text.size()));
        text.resize(static_cast<std::size_t>(in.gcount()));
        if (!in.bad()) return text;
    }
    Problem p;
    p.file = path;
    p.kind = ProblemKind::unreadable_file;
    return tl::unexpected(p);
}

// A path that a question names: from the question's folder, or where nothing is there, from the current one.
std::string beside(const std::string& question, const std::string& named)
{
    const std::filesystem::path there = std::filesystem::path(question).parent_path() / named;
    std::error_code ignored;
    return std::filesystem::exists(there, ignored) || !std::filesystem::exists(named, ignored) ? there.string() : named;
}

} // namespace

std::string_view name_of(postage::NotTaken reason)
{
    using postage::NotTaken;
    switch (reason) {
    case NotTaken::not_valid_then: return "not_valid_then";
    case NotTaken::no_zone: return "no_zone";
    case NotTaken::too_big: return "too_big";
    case NotTaken::too_small: return "too_small";
    case NotTaken::too_heavy: return "too_heavy";
    case NotTaken::not_admitted: return "not_admitted";
    case NotTaken::not_covered: return "not_covered";
    case NotTaken::no_price: return "no_price";
    }
    return {};
}

std::string_view name_of(postage::Part::Kind kind)
{
    switch (kind) {
    case postage::Part::Kind::base: return "base";
    case postage::Part::Kind::surcharge: return "surcharge";
    case postage::Part::Kind::tax: return "tax";
    }
    return {};
}

tl::expected<PriceQuestion, Problem> read_price_question(std::string_view text)
{
    try {
        const json document = parse_strictly(text, most_bytes);
        Members m(document, {});
        PriceQuestion question;
        question.rate_sheets = texts_of(m.need("rate_sheets"), "rate_sheets");
        if (question.rate_sheets.empty()) refuse(ProblemKind::missing_value, "rate_sheets");
        question.parcel = parcel_of(m.need("parcel"));
        m.no_others();
        return question;
    } catch (JsonFault& fault) {
        return tl::unexpected(std::move(fault.problem));
    }
}

std::string write_price_answer(const std::vector<postage::Quote>& quotes)
{
    Ordered answer;
    answer["services"] = Ordered::array();
    for (const postage::Quote& q : quotes) {
        Ordered out;
        out["carrier"] = q.carrier;
        out["service"] = q.service;
        out["name"] = q.service_name;
        out["tracked"] = q.tracked;
        out["days_most"] = q.days_most;
        std::visit([&](const auto& result) { describe(out, result); }, q.result);
        answer["services"].push_back(std::move(out));
    }
    return answer.dump(1) + "\n";
}

tl::expected<PriceAnswer, std::vector<Problem>> answer_price_file(const std::string& path)
{
    const auto text = load(path);
    if (!text) return tl::unexpected(std::vector{text.error()});
    auto question = read_price_question(*text);
    if (!question) {
        question.error().file = path;
        return tl::unexpected(std::vector{question.error()});
    }
    PriceAnswer answer;
    std::vector<postage::RateSheet> sheets;
    bool refused = false;
    for (const std::string& named : question->rate_sheets) {
        const std::string file = beside(path, named);
        TakenRates taken = read_rate_sheet_file(file);
        answer.problems.insert(answer.problems.end(), taken.problems.begin(), taken.problems.end());
        if (!taken.sheet) {
            refused = true;
            continue;
        }
        for (const postage::SheetProblem& fault : postage::check(*taken.sheet, question->parcel.hand_over)) {
            if (!fault.stops) continue;
            answer.problems.push_back({file, 0, {}, ProblemKind::conflicting_rows, fault.where, {}, true});
            refused = true;
        }
        sheets.push_back(*std::move(taken.sheet));
    }
    if (refused) return tl::unexpected(std::move(answer.problems));
    answer.json = write_price_answer(postage::quotes(sheets, question->parcel));
    return answer;
}

} // namespace stow::intake
