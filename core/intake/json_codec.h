// How values become JSON and come back: one description of each value's members serves both ways (json_members.h), so
// that what is written is also read. Private to intake; include only in .cpp files.
#pragma once

#include "core/intake/json_words.h"

#include <limits>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <tl/expected.hpp>
#include <type_traits>

namespace stow::intake {

using Json = nlohmann::json;

struct BadDocument : std::runtime_error { // caught where a document is read
    using std::runtime_error::runtime_error;
};

template <class T, class U>
concept Is = std::same_as<std::remove_const_t<T>, U>;

// A struct, member by member. A member that the document does not have keeps its default: it was written before the
// member existed.
template <class T>
struct Codec {
    static Json write(const T& value)
    {
        Json json = Json::object();
        members(value, [&](const char* name, const auto& member) {
            json[name] = Codec<std::remove_cvref_t<decltype(member)>>::write(member);
        });
        return json;
    }
    static void read(const Json& json, T& value)
    {
        if (!json.is_object()) throw BadDocument("an object is needed, not " + json.dump());
        members(value, [&](const char* name, auto& member) {
            const auto found = json.find(name);
            if (found == json.end()) return;
            try {
                Codec<std::remove_cvref_t<decltype(member)>>::read(*found, member);
            } catch (const BadDocument& bad) {
                throw BadDocument(std::string(name) + ": " + bad.what());
            }
        });
    }
};

template <class T>
Json written(const T& value)
{
    return Codec<T>::write(value);
}

template <class T>
void read_into(const Json& json, T& value)
{
    Codec<T>::read(json, value);
}

template <class T>
T read_as(const Json& json)
{
    T value{};
    Codec<T>::read(json, value);
    return value;
}

// In words of ours or of the JSON library where it is no such value.
template <class T>
tl::expected<T, std::string> read_or_why(const Json& json)
{
    try {
        return read_as<T>(json);
    } catch (const Json::exception& bad) {
        return tl::unexpected(std::string(bad.what()));
    } catch (const BadDocument& bad) {
        return tl::unexpected(std::string(bad.what()));
    }
}

template <std::integral T>
struct Codec<T> {
    static Json write(T value) { return value; }
    static void read(const Json& json, T& value)
    {
        if constexpr (std::same_as<T, bool>) {
            if (!json.is_boolean()) throw BadDocument("true or false is needed, not " + json.dump());
            value = json.get<bool>();
        } else {
            if (!json.is_number_integer()) throw BadDocument("a whole number is needed, not " + json.dump());
            const bool too_large =
                json.is_number_unsigned() &&
                json.get<std::uint64_t>() > static_cast<std::uint64_t>(std::numeric_limits<T>::max());
            const bool too_small =
                !json.is_number_unsigned() &&
                (std::is_unsigned_v<T> ||
                 json.get<std::int64_t>() < static_cast<std::int64_t>(std::numeric_limits<T>::min()));
            if (too_large || too_small) throw BadDocument("out of range: " + json.dump());
            value = json.get<T>();
        }
    }
};

template <>
struct Codec<std::string> {
    static Json write(const std::string& value) { return value; }
    static void read(const Json& json, std::string& value)
    {
        if (!json.is_string()) throw BadDocument("text is needed, not " + json.dump());
        value = json.get<std::string>();
    }
};

template <class T>
concept Worded = std::is_enum_v<T>;

template <Worded Enum>
struct Codec<Enum> {
    static Json write(Enum value)
    {
        const char* const stored = word(value);
        if (!stored) throw std::logic_error("an enum value that is none of its names");
        return stored;
    }
    static void read(const Json& json, Enum& value)
    {
        const auto* const text = json.get_ptr<const Json::string_t*>();
        // Our enums count from 0 without gaps; past the last there is no word.
        for (int i = 0; const char* const stored = text ? word(static_cast<Enum>(i)) : nullptr; ++i) {
            if (*text == stored) {
                value = static_cast<Enum>(i);
                return;
            }
        }
        throw BadDocument("unknown word " + json.dump());
    }
};

template <class Kind>
struct Codec<Quantity<Kind>> {
    static Json write(Quantity<Kind> value) { return value.units; }
    static void read(const Json& json, Quantity<Kind>& value) { read_into(json, value.units); }
};

template <class Kind>
struct Codec<shop::Code<Kind>> {
    static Json write(const shop::Code<Kind>& value) { return value.text; }
    static void read(const Json& json, shop::Code<Kind>& value) { read_into(json, value.text); }
};

template <class Kind>
struct Codec<shop::Id<Kind>> {
    static Json write(shop::Id<Kind> value) { return value.value; }
    static void read(const Json& json, shop::Id<Kind>& value) { read_into(json, value.value); }
};

template <>
struct Codec<Currency> {
    static Json write(Currency value) { return value.code(); }
    static void read(const Json& json, Currency& value)
    {
        const auto known = Currency::from(read_as<std::string>(json));
        if (!known) throw BadDocument("unknown currency " + json.dump());
        value = *known;
    }
};

template <>
struct Codec<Date> {
    static Json write(Date value) { return to_text(value); }
    static void read(const Json& json, Date& value)
    {
        const auto known = parse_date(read_as<std::string>(json));
        if (!known) throw BadDocument("not a date: " + json.dump());
        value = *known;
    }
};

template <>
struct Codec<TimeOfDay> { // minutes after midnight
    static Json write(TimeOfDay value) { return value.count(); }
    static void read(const Json& json, TimeOfDay& value) { value = TimeOfDay(read_as<std::int64_t>(json)); }
};

template <>
struct Codec<Size> { // [x, y, z]
    static Json write(const Size& s) { return Json::array({s.x.units, s.y.units, s.z.units}); }
    static void read(const Json& json, Size& s)
    {
        if (!json.is_array() || json.size() != 3) throw BadDocument("three lengths are needed, not " + json.dump());
        read_into(json[0], s.x);
        read_into(json[1], s.y);
        read_into(json[2], s.z);
    }
};

template <class T>
struct Codec<std::optional<T>> { // null: nothing
    static Json write(const std::optional<T>& value) { return value ? written(*value) : Json(nullptr); }
    static void read(const Json& json, std::optional<T>& value)
    {
        value.reset();
        if (!json.is_null()) value = read_as<T>(json);
    }
};

template <class T>
struct Codec<std::vector<T>> {
    static Json write(const std::vector<T>& values)
    {
        Json json = Json::array();
        for (const T& value : values) json.push_back(written(value));
        return json;
    }
    static void read(const Json& json, std::vector<T>& values)
    {
        if (!json.is_array()) throw BadDocument("a list is needed, not " + json.dump());
        values.clear();
        for (const Json& value : json) values.push_back(read_as<T>(value));
    }
};

template <class T, std::size_t N>
struct Codec<std::array<T, N>> {
    static Json write(const std::array<T, N>& values)
    {
        Json json = Json::array();
        for (const T& value : values) json.push_back(written(value));
        return json;
    }
    static void read(const Json& json, std::array<T, N>& values)
    {
        if (!json.is_array() || json.size() != N) throw BadDocument("a list of another length: " + json.dump());
        for (std::size_t i = 0; i < N; ++i) read_into(json[i], values[i]);
    }
};

// A variant is {"<word of its kind>": value}; the words are kinds<variant>.
template <class... Ts>
struct Codec<std::variant<Ts...>> {
    using Variant = std::variant<Ts...>;
    static Json write(const Variant& value)
    {
        Json json = Json::object();
        json[kinds<Variant>[value.index()]] = std::visit([](const auto& held) { return written(held); }, value);
        return json;
    }
    static void read(const Json& json, Variant& value)
    {
        if (!json.is_object() || json.size() != 1) throw BadDocument("one kind is needed, not " + json.dump());
        if (!read_kind(json, value, std::index_sequence_for<Ts...>{})) throw BadDocument("unknown kind " + json.dump());
    }

private:
    template <std::size_t... I>
    static bool read_kind(const Json& json, Variant& value, std::index_sequence<I...>)
    {
        const auto is = [&](std::size_t i) { return json.begin().key() == kinds<Variant>[i]; };
        return ((is(I) && (value = read_as<std::variant_alternative_t<I, Variant>>(json.begin().value()), true)) ||
                ...);
    }
};

} // namespace stow::intake
