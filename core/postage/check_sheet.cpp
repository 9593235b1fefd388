#include "core/postage/rate_sheet.h"

#include "core/measure/decimal.h"
#include "core/postage/zone_finder.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace stow::postage {

namespace {

using Key = std::tuple<std::string, std::string, std::string>; // service, zone, format

template <class Row>
Key key_of(const Row& row)
{
    return {row.service, row.zone, row.format};
}

std::string place_name(const Key& key)
{
    const auto& [service, zone, format] = key;
    return service + ", zone " + zone + (format.empty() ? "" : ", " + format);
}

std::string step_name(const Step& step)
{
    std::string g = unscaled(step.up_to.units, 1);
    if (g.size() > 2 && g.substr(g.size() - 2) == ".0") g.resize(g.size() - 2);
    return place_name(key_of(step)) + ", " + g + " g";
}

std::string volume_name(const VolumeStep& step)
{
    return place_name(key_of(step)) + ", " + unscaled(step.up_to.units / 1'000'000, 3) + " l";
}

std::string place_text(const Place& p)
{
    if (p.postcode_from.empty()) return p.country;
    return p.country + " " + p.postcode_from + (p.postcode_to == p.postcode_from ? "" : "-" + p.postcode_to);
}

template <class Named, class NameOf>
bool known(const std::vector<Named>& list, const std::string& name, NameOf name_of)
{
    return std::any_of(list.begin(), list.end(), [&](const Named& n) { return name_of(n) == name; });
}

std::string service_code(const Service& s)
{
    return s.code;
}
std::string zone_name(const Zone& z)
{
    return z.name;
}
std::string format_name(const Format& f)
{
    return f.name;
}

// Is every parcel that `inner` takes taken by `outer` too? True only where every limit says so.
bool roomier(const Format& outer, const Format& inner)
{
    const auto most = [&](std::optional<Length> Format::*limit) {
        const auto &o = outer.*limit, &i = inner.*limit;
        return !o || (i && *i + inner.tolerance <= *o + outer.tolerance);
    };
    const auto least = [&](std::optional<Length> Format::*limit) {
        const auto &o = outer.*limit, &i = inner.*limit;
        return !o || (i && *o - outer.tolerance <= *i - inner.tolerance);
    };
    // A roll is judged by the roll limits of one format and perhaps not of the other; then nothing is claimed.
    const auto rolls = [](const Format& f) {
        return f.roll_most_length || f.roll_most_sum || f.roll_least_length || f.roll_least_sum;
    };
    const bool any_ratio = !outer.least_ratio && !outer.most_ratio;
    return any_ratio && rolls(outer) == rolls(inner) && most(&Format::most_length) && most(&Format::most_width) &&
           most(&Format::most_height) && most(&Format::most_sum) && most(&Format::most_girth) &&
           most(&Format::roll_most_length) && most(&Format::roll_most_sum) && least(&Format::least_length) &&
           least(&Format::least_width) && least(&Format::least_height) && least(&Format::roll_least_length) &&
           least(&Format::roll_least_sum);
}

class Checker {
public:
    Checker(const RateSheet& sheet, const SheetContext& context) : sheet_(sheet), context_(context) {}

    std::vector<SheetProblem> all()
    {
        validity();
        currencies();
        repeated_names();
        for (const Zone& zone : sheet_.zones) reversed_postcodes(zone);
        overlaps();
        gaps();
        missing_countries();
        references();
        steps();
        dominated_formats();
        beyond();
        volumes();
        unpriced();
        return std::move(problems_);
    }

private:
    void add(SheetFault fault, std::string where, bool stops) { problems_.push_back({fault, std::move(where), stops}); }

    void validity()
    {
        const auto &from = sheet_.valid_from, &until = sheet_.valid_until;
        if (from && until && *until < *from) {
            add(SheetFault::dates_reversed, to_text(*from) + " - " + to_text(*until), true);
        } else if (until && *until < context_.today) {
            add(SheetFault::expired, to_text(*until), false);
        } else if (until && !context_.followed && *until - context_.today <= std::chrono::days(context_.soon_days)) {
            add(SheetFault::expires_soon, to_text(*until), false);
        }
        for (const Surcharge& s : sheet_.surcharges) {
            if (s.from && s.until && *s.until < *s.from) add(SheetFault::dates_reversed, s.name, true);
        }
    }

    void one_currency(const Money& amount, const std::string& where)
    {
        if (amount.currency != sheet_.currency) add(SheetFault::mixed_currency, where, true);
    }

    void currencies()
    {
        for (const Step& s : sheet_.steps) one_currency(s.price, step_name(s));
        for (const BeyondLast& b : sheet_.beyond) one_currency(b.per_kg, place_name(key_of(b)));
        for (const VolumeStep& s : sheet_.volume_steps) one_currency(s.price, volume_name(s));
        for (const Surcharge& s : sheet_.surcharges) {
            if (s.kind == Surcharge::Kind::fixed || s.kind == Surcharge::Kind::per_kg) one_currency(s.amount, s.name);
        }
    }

    template <class Named, class NameOf>
    void repeated(const std::vector<Named>& list, NameOf name_of)
    {
        for (auto it = list.begin(); it != list.end(); ++it) {
            const bool before =
                std::any_of(list.begin(), it, [&](const Named& n) { return name_of(n) == name_of(*it); });
            if (before) add(SheetFault::repeated_step, name_of(*it), true);
        }
    }

    void repeated_names()
    {
        repeated(sheet_.services, service_code);
        repeated(sheet_.zones, zone_name);
        repeated(sheet_.formats, format_name);
    }

    void reversed_postcodes(const Zone& zone)
    {
        for (const Place& p : zone.places) {
            if (plain_postcode(p.postcode_to) < plain_postcode(p.postcode_from)) {
                add(SheetFault::dates_reversed, "zone " + zone.name + ", " + place_text(p), true);
            }
        }
    }

    // Two places of two zones that describe some address equally well. Places of one kind are sorted by where they
    // begin; each is then held against the one before it that reaches furthest, and against the furthest of another
    // zone.
    void overlaps()
    {
        struct Claim {
            std::string from, to;
            std::size_t zone, place;
        };
        std::map<std::pair<std::string, int>, std::vector<Claim>> kinds; // by country and closeness
        for (std::size_t z = 0; z < sheet_.zones.size(); ++z) {
            const auto& places = sheet_.zones[z].places;
            for (std::size_t p = 0; p < places.size(); ++p) {
                kinds[{places[p].country, places[p].postcode_from.empty() ? 0 : closeness(places[p])}].push_back(
                    {plain_postcode(places[p].postcode_from), plain_postcode(places[p].postcode_to), z, p});
            }
        }
        std::map<std::tuple<std::size_t, std::size_t, std::size_t>, std::string> found; // by zones and place
        for (auto& [kind, claims] : kinds) {
            std::stable_sort(claims.begin(), claims.end(),
                             [](const Claim& a, const Claim& b) { return a.from < b.from; });
            const Claim *furthest = nullptr, *of_another = nullptr;
            const auto clash = [&](const Claim* before, const Claim& c) {
                if (before == nullptr || before->zone == c.zone || before->to < c.from) return;
                const Claim& late = before->zone < c.zone ? c : *before;
                const Claim& early = before->zone < c.zone ? *before : c;
                found[{early.zone, late.zone, late.place}] = "zones " + sheet_.zones[early.zone].name + " and " +
                                                             sheet_.zones[late.zone].name + ", " +
                                                             place_text(sheet_.zones[late.zone].places[late.place]);
            };
            for (const Claim& c : claims) {
                clash(furthest, c);
                clash(of_another, c);
                if (furthest == nullptr || c.to > furthest->to) {
                    if (furthest != nullptr && furthest->zone != c.zone) of_another = furthest;
                    furthest = &c;
                } else if (furthest->zone != c.zone && (of_another == nullptr || c.to > of_another->to)) {
                    of_another = &c;
                }
            }
        }
        for (const auto& [where, text] : found) add(SheetFault::overlap_in_zones, text, true);
    }

    // Postcodes in figures only, and rules of one length: which begin between those that some zone names?
    void gaps()
    {
        std::map<std::string, std::vector<const Place*>> by_country;
        for (const Zone& zone : sheet_.zones) {
            for (const Place& p : zone.places) by_country[p.country].push_back(&p);
        }
        for (const auto& [country, places] : by_country) {
            const bool whole =
                std::any_of(places.begin(), places.end(), [](const Place* p) { return p->postcode_from.empty(); });
            if (!whole && by_country.count("*") == 0) gaps_of(country, places);
        }
    }

    void missing_countries()
    {
        for (const std::string& country : context_.countries) {
            const bool named = std::any_of(sheet_.zones.begin(), sheet_.zones.end(), [&](const Zone& zone) {
                return std::any_of(zone.places.begin(), zone.places.end(),
                                   [&](const Place& p) { return p.country == country || p.country == "*"; });
            });
            if (!named) add(SheetFault::missing_country, country, false);
        }
    }

    void gaps_of(const std::string& country, const std::vector<const Place*>& places)
    {
        struct Range {
            std::int64_t from, to;
        };
        std::vector<Range> ranges;
        std::size_t digits = 0;
        for (const Place* p : places) {
            digits = std::max({digits, plain_postcode(p->postcode_from).size(), plain_postcode(p->postcode_to).size()});
        }
        if (digits == 0 || digits > 9) return;
        for (const Place* p : places) {
            std::string from = plain_postcode(p->postcode_from), to = plain_postcode(p->postcode_to);
            from.resize(digits, '0');
            to.resize(digits, '9');
            const auto first = scaled(from, 0, Rounding::down), last = scaled(to, 0, Rounding::down);
            if (!first || !last) return; // letters: their order says nothing about what exists between
            ranges.push_back({*first, *last});
        }
        std::sort(ranges.begin(), ranges.end(), [](const Range& a, const Range& b) { return a.from < b.from; });
        std::int64_t next = 0;
        std::int64_t end = 1;
        for (std::size_t i = 0; i < digits; ++i) end *= 10;
        ranges.push_back({end, end});
        for (const Range& r : ranges) {
            if (r.from > next) {
                add(SheetFault::gap_in_zones, country + " " + padded(next, digits) + "-" + padded(r.from - 1, digits),
                    false);
            }
            next = std::max(next, r.to + 1);
        }
    }

    static std::string padded(std::int64_t number, std::size_t digits)
    {
        std::string text = std::to_string(number);
        return std::string(digits - std::min(digits, text.size()), '0') + text;
    }

    template <class Row>
    void reference(const Row& row, const std::string& where)
    {
        if (!known(sheet_.services, row.service, service_code)) add(SheetFault::unknown_service, where, true);
        if (!known(sheet_.zones, row.zone, zone_name)) add(SheetFault::unknown_zone, where, true);
        if (!row.format.empty() && !known(sheet_.formats, row.format, format_name)) {
            add(SheetFault::unknown_format, where, true);
        }
    }

    void references()
    {
        for (const Step& s : sheet_.steps) reference(s, step_name(s));
        for (const BeyondLast& b : sheet_.beyond) reference(b, place_name(key_of(b)));
        for (const VolumeStep& s : sheet_.volume_steps) reference(s, volume_name(s));
        for (auto it = sheet_.surcharges.begin(); it != sheet_.surcharges.end(); ++it) {
            const Surcharge& s = *it;
            for (const std::string& named : s.also_of) {
                const bool before = std::any_of(sheet_.surcharges.begin(), it,
                                                [&](const Surcharge& other) { return other.name == named; });
                if (!before) add(SheetFault::unknown_surcharge, s.name + ": " + named, true);
            }
            if (!s.format.empty() && !known(sheet_.formats, s.format, format_name)) {
                add(SheetFault::unknown_format, s.name, true);
            }
            if (!s.service.empty() && !known(sheet_.services, s.service, service_code)) {
                add(SheetFault::unknown_service, s.name, true);
            }
            if (!s.zone.empty() && !known(sheet_.zones, s.zone, zone_name)) add(SheetFault::unknown_zone, s.name, true);
        }
    }

    // Steps of one ladder against each other.
    void steps()
    {
        if (sheet_.steps.empty() && sheet_.volume_steps.empty()) add(SheetFault::no_steps, sheet_.carrier, true);
        for (const Step& s : sheet_.steps) {
            if (s.price.currency == sheet_.currency) ladders_[key_of(s)].push_back(&s);
        }
        for (auto& [key, ladder] : ladders_) {
            std::stable_sort(ladder.begin(), ladder.end(),
                             [](const Step* a, const Step* b) { return a->up_to < b->up_to; });
            const Step* before = nullptr;
            for (const Step* s : ladder) {
                if (s->up_to.units <= 0) add(SheetFault::unreachable_step, step_name(*s), false);
                if (s->price.minor < 0) add(SheetFault::falling_price, step_name(*s), true);
                if (before != nullptr && before->up_to == s->up_to) {
                    add(SheetFault::repeated_step, step_name(*s), true);
                } else if (before != nullptr && s->price < before->price) {
                    add(SheetFault::falling_price, step_name(*s), false);
                } else if (before != nullptr && s->price == before->price) {
                    add(SheetFault::unreachable_step, step_name(*before), false);
                }
                before = s;
            }
        }
    }

    // A step is never paid if a roomier format of the same service and zone goes as heavy for less, or for the same
    // and is named earlier.
    void dominated_formats()
    {
        for (std::size_t f = 0; f < sheet_.formats.size(); ++f) {
            for (std::size_t g = 0; g < sheet_.formats.size(); ++g) {
                if (f != g && roomier(sheet_.formats[g], sheet_.formats[f])) dominated(f, g);
            }
        }
    }

    void dominated(std::size_t f, std::size_t g)
    {
        for (const auto& [key, ladder] : ladders_) {
            const auto& [service, zone, format] = key;
            if (format != sheet_.formats[f].name) continue;
            const auto rival = ladders_.find({service, zone, sheet_.formats[g].name});
            if (rival == ladders_.end()) continue;
            for (const Step* s : ladder) {
                const auto taken = std::find_if(rival->second.begin(), rival->second.end(),
                                                [&](const Step* r) { return r->up_to >= s->up_to; });
                if (taken != rival->second.end() && (*taken)->price < s->price) {
                    add(SheetFault::unreachable_step, step_name(*s), false);
                }
            }
        }
    }

    void beyond()
    {
        std::vector<Key> seen;
        for (const BeyondLast& b : sheet_.beyond) {
            const Key key = key_of(b);
            const auto ladder = ladders_.find(key);
            if (ladder == ladders_.end()) {
                add(SheetFault::no_steps, place_name(key), false);
            } else if (b.most <= ladder->second.back()->up_to) {
                add(SheetFault::unreachable_step, place_name(key), false);
            }
            if (b.per_kg.minor < 0) add(SheetFault::falling_price, place_name(key), false);
            if (std::find(seen.begin(), seen.end(), key) != seen.end()) {
                add(SheetFault::repeated_step, place_name(key), true);
            }
            seen.push_back(key);
        }
    }

    // Volume steps of one ladder against each other.
    void volumes()
    {
        std::map<Key, std::vector<const VolumeStep*>> ladders;
        for (const VolumeStep& s : sheet_.volume_steps) {
            if (s.price.currency == sheet_.currency) ladders[key_of(s)].push_back(&s);
        }
        for (auto& [key, ladder] : ladders) {
            std::stable_sort(ladder.begin(), ladder.end(),
                             [](const VolumeStep* a, const VolumeStep* b) { return a->up_to < b->up_to; });
            const VolumeStep* before = nullptr;
            for (const VolumeStep* s : ladder) {
                if (s->up_to.units <= 0 || s->most.units <= 0)
                    add(SheetFault::unreachable_step, volume_name(*s), false);
                if (s->price.minor < 0) add(SheetFault::falling_price, volume_name(*s), true);
                if (before != nullptr && before->up_to == s->up_to) {
                    add(SheetFault::repeated_step, volume_name(*s), true);
                } else if (before != nullptr && s->price < before->price) {
                    add(SheetFault::falling_price, volume_name(*s), false);
                }
                before = s;
            }
        }
    }

    void unpriced()
    {
        if (sheet_.steps.empty() && sheet_.volume_steps.empty()) return;
        for (const Zone& zone : sheet_.zones) {
            const auto here = [&](const auto& row) { return row.zone == zone.name; };
            const bool priced = std::any_of(sheet_.steps.begin(), sheet_.steps.end(), here) ||
                                std::any_of(sheet_.volume_steps.begin(), sheet_.volume_steps.end(), here);
            if (!priced) add(SheetFault::no_steps, "zone " + zone.name, false);
        }
    }

    const RateSheet& sheet_;
    const SheetContext& context_;
    std::vector<SheetProblem> problems_;
    std::map<Key, std::vector<const Step*>> ladders_; // steps by rising weight
};

} // namespace

std::vector<SheetProblem> check(const RateSheet& sheet, const SheetContext& context)
{
    return Checker(sheet, context).all();
}

std::vector<SheetProblem> check(const RateSheet& sheet, Date today)
{
    return check(sheet, SheetContext{today});
}

} // namespace stow::postage
