// Packaging materials as the reports of EU countries group them.
#pragma once

#include "core/measure/quantity.h"

#include <array>
#include <optional>
#include <string_view>

namespace stow::shop {

// Rows of the EU packaging tables: Commission Decision 2005/270/EC as amended by (EU) 2019/665 (row list from memory).
enum class Material { paper, plastic, glass, wood, ferrous, aluminium, composite, other };
inline constexpr std::array all_materials{Material::paper,   Material::plastic,   Material::glass,     Material::wood,
                                          Material::ferrous, Material::aluminium, Material::composite, Material::other};
constexpr std::string_view name_of(Material m)
{
    switch (m) {
    case Material::paper: return "paper";
    case Material::plastic: return "plastic";
    case Material::glass: return "glass";
    case Material::wood: return "wood";
    case Material::ferrous: return "ferrous";
    case Material::aluminium: return "aluminium";
    case Material::composite: return "composite";
    case Material::other: return "other";
    }
    return {};
}
constexpr std::optional<Material> material(std::string_view name)
{
    for (const Material m : all_materials) {
        if (name_of(m) == name) return m;
    }
    return std::nullopt;
}

struct MaterialShare {
    Material material = Material::paper;
    Weight weight;
    friend bool operator==(const MaterialShare&, const MaterialShare&) = default;
};

} // namespace stow::shop
