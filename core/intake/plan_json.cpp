#include "core/intake/plan_json.h"

#include "core/intake/document.h"
#include "core/intake/json_members.h"

namespace stow::intake {

std::string plan_to_json(const planning::ParcelPlan& plan)
{
    return R"({"version":)" + std::to_string(plan_version) + R"(,"plan":)" + to_document(plan) + "}";
}

tl::expected<planning::ParcelPlan, std::string> plan_from_json(std::string_view document)
{
    const Json json = Json::parse(document, nullptr, false);
    if (!json.is_object() || !json.contains("plan")) return tl::unexpected(std::string("not a plan"));
    const auto version = json.find("version");
    if (version == json.end() || !version->is_number_integer() || *version < 1)
        return tl::unexpected(std::string("no version"));
    if (*version > plan_version) return tl::unexpected("a plan of a later version: " + version->dump());
    return read_or_why<planning::ParcelPlan>(json["plan"]);
}

} // namespace stow::intake
