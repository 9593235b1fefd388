// JSON that people write by hand, read strictly: a member named twice, a member nobody asked for or a missing one is a
// fault with its path ("items[2].size_mm"). Readers stop at the first fault by throwing it; the function that takes the
// text in catches it and returns it as a value. Private to intake.
#pragma once

#include "core/intake/problem.h"

#include <nlohmann/json_fwd.hpp>
#include <set>
#include <string>
#include <string_view>

namespace stow::intake {

struct JsonFault {
    Problem problem;
};

[[noreturn]] void refuse(ProblemKind kind, std::string path, const std::string& value = {}, std::string detail = {});

// Throws JsonFault where the text is no JSON or is longer than `most_bytes`.
nlohmann::json parse_strictly(std::string_view text, std::size_t most_bytes);

// One object, read member by member; what nobody asked for is an unknown member. Keeps a reference to the object.
class Members {
public:
    Members(const nlohmann::json& object, std::string path);

    const nlohmann::json* find(const std::string& name);
    const nlohmann::json& need(const std::string& name);
    std::string at(const std::string& name) const { return path_.empty() ? name : path_ + '.' + name; }
    void no_others() const;

private:
    const nlohmann::json& object_;
    std::string path_;
    std::set<std::string> asked_;
};

} // namespace stow::intake
