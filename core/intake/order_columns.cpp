#include "core/intake/order_columns.h"

#include "core/intake/numbers.h"
#include "core/shop/countries.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace stow::intake {

namespace {

using F = OrderField;

struct Known {
    F field;
    std::string_view name;
    std::string_view words; // headings, folded, parted by spaces; the likelier first
};

// Trade words of English and German; each line is one of ours, none is taken from a particular shop's export.
constexpr std::array<Known, all_order_fields.size()> known{{
    {F::number, "order number",
     "ordernumber orderno ordernr orderid order number bestellnummer bestellnr bestellung auftragsnummer auftragsnr "
     "auftrag"},
    {F::date, "date",
     "orderdate dateoforder orderedon placedon saledate created date bestelldatum bestelltam auftragsdatum kaufdatum "
     "eingang datum"},
    {F::promised, "promised",
     "promised promisedby promisedfor sendby dispatchby deliverby due duedate zugesagt zugesagtbis versprochenbis "
     "versandbis liefertermin fallig"},
    {F::first_name, "first name", "firstname forename givenname vorname"},
    {F::name, "name",
     "name fullname buyer buyername customer customername recipient recipientname lastname surname familyname nachname "
     "familienname kunde kundenname kaufer kaufername empfanger"},
    {F::company, "company", "company companyname organisation organization firma firmenname unternehmen"},
    {F::street, "street",
     "street street1 streetaddress address address1 addressline1 strasse strasse1 strasseundhausnummer "
     "strassehausnummer strassehausnr strassenr adresse adresszeile1 anschrift"},
    {F::house_number, "house number", "housenumber houseno hausnummer hausnr"},
    {F::street_2, "street 2",
     "street2 address2 addressline2 furtheraddress flat strasse2 adresszusatz adresszeile2 zusatz"},
    {F::postcode, "postcode", "postcode postalcode zip zipcode plz postleitzahl"},
    {F::town, "town", "town city townorcity place ort stadt wohnort"},
    {F::region, "region", "region state province county bundesland kanton"},
    {F::country, "country", "country countrycode land landercode staat"},
    {F::contact, "contact",
     "contact email emailaddress mail phone telephone mobile kontakt emailadresse telefon handy"},
    {F::title, "title",
     "title item itemname itemtitle product productname article articlename goods description artikel artikelname "
     "artikelbezeichnung bezeichnung produkt produktname ware titel"},
    {F::variant, "variant", "variant variation option options variante ausfuhrung auswahl colour color farbe"},
    {F::shop_code, "shop code",
     "code itemcode itemnumber articlecode articlenumber productcode productnumber sku artikelnummer artikelnr artnr "
     "artikelcode"},
    {F::count, "count", "count quantity qty pieces howmany menge anzahl stuck stuckzahl"},
    {F::price, "price", "unitprice priceeach itemprice price einzelpreis stuckpreis preis"},
    {F::currency, "currency", "currency currencycode wahrung"},
    {F::personal_text, "personal text",
     "personaltext personalisation personalization engraving engrave wording gravur wunschtext personalisierung "
     "beschriftung"},
    {F::note, "note",
     "note notes buyernote customernote remark remarks comment comments message bemerkung anmerkung notiz hinweis "
     "kommentar nachricht"},
    {F::is_gift, "gift", "gift isgift asagift geschenk alsgeschenk"},
    {F::gift_message, "gift message",
     "giftmessage giftnote gifttext geschenktext geschenknachricht grusstext grussbotschaft gruss"},
    {F::giver, "giver", "giver giftfrom from geschenkvon schenker schenkende von"},
    {F::service, "service", "service servicewanted postageservice deliveryservice sentby versandart lieferart"},
    {F::postage, "postage paid",
     "postagepaid postage deliverycharge deliverycost postagecharged versandkosten porto lieferkosten"},
    {F::paid, "paid", "paid paidon payment paymentstatus bezahlt bezahltam zahlung zahlungsstatus zahlungseingang"},
    {F::called_off, "called off",
     "calledoff cancelled canceled orderstatus status storniert storno abgesagt bestellstatus"},
}};

constexpr std::string_view delivery_words[] = {"delivery", "deliverto",      "sendto",        "shipping",
                                               "shipto",   "recipient",      "lieferadresse", "lieferanschrift",
                                               "liefer",   "versandadresse", "versand",       "empfanger"};

bool is_of_address(F field)
{
    return field >= F::first_name && field <= F::country;
}

bool holds_word(std::string_view words, std::string_view word)
{
    while (!words.empty()) {
        const auto end = words.find(' ');
        if (words.substr(0, end) == word) return true;
        if (end == std::string_view::npos) break;
        words.remove_prefix(end + 1);
    }
    return false;
}

// The place of `word` among `words`: the likelier, the smaller.
std::optional<std::size_t> rank(std::string_view words, std::string_view word)
{
    if (word.empty() || !holds_word(words, word)) return std::nullopt;
    std::size_t at = 0;
    while (words.substr(0, words.find(' ')) != word) {
        words.remove_prefix(words.find(' ') + 1);
        ++at;
    }
    return at;
}

// "Price (EUR)" says what "Price" says.
std::string without_brackets(std::string_view heading)
{
    const auto open = heading.find_first_of("([");
    return folded(heading.substr(0, open));
}

// How well a heading names a field: smaller is better.
std::optional<std::size_t> fit_of(const Known& field, const std::string& heading)
{
    constexpr std::size_t plain_penalty = 1000;
    if (is_of_address(field.field)) {
        for (const std::string_view prefix : delivery_words) {
            if (heading.size() <= prefix.size() || heading.compare(0, prefix.size(), prefix) != 0) continue;
            if (const auto r = rank(field.words, std::string_view(heading).substr(prefix.size()))) return r;
        }
    }
    const auto r = rank(field.words, heading);
    return r ? std::optional(*r + plain_penalty) : std::nullopt;
}

} // namespace

std::string_view name_of(OrderField field)
{
    const auto found = std::find_if(known.begin(), known.end(), [&](const Known& k) { return k.field == field; });
    return found == known.end() ? std::string_view{} : found->name;
}

std::optional<OrderField> order_field(std::string_view name)
{
    const auto found = std::find_if(known.begin(), known.end(), [&](const Known& k) { return k.name == name; });
    if (found == known.end()) return std::nullopt;
    return found->field;
}

ColumnMatch guess_columns(const Csv& csv, std::string shop)
{
    struct Offer {
        std::size_t fit;
        std::size_t column;
        F field;
    };
    std::vector<Offer> offers;
    for (std::size_t i = 0; i < csv.headings.size(); ++i) {
        const std::string whole = folded(csv.headings[i]), bare = without_brackets(csv.headings[i]);
        for (const Known& field : known) {
            auto fit = fit_of(field, whole);
            if (!fit) fit = fit_of(field, bare);
            if (fit) offers.push_back({*fit, i, field.field});
        }
    }
    // Best first; among equals the left column, so that the answer does not depend on chance.
    std::stable_sort(offers.begin(), offers.end(), [](const Offer& a, const Offer& b) { return a.fit < b.fit; });
    ColumnMatch match;
    match.shop = std::move(shop);
    std::vector<bool> used(csv.headings.size(), false);
    for (const Offer& offer : offers) {
        if (used[offer.column] || match.headings.count(offer.field) != 0) continue;
        match.headings.emplace(offer.field, csv.headings[offer.column]);
        used[offer.column] = true;
    }
    return match;
}

std::vector<OrderField> missing_fields(const ColumnMatch& match, const Csv& csv)
{
    const auto given = [&](F field) {
        const auto found = match.headings.find(field);
        return found != match.headings.end() &&
               std::find(csv.headings.begin(), csv.headings.end(), found->second) != csv.headings.end();
    };
    std::vector<F> missing;
    for (const F field : {F::number, F::date, F::name, F::street, F::town}) {
        if (!given(field)) missing.push_back(field);
    }
    if (!given(F::title) && !given(F::shop_code)) missing.push_back(F::title);
    // A heading that is named but not there is a fault of the match, whatever the field.
    for (const auto& [field, heading] : match.headings) {
        if (!given(field) && std::find(missing.begin(), missing.end(), field) == missing.end())
            missing.push_back(field);
    }
    return missing;
}

std::string to_text(const ColumnMatch& match)
{
    nlohmann::ordered_json columns = nlohmann::ordered_json::object();
    for (const auto& [field, heading] : match.headings) columns[std::string(name_of(field))] = heading;
    const nlohmann::ordered_json json = {{"shop", match.shop},
                                         {"columns", columns},
                                         {"dates", name_of(match.dates)},
                                         {"home", match.home},
                                         {"currency", match.currency.code()}};
    return json.dump(2);
}

tl::expected<ColumnMatch, std::string> column_match(std::string_view text)
{
    const auto json = nlohmann::json::parse(text, nullptr, false);
    if (!json.is_object()) return tl::unexpected<std::string>("not a JSON object");
    ColumnMatch match;
    for (const auto& [key, value] : json.items()) {
        if (key == "columns") {
            if (!value.is_object()) return tl::unexpected<std::string>("columns: not an object");
            for (const auto& [name, heading] : value.items()) {
                const auto field = order_field(name);
                if (!field || !heading.is_string()) return tl::unexpected("columns: " + name);
                match.headings.emplace(*field, heading.get<std::string>());
            }
            continue;
        }
        if (!value.is_string()) return tl::unexpected(key + ": not a text");
        const auto word = value.get<std::string>();
        if (key == "shop") {
            match.shop = word;
        } else if (key == "dates") {
            const auto order = date_order(word);
            if (!order) return tl::unexpected("dates: " + word);
            match.dates = *order;
        } else if (key == "home") {
            if (!shop::is_country(word)) return tl::unexpected("home: " + word);
            match.home = word;
        } else if (key == "currency") {
            const auto currency = Currency::from(word);
            if (!currency) return tl::unexpected("currency: " + word);
            match.currency = *currency;
        } else {
            return tl::unexpected(key);
        }
    }
    return match;
}

} // namespace stow::intake
