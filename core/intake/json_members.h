// The members of each value that is stored as a document, by the name they are stored under. Private to intake.
// Each value is taken apart into all its members, so a member added to a struct does not compile until it is named
// here.
#pragma once

#include "core/intake/json_codec.h"

namespace stow::intake {

// Measures ------------------------------------------------------------------------------------------------------------

void members(Is<Money> auto& value, auto&& visit)
{
    auto& [minor, currency] = value;
    visit("minor", minor);
    visit("currency", currency);
}

void members(Is<Block> auto& value, auto&& visit)
{
    auto& [size] = value;
    visit("size", size);
}

void members(Is<Cylinder> auto& value, auto&& visit)
{
    auto& [diameter, height] = value;
    visit("diameter", diameter);
    visit("height", height);
}

void members(Is<Sheet> auto& value, auto&& visit)
{
    auto& [length, width, thickness, least_roll] = value;
    visit("length", length);
    visit("width", width);
    visit("thickness", thickness);
    visit("least_roll", least_roll);
}

void members(Is<Roll> auto& value, auto&& visit)
{
    auto& [diameter, length] = value;
    visit("diameter", diameter);
    visit("length", length);
}

void members(Is<Soft> auto& value, auto&& visit)
{
    auto& [whole, least] = value;
    visit("volume", whole);
    visit("least", least);
}

void members(Is<Turns> auto& value, auto&& visit)
{
    auto& [rule, vertical] = value;
    visit("rule", rule);
    visit("vertical", vertical);
}

void members(Is<OuterForm> auto& value, auto&& visit)
{
    auto& [kind, inner, outer, cut_heights, ease, wall] = value;
    visit("kind", kind);
    visit("inner", inner);
    visit("outer", outer);
    visit("cut_heights", cut_heights);
    visit("ease", ease);
    visit("wall", wall);
}

// Shop ----------------------------------------------------------------------------------------------------------------

void members(Is<shop::WeightEstimate> auto& value, auto&& visit)
{
    auto& [mean, spread] = value;
    visit("mean", mean);
    visit("spread", spread);
}

void members(Is<shop::Amount> auto& value, auto&& visit)
{
    auto& [thousandths] = value;
    visit("thousandths", thousandths);
}

void members(Is<shop::MaterialShare> auto& value, auto&& visit)
{
    auto& [material, weight] = value;
    visit("material", material);
    visit("weight", weight);
}

void members(Is<shop::SetPart> auto& value, auto&& visit)
{
    auto& [good, count] = value;
    visit("good", good);
    visit("count", count);
}

void members(Is<shop::Good> auto& value, auto&& visit)
{
    auto& [code, name, shape, weight, turns, fragile, top_load, cushion, liquid, softens_above_c, restriction, wrapping,
           own_packaging, shelf, pieces, lowest, gtin, price, customs_words, hs_code, origin, parts, gift_box] = value;
    visit("code", code);
    visit("name", name);
    visit("shape", shape);
    visit("weight", weight);
    visit("turns", turns);
    visit("fragile", fragile);
    visit("top_load", top_load);
    visit("cushion", cushion);
    visit("liquid", liquid);
    visit("softens_above_c", softens_above_c);
    visit("restriction", restriction);
    visit("wrapping", wrapping);
    visit("own_packaging", own_packaging);
    visit("shelf", shelf);
    visit("pieces", pieces);
    visit("lowest", lowest);
    visit("gtin", gtin);
    visit("price", price);
    visit("customs_words", customs_words);
    visit("hs_code", hs_code);
    visit("origin", origin);
    visit("parts", parts);
    visit("gift_box", gift_box);
}

void members(Is<shop::Supply> auto& value, auto&& visit)
{
    auto& [code, name, kind, counted_in, form, max_load, sheet, folded, weight, material, cost, pack, supplier,
           lead_days, on_hand, reorder_at, minutes, made_from, takes, reused] = value;
    visit("code", code);
    visit("name", name);
    visit("kind", kind);
    visit("unit", counted_in);
    visit("form", form);
    visit("max_load", max_load);
    visit("sheet", sheet);
    visit("folded", folded);
    visit("weight", weight);
    visit("material", material);
    visit("cost", cost);
    visit("pack", pack);
    visit("supplier", supplier);
    visit("lead_days", lead_days);
    visit("on_hand", on_hand);
    visit("reorder_at", reorder_at);
    visit("minutes", minutes);
    visit("made_from", made_from);
    visit("takes", takes);
    visit("reused", reused);
}

void members(Is<shop::Wrapping::Use> auto& value, auto&& visit)
{
    auto& [supply, amount] = value;
    visit("supply", supply);
    visit("amount", amount);
}

void members(Is<shop::Wrapping> auto& value, auto&& visit)
{
    auto& [code, name, growth, cushion, squeeze, uses, weight, seconds] = value;
    visit("code", code);
    visit("name", name);
    visit("growth", growth);
    visit("cushion", cushion);
    visit("squeeze", squeeze);
    visit("uses", uses);
    visit("weight", weight);
    visit("seconds", seconds);
}

void members(Is<shop::HouseRule> auto& value, auto&& visit)
{
    auto& [when, good, from, insert, count] = value;
    visit("when", when);
    visit("good", good);
    visit("from", from);
    visit("insert", insert);
    visit("count", count);
}

void members(Is<shop::Address> auto& value, auto&& visit)
{
    auto& [name, company, street, postcode, town, region, country] = value;
    visit("name", name);
    visit("company", company);
    visit("street", street);
    visit("postcode", postcode);
    visit("town", town);
    visit("region", region);
    visit("country", country);
}

void members(Is<shop::House> auto& value, auto&& visit)
{
    auto& [address, contact, currency, trays, ease, lining, rattle, overfill_percent, bulge, heavy, filler, tape, label,
           batch_percent, humidity_percent, scale_step, cut_minutes, hour, service_percent, forget_months, paper,
           margin, label_form, logo, black_only] = value;
    visit("address", address);
    visit("contact", contact);
    visit("currency", currency);
    visit("trays", trays);
    visit("ease", ease);
    visit("lining", lining);
    visit("rattle", rattle);
    visit("overfill_percent", overfill_percent);
    visit("bulge", bulge);
    visit("heavy", heavy);
    visit("filler", filler);
    visit("tape", tape);
    visit("label", label);
    visit("batch_percent", batch_percent);
    visit("humidity_percent", humidity_percent);
    visit("scale_step", scale_step);
    visit("cut_minutes", cut_minutes);
    visit("hour", hour);
    visit("service_percent", service_percent);
    visit("forget_months", forget_months);
    visit("paper", paper);
    visit("margin", margin);
    visit("label_form", label_form);
    visit("logo", logo);
    visit("black_only", black_only);
}

void members(Is<shop::OrderLine> auto& value, auto&& visit)
{
    auto& [title, variant, shop_code, good, count, price, personal_text] = value;
    visit("title", title);
    visit("variant", variant);
    visit("shop_code", shop_code);
    visit("good", good);
    visit("count", count);
    visit("price", price);
    visit("personal_text", personal_text);
}

void members(Is<shop::Gift> auto& value, auto&& visit)
{
    auto& [giver, message] = value;
    visit("giver", giver);
    visit("message", message);
}

void members(Is<shop::OrderKey> auto& value, auto&& visit)
{
    auto& [from_shop, number] = value;
    visit("shop", from_shop);
    visit("number", number);
}

void members(Is<shop::Order> auto& value, auto&& visit)
{
    auto& [key, date, promised, paid, buyer_contact, to, lines, note, gift, service_wanted, postage_paid, called_off] =
        value;
    visit("key", key);
    visit("date", date);
    visit("promised", promised);
    visit("paid", paid);
    visit("buyer_contact", buyer_contact);
    visit("to", to);
    visit("lines", lines);
    visit("note", note);
    visit("gift", gift);
    visit("service_wanted", service_wanted);
    visit("postage_paid", postage_paid);
    visit("called_off", called_off);
}

void members(Is<shop::Piece> auto& value, auto&& visit)
{
    auto& [order, line, good, count] = value;
    visit("order", order);
    visit("line", line);
    visit("good", good);
    visit("count", count);
}

void members(Is<shop::SpecialPlace> auto& value, auto&& visit)
{
    auto& [country, postcode_from, postcode_to, name, in_customs_area, in_tax_area] = value;
    visit("country", country);
    visit("postcode_from", postcode_from);
    visit("postcode_to", postcode_to);
    visit("name", name);
    visit("in_customs_area", in_customs_area);
    visit("in_tax_area", in_tax_area);
}

void members(Is<shop::CustomsRules> auto& value, auto&& visit)
{
    auto& [places, cn22_up_to, limit_included, cn22_most] = value;
    visit("places", places);
    visit("cn22_up_to", cn22_up_to);
    visit("limit_included", limit_included);
    visit("cn22_most", cn22_most);
}

void members(Is<shop::TaxNumbers> auto& value, auto&& visit)
{
    auto& [vat, eori, import_scheme] = value;
    visit("vat", vat);
    visit("eori", eori);
    visit("import_scheme", import_scheme);
}

void members(Is<shop::FileColumn> auto& value, auto&& visit)
{
    auto& [heading, field, words] = value;
    visit("heading", heading);
    visit("field", field);
    visit("words", words);
}

void members(Is<shop::OutFile> auto& value, auto&& visit)
{
    auto& [to, columns, delimiter, decimal_mark] = value;
    visit("to", to);
    visit("columns", columns);
    visit("delimiter", delimiter);
    visit("decimal_mark", decimal_mark);
}

void members(Is<shop::DispatchText> auto& value, auto&& visit)
{
    auto& [language, text] = value;
    visit("language", language);
    visit("text", text);
}

void members(Is<shop::Stamp> auto& value, auto&& visit)
{
    auto& [supply, face] = value;
    visit("supply", supply);
    visit("face", face);
}

void members(Is<shop::Dispatch> auto& value, auto&& visit)
{
    auto& [customs, tax_numbers, send_files, shop_files, texts, stamps] = value;
    visit("customs", customs);
    visit("tax_numbers", tax_numbers);
    visit("send_files", send_files);
    visit("shop_files", shop_files);
    visit("texts", texts);
    visit("stamps", stamps);
}

void members(Is<weighing::Lesson::Taught> auto& value, auto&& visit)
{
    auto& [code, supply, count, thousandths, entered] = value;
    visit("code", code);
    visit("supply", supply);
    visit("count", count);
    visit("thousandths", thousandths);
    visit("entered", entered);
}

void members(Is<weighing::Lesson> auto& value, auto&& visit)
{
    auto& [things, rest, reading] = value;
    visit("things", things);
    visit("rest", rest);
    visit("reading", reading);
}

// Fitting -------------------------------------------------------------------------------------------------------------

void members(Is<fitting::Item> auto& value, auto&& visit)
{
    auto& [id, count, shape, weight, turns, top_load, fragile, content, packed_in, bow] = value;
    visit("id", id);
    visit("count", count);
    visit("shape", shape);
    visit("weight", weight);
    visit("turns", turns);
    visit("top_load", top_load);
    visit("fragile", fragile);
    visit("content", content);
    visit("packed_in", packed_in);
    visit("bow", bow);
}

void members(Is<fitting::Outer> auto& value, auto&& visit)
{
    auto& [id, form, tare, max_load] = value;
    visit("id", id);
    visit("form", form);
    visit("tare", tare);
    visit("max_load", max_load);
}

void members(Is<fitting::Question> auto& value, auto&& visit)
{
    auto& [items, outers, gap, lining, bed, support] = value;
    visit("items", items);
    visit("outers", outers);
    visit("gap", gap);
    visit("lining", lining);
    visit("bed", bed);
    visit("support", support);
}

void members(Is<fitting::Placement> auto& value, auto&& visit)
{
    auto& [item, copy, at, size, axis, content] = value;
    visit("item", item);
    visit("copy", copy);
    visit("at", at);
    visit("size", size);
    visit("axis", axis);
    visit("content", content);
}

void members(Is<fitting::Refusal> auto& value, auto&& visit)
{
    auto& [outer, verdict, proof, reason, short_by, item] = value;
    visit("outer", outer);
    visit("verdict", verdict);
    visit("proof", proof);
    visit("reason", reason);
    visit("short_by", short_by);
    visit("item", item);
}

void members(Is<fitting::Answer> auto& value, auto&& visit)
{
    auto& [verdict, outer, cut_height, contents_thickness, placements, refused, proven_smallest, stopped_by, work] =
        value;
    visit("verdict", verdict);
    visit("outer", outer);
    visit("cut_height", cut_height);
    visit("contents_thickness", contents_thickness);
    visit("placements", placements);
    visit("refused", refused);
    visit("proven_smallest", proven_smallest);
    visit("stopped_by", stopped_by);
    visit("work", work);
}

// Postage -------------------------------------------------------------------------------------------------------------

void members(Is<postage::Format> auto& value, auto&& visit)
{
    auto& [name, most_length, most_width, most_height, least_length, least_width, least_height, most_sum, most_girth,
           roll_most_length, roll_most_sum, roll_least_length, roll_least_sum, tolerance, least_ratio, most_ratio] =
        value;
    visit("name", name);
    visit("most_length", most_length);
    visit("most_width", most_width);
    visit("most_height", most_height);
    visit("least_length", least_length);
    visit("least_width", least_width);
    visit("least_height", least_height);
    visit("most_sum", most_sum);
    visit("most_girth", most_girth);
    visit("roll_most_length", roll_most_length);
    visit("roll_most_sum", roll_most_sum);
    visit("roll_least_length", roll_least_length);
    visit("roll_least_sum", roll_least_sum);
    visit("tolerance", tolerance);
    visit("least_ratio", least_ratio);
    visit("most_ratio", most_ratio);
}

void members(Is<postage::Place> auto& value, auto&& visit)
{
    auto& [country, postcode_from, postcode_to] = value;
    visit("country", country);
    visit("postcode_from", postcode_from);
    visit("postcode_to", postcode_to);
}

void members(Is<postage::Zone> auto& value, auto&& visit)
{
    auto& [name, places] = value;
    visit("name", name);
    visit("places", places);
}

void members(Is<postage::Step> auto& value, auto&& visit)
{
    auto& [service, zone, format, up_to, price] = value;
    visit("service", service);
    visit("zone", zone);
    visit("format", format);
    visit("up_to", up_to);
    visit("price", price);
}

void members(Is<postage::BeyondLast> auto& value, auto&& visit)
{
    auto& [service, zone, format, per_kg, most] = value;
    visit("service", service);
    visit("zone", zone);
    visit("format", format);
    visit("per_kg", per_kg);
    visit("most", most);
}

void members(Is<postage::VolumeStep> auto& value, auto&& visit)
{
    auto& [service, zone, format, up_to, price, most] = value;
    visit("service", service);
    visit("zone", zone);
    visit("format", format);
    visit("up_to", up_to);
    visit("price", price);
    visit("most", most);
}

void members(Is<postage::CutOff> auto& value, auto&& visit)
{
    auto& [weekday, at] = value;
    visit("weekday", weekday);
    visit("at", at);
}

void members(Is<postage::Service> auto& value, auto&& visit)
{
    auto& [code, name, tracked, cover, days_least, days_most, cut_off, weekdays, volumetric_divisor,
           volumetric_rounding, not_sent, volumetric_above, tax_permille, cut_offs, sides_to, sides_up, parcel_post,
           roll_permille] = value;
    visit("code", code);
    visit("name", name);
    visit("tracked", tracked);
    visit("cover", cover);
    visit("days_least", days_least);
    visit("days_most", days_most);
    visit("cut_off", cut_off);
    visit("weekdays", weekdays);
    visit("volumetric_divisor", volumetric_divisor);
    visit("volumetric_rounding", volumetric_rounding);
    visit("not_sent", not_sent);
    visit("volumetric_above", volumetric_above);
    visit("tax_permille", tax_permille);
    visit("cut_offs", cut_offs);
    visit("sides_to", sides_to);
    visit("sides_up", sides_up);
    visit("parcel_post", parcel_post);
    visit("roll_permille", roll_permille);
}

void members(Is<postage::Surcharge> auto& value, auto&& visit)
{
    auto& [name, service, zone, kind, permille, amount, longer_than, heavier_than, only_rolls, from, until, format,
           also_of, wider_than, girth_over, larger_than, only_unboxed, value_above, places] = value;
    visit("name", name);
    visit("service", service);
    visit("zone", zone);
    visit("kind", kind);
    visit("permille", permille);
    visit("amount", amount);
    visit("longer_than", longer_than);
    visit("heavier_than", heavier_than);
    visit("only_rolls", only_rolls);
    visit("from", from);
    visit("until", until);
    visit("format", format);
    visit("also_of", also_of);
    visit("wider_than", wider_than);
    visit("girth_over", girth_over);
    visit("larger_than", larger_than);
    visit("only_unboxed", only_unboxed);
    visit("value_above", value_above);
    visit("places", places);
}

void members(Is<postage::RateSheet> auto& value, auto&& visit)
{
    auto& [carrier, currency, valid_from, valid_until, tax_permille, services, zones, formats, steps, beyond,
           surcharges, volume_steps, holidays] = value;
    visit("carrier", carrier);
    visit("currency", currency);
    visit("valid_from", valid_from);
    visit("valid_until", valid_until);
    visit("tax_permille", tax_permille);
    visit("services", services);
    visit("zones", zones);
    visit("formats", formats);
    visit("steps", steps);
    visit("beyond", beyond);
    visit("surcharges", surcharges);
    visit("volume_steps", volume_steps);
    visit("holidays", holidays);
}

void members(Is<postage::Refused> auto& value, auto&& visit)
{
    auto& [reason, over_by, what, format, heavier_by] = value;
    visit("reason", reason);
    visit("over_by", over_by);
    visit("what", what);
    visit("format", format);
    visit("heavier_by", heavier_by);
}

void members(Is<postage::Part> auto& value, auto&& visit)
{
    auto& [kind, name, amount] = value;
    visit("kind", kind);
    visit("name", name);
    visit("amount", amount);
}

void members(Is<postage::Price> auto& value, auto&& visit)
{
    auto& [total, parts, zone, format, charged, step_edge, next_step, covered] = value;
    visit("total", total);
    visit("parts", parts);
    visit("zone", zone);
    visit("format", format);
    visit("charged", charged);
    visit("step_edge", step_edge);
    visit("next_step", next_step);
    visit("covered", covered);
}

void members(Is<postage::Quote> auto& value, auto&& visit)
{
    auto& [carrier, service, service_name, tracked, days_most, result] = value;
    visit("carrier", carrier);
    visit("service", service);
    visit("service_name", service_name);
    visit("tracked", tracked);
    visit("days_most", days_most);
    visit("result", result);
}

// Planning ------------------------------------------------------------------------------------------------------------

void members(Is<planning::PackedItem> auto& value, auto&& visit)
{
    auto& [kind, id, name, good, supply, wrapping, count, shape, fragile, rolled, folded, under_cushion, weight,
           content] = value;
    visit("kind", kind);
    visit("id", id);
    visit("name", name);
    visit("good", good);
    visit("supply", supply);
    visit("wrapping", wrapping);
    visit("count", count);
    visit("shape", shape);
    visit("fragile", fragile);
    visit("rolled", rolled);
    visit("folded", folded);
    visit("under_cushion", under_cushion);
    visit("weight", weight);
    visit("content", content);
}

void members(Is<planning::Used> auto& value, auto&& visit)
{
    auto& [supply, amount] = value;
    visit("supply", supply);
    visit("amount", amount);
}

void members(Is<records::PlannedPart> auto& value, auto&& visit)
{
    auto& [uses, closed, weight, contents, seconds, kind, lining, reach] = value;
    visit("uses", uses);
    visit("closed", closed);
    visit("weight", weight);
    visit("contents", contents);
    visit("seconds", seconds);
    visit("kind", kind);
    visit("lining", lining);
    visit("reach", reach);
}

void members(Is<planning::PassedOver> auto& value, auto&& visit)
{
    auto& [outer, form, why, refusal, gives] = value;
    visit("outer", outer);
    visit("form", form);
    visit("why", why);
    visit("refusal", refusal);
    visit("gives", gives);
}

void members(Is<planning::ParcelPlan> auto& value, auto&& visit)
{
    auto& [pieces, items, question, outer, cut_height, cut_at, placements, passed_over, proven_smallest,
           contents_thickness, closed, void_volume, filler, filler_volume, tape, uses, weight, contents_weight, holds,
           quotes, chosen, packaging, seconds, work, saves_if_larger, cheaper_outer, part, parts, split_gap_permille,
           squeezed, hand_over, delivered, keeps_promise] = value;
    visit("pieces", pieces);
    visit("items", items);
    visit("question", question);
    visit("outer", outer);
    visit("cut_height", cut_height);
    visit("cut_at", cut_at);
    visit("placements", placements);
    visit("passed_over", passed_over);
    visit("proven_smallest", proven_smallest);
    visit("contents_thickness", contents_thickness);
    visit("closed", closed);
    visit("void_volume", void_volume);
    visit("filler", filler);
    visit("filler_volume", filler_volume);
    visit("tape", tape);
    visit("uses", uses);
    visit("weight", weight);
    visit("contents_weight", contents_weight);
    visit("holds", holds);
    visit("quotes", quotes);
    visit("chosen", chosen);
    visit("packaging", packaging);
    visit("seconds", seconds);
    visit("work", work);
    visit("saves_if_larger", saves_if_larger);
    visit("cheaper_outer", cheaper_outer);
    visit("part", part);
    visit("parts", parts);
    visit("split_gap_permille", split_gap_permille);
    visit("squeezed", squeezed);
    visit("hand_over", hand_over);
    visit("delivered", delivered);
    visit("keeps_promise", keeps_promise);
}

} // namespace stow::intake
