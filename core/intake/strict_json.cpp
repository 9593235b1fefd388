#include "core/intake/strict_json.h"

#include "core/intake/csv.h"

#include <nlohmann/json.hpp>
#include <vector>

namespace stow::intake {

using Json = nlohmann::json;

void refuse(ProblemKind kind, std::string path, const std::string& value, std::string detail)
{
    Problem p;
    p.kind = kind;
    p.column = std::move(path);
    p.member = true;
    p.value = value.substr(0, 80);
    p.detail = std::move(detail);
    throw JsonFault{std::move(p)};
}

Json parse_strictly(std::string_view text, std::size_t most_bytes)
{
    if (text.empty()) refuse(ProblemKind::empty_file, {});
    if (text.size() > most_bytes) {
        refuse(ProblemKind::file_too_large, {}, {}, size_in_words(most_bytes));
    }
    std::vector<std::set<std::string>> open;
    // The library keeps the last of two members of one name without a word.
    const auto watch = [&](int, Json::parse_event_t event, Json& parsed) {
        if (event == Json::parse_event_t::object_start) open.emplace_back();
        if (event == Json::parse_event_t::object_end) open.pop_back();
        if (event == Json::parse_event_t::key && !open.back().insert(parsed.get<std::string>()).second) {
            refuse(ProblemKind::duplicate, parsed.get<std::string>(), parsed.get<std::string>());
        }
        return true;
    };
    try {
        return Json::parse(text, watch);
    } catch (const Json::exception& e) {
        const std::string said = e.what(); // "[json.exception.parse_error.101] parse error at line 1, ..."
        const auto place = said.find("line ");
        refuse(ProblemKind::bad_json, {}, {}, place == std::string::npos ? said : said.substr(place));
    }
}

Members::Members(const Json& object, std::string path) : object_(object), path_(std::move(path))
{
    if (!object.is_object()) refuse(ProblemKind::bad_json, path_, object.dump(), "an object");
}

const Json* Members::find(const std::string& name)
{
    asked_.insert(name);
    const auto found = object_.find(name);
    return found == object_.end() ? nullptr : &*found;
}

const Json& Members::need(const std::string& name)
{
    const Json* found = find(name);
    if (found == nullptr) refuse(ProblemKind::missing_value, at(name));
    return *found;
}

void Members::no_others() const
{
    for (const auto& [name, value] : object_.items()) {
        if (asked_.count(name) == 0) refuse(ProblemKind::unknown_member, at(name), value.dump());
    }
}

} // namespace stow::intake
