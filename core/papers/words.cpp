#include "core/papers/words.h"

#include "core/measure/decimal.h"

#include <algorithm>
#include <utility>

namespace stow::papers {

namespace {

struct Row {
    Word word;
    std::string_view english, german;
};

// In the order of Word.
// clang-format off
constexpr std::array rows{
    Row{Word::pick_list, "Pick list", "Sammelliste"},
    Row{Word::pick_list_by_order, "Pick list by order", "Sammelliste je Bestellung"},
    Row{Word::round, "Round", "Runde"},
    Row{Word::trays, "trays", "Kisten"},
    Row{Word::tray, "Tray", "Kiste"},
    Row{Word::shelf, "Shelf", "Regal"},
    Row{Word::no_shelf, "no place", "ohne Platz"},
    Row{Word::pieces, "pieces", "Stück"},
    Row{Word::continued, "continued", "Fortsetzung"},
    Row{Word::page, "Page", "Seite"},
    Row{Word::of, "of", "von"},
    Row{Word::packing_slip, "Packing slip", "Lieferschein"},
    Row{Word::order, "Order", "Bestellung"},
    Row{Word::orders, "Orders", "Bestellungen"},
    Row{Word::from_date, "of", "vom"},
    Row{Word::for_whom, "For", "Für"},
    Row{Word::item, "Item", "Artikel"},
    Row{Word::count, "Qty", "Menge"},
    Row{Word::price, "Each", "Einzeln"},
    Row{Word::sum, "Sum", "Summe"},
    Row{Word::goods_total, "Goods", "Waren"},
    Row{Word::postage, "Postage", "Porto"},
    Row{Word::total, "Total", "Gesamt"},
    Row{Word::part, "Parcel {} of {}", "Paket {} von {}"},
    Row{Word::follows_apart, "In another parcel of this order", "In einem anderen Paket dieser Bestellung"},
    Row{Word::thank_you, "Thank you for your order.", "Vielen Dank für Ihre Bestellung."},
    Row{Word::gift_slip, "A gift for you", "Ein Geschenk für Sie"},
    Row{Word::a_gift_from, "From", "Von"},
    Row{Word::exchange_number, "To ask about this gift or exchange it, name this number:", "Für Fragen oder Umtausch nennen Sie bitte diese Nummer:"},
    Row{Word::questions, "Questions?", "Fragen?"},
    Row{Word::bench_card, "Bench card", "Packkarte"},
    Row{Word::put_in, "Put in", "Einlegen"},
    Row{Word::layer, "Layer", "Lage"},
    Row{Word::filler, "Filler", "Füllung"},
    Row{Word::filler_none, "none", "keine"},
    Row{Word::tape, "Tape", "Klebeband"},
    Row{Word::weigh, "Weight", "Gewicht"},
    Row{Word::service, "Service", "Dienst"},
    Row{Word::no_service, "No service takes this parcel", "Kein Dienst nimmt dieses Paket"},
    Row{Word::closed_size, "Closed", "Geschlossen"},
    Row{Word::gift_no_prices, "Gift: no price anywhere in this parcel", "Geschenk: nirgends ein Preis in diesem Paket"},
    Row{Word::note_from_buyer, "The buyer writes", "Der Käufer schreibt"},
    Row{Word::smallest_proven, "smallest that holds it, proven", "die kleinste, bewiesen"},
    Row{Word::caution_heavy, "Heavy: split it, use the trolley, or let the courier lift", "Schwer: teilen, Rollwagen nehmen oder den Zusteller heben lassen"},
    Row{Word::caution_glass, "Glass: keep off the walls", "Glas: nicht an die Wand"},
    Row{Word::caution_flammable, "Flammable: ask the carrier before it goes", "Entzündlich: vorher den Zusteller fragen"},
    Row{Word::caution_liquid, "Liquid: caps tight, upright", "Flüssig: Deckel fest, aufrecht"},
    Row{Word::carton, "Carton", "Karton"},
    Row{Word::gift_box, "Gift box", "Geschenkschachtel"},
    Row{Word::mailer, "Mailer", "Versandtasche"},
    Row{Word::padded_mailer, "Padded mailer", "Polstertasche"},
    Row{Word::board_mailer, "Board mailer", "Pappversandtasche"},
    Row{Word::tube, "Tube", "Versandrohr"},
    Row{Word::from, "From", "Von"},
    Row{Word::to, "To", "An"},
    Row{Word::parcel, "Parcel", "Paket"},
    Row{Word::parcels, "Parcels", "Pakete"},
    Row{Word::hand_over_list, "Hand-over list", "Übergabeliste"},
    Row{Word::number, "No.", "Nr."},
    Row{Word::tracking, "Tracking number", "Sendungsnummer"},
    Row{Word::untracked, "no number", "ohne Nummer"},
    Row{Word::all_together, "{} parcels", "{} Pakete"},
    Row{Word::one_together, "1 parcel", "1 Paket"},
    Row{Word::handed_over_by, "Handed over by", "Übergeben von"},
    Row{Word::taken_by, "Taken by", "Übernommen von"},
    Row{Word::name_time_signature, "name, time, signature", "Name, Uhrzeit, Unterschrift"},
    Row{Word::reprint, "Reprint (print {}): {}", "Nachdruck ({}. Druck): {}"},
    Row{Word::label_print, "print {}", "{}. Druck"},
    Row{Word::insert_slip, "Packing slip", "Lieferschein"},
    Row{Word::up_to_layer, "up to layer {}", "bis Lage {}"},
    Row{Word::gift, "gift", "Geschenk"},
    Row{Word::under_cushion, "flat on the floor, beneath the cushion", "flach auf den Boden, unter das Polster"},
    Row{Word::folded, "folded", "gefaltet"},
    Row{Word::rolled, "rolled", "gerollt"},
    Row{Word::cut_down, "cut down to {} inside", "innen auf {} Höhe kürzen"},
    Row{Word::inside_it, "inside it", "darin"},
    Row{Word::gift_note, "Gift note", "Geschenkkarte"},
    Row{Word::customs_data, "Customs data", "Zollangaben"},
    Row{Word::customs_note, "In the order of forms CN 22 and CN 23, to copy or hand in", "In der Reihenfolge von CN 22 und CN 23, zum Übertragen"},
    Row{Word::category, "Category of item", "Art der Sendung"},
    Row{Word::sold_goods, "sale of goods", "Warenverkauf"},
    Row{Word::gift_category, "gift", "Geschenk"},
    Row{Word::documents, "documents", "Dokumente"},
    Row{Word::sample, "commercial sample", "Warenmuster"},
    Row{Word::returned, "returned goods", "Warenrücksendung"},
    Row{Word::description, "Detailed description of contents", "Genaue Bezeichnung des Inhalts"},
    Row{Word::net_weight, "Net weight", "Nettogewicht"},
    Row{Word::gross_weight, "Total gross weight", "Gesamtbruttogewicht"},
    Row{Word::value, "Value", "Wert"},
    Row{Word::tariff_number, "HS tariff no.", "Zolltarif-Nr."},
    Row{Word::origin, "Origin", "Ursprung"},
    Row{Word::missing, "missing", "fehlt"},
    Row{Word::date_signature, "date, signature of the sender", "Datum, Unterschrift des Absenders"},
    Row{Word::reorder_list, "Reorder list", "Nachbestellliste"},
    Row{Word::making_list, "Making list", "Fertigungsliste"},
    Row{Word::on_hand, "On hand", "Vorrat"},
    Row{Word::to_order, "Order", "Bestellen"},
    Row{Word::to_make, "Make", "Fertigen"},
    Row{Word::no_supplier, "No supplier named", "Kein Lieferant genannt"},
    Row{Word::material_report, "Packaging by material", "Verpackung nach Material"},
    Row{Word::material_covers, "Total: what the shop book says was used up in packing, and the goods' own packaging. Apart from it: what came in with other people's goods and was used again. Each country's register decides what is to be reported, and in which classes.", "Gesamt: was laut Ladenbuch beim Packen verbraucht wurde, und die Verpackung der Ware selbst. Daneben: was mit fremder Ware kam und wiederverwendet wurde. Was zu melden ist und in welchen Klassen, sagt das Register des jeweiligen Landes."},
    Row{Word::all_countries, "All countries", "Alle Länder"},
    Row{Word::goods_own, "of it on the goods", "davon an der Ware"},
    Row{Word::used_again, "used again", "wiederverwendet"},
    Row{Word::return_parcel, "Return", "Rücksendung"},
    Row{Word::command_cards, "Command cards", "Befehlskarten"},
    Row{Word::command_cards_note, "Cut apart and fixed at the bench, they do with the scanner what keys do.", "Ausgeschnitten am Packtisch befestigt, tun sie mit dem Scanner, was Tasten tun."},
    Row{Word::command_done, "Done", "Erledigt"},
    Row{Word::command_back, "One step back", "Einen Schritt zurück"},
    Row{Word::command_later, "This parcel later", "Dieses Paket später"},
    Row{Word::command_box_gone, "This box is gone", "Diese Hülle ist aus"},
    Row{Word::command_label_again, "Label once more", "Etikett noch einmal"},
    Row{Word::command_undo, "Undo", "Rückgängig"},
    Row{Word::command_go_on, "Go on after a stop", "Nach einem Halt weiter"},
    Row{Word::material_paper, "Paper and board", "Papier und Pappe"},
    Row{Word::material_plastic, "Plastic", "Kunststoff"},
    Row{Word::material_glass, "Glass", "Glas"},
    Row{Word::material_wood, "Wood", "Holz"},
    Row{Word::material_steel, "Steel", "Stahl"},
    Row{Word::material_aluminium, "Aluminium", "Aluminium"},
    Row{Word::material_composite, "Composite", "Verbund"},
    Row{Word::material_other, "Other", "Sonstiges"},
};
// clang-format on
static_assert(rows.size() == static_cast<std::size_t>(Word::how_many));
static_assert([] {
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].word != static_cast<Word>(i)) return false;
    }
    return true;
}());

// What buyers read, in the order of Word.
struct BuyersRow {
    Word word;
    std::array<std::string_view, 3> french_italian_spanish;
};
// clang-format off
constexpr std::array buyers_rows{
    BuyersRow{Word::continued, {"suite", "continua", "continuación"}},
    BuyersRow{Word::page, {"Page", "Pagina", "Página"}},
    BuyersRow{Word::of, {"sur", "di", "de"}},
    BuyersRow{Word::packing_slip, {"Bon de livraison", "Distinta di spedizione", "Albarán de entrega"}},
    BuyersRow{Word::order, {"Commande", "Ordine", "Pedido"}},
    BuyersRow{Word::orders, {"Commandes", "Ordini", "Pedidos"}},
    BuyersRow{Word::from_date, {"du", "del", "del"}},
    BuyersRow{Word::for_whom, {"Pour", "Per", "Para"}},
    BuyersRow{Word::item, {"Article", "Articolo", "Artículo"}},
    BuyersRow{Word::count, {"Qté", "Q.tà", "Cant."}},
    BuyersRow{Word::price, {"Prix", "Prezzo", "Precio"}},
    BuyersRow{Word::sum, {"Montant", "Importo", "Importe"}},
    BuyersRow{Word::goods_total, {"Articles", "Merce", "Artículos"}},
    BuyersRow{Word::postage, {"Port", "Spedizione", "Envío"}},
    BuyersRow{Word::total, {"Total", "Totale", "Total"}},
    BuyersRow{Word::part, {"Colis {} sur {}", "Pacco {} di {}", "Paquete {} de {}"}},
    BuyersRow{Word::follows_apart, {"Dans un autre colis de cette commande", "In un altro pacco di questo ordine", "En otro paquete de este pedido"}},
    BuyersRow{Word::thank_you, {"Merci de votre commande.", "Grazie per il Suo ordine.", "Gracias por su pedido."}},
    BuyersRow{Word::gift_slip, {"Un cadeau pour vous", "Un regalo per Lei", "Un regalo para usted"}},
    BuyersRow{Word::a_gift_from, {"De la part de", "Da", "De parte de"}},
    BuyersRow{Word::exchange_number, {"Pour toute question sur ce cadeau ou pour l'échanger, indiquez ce numéro :", "Per domande su questo regalo o per cambiarlo, indichi questo numero:", "Para preguntar por este regalo o cambiarlo, indique este número:"}},
    BuyersRow{Word::reprint, {"Réimpression (tirage {}) : {}", "Ristampa (stampa n. {}): {}", "Reimpresión (n.º {}): {}"}},
    BuyersRow{Word::questions, {"Des questions ?", "Domande?", "¿Preguntas?"}},
};
// clang-format on

constexpr std::array<std::array<std::string_view, 12>, all_languages.size()> months{
    {{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November",
      "December"},
     {"Januar", "Februar", "März", "April", "Mai", "Juni", "Juli", "August", "September", "Oktober", "November",
      "Dezember"},
     {"janvier", "février", "mars", "avril", "mai", "juin", "juillet", "août", "septembre", "octobre", "novembre",
      "décembre"},
     {"gennaio", "febbraio", "marzo", "aprile", "maggio", "giugno", "luglio", "agosto", "settembre", "ottobre",
      "novembre", "dicembre"},
     {"enero", "febrero", "marzo", "abril", "mayo", "junio", "julio", "agosto", "septiembre", "octubre", "noviembre",
      "diciembre"}}};

constexpr const char* no_break_space = "\u00A0";

// A decimal with a point as the language writes it, thousands grouped.
std::string localised(std::string plain, Language language)
{
    const bool comma = language != Language::english;
    const std::size_t point = plain.find('.');
    if (point != std::string::npos && comma) plain[point] = ',';
    const std::size_t whole_end = point == std::string::npos ? plain.size() : point;
    const std::size_t first = plain[0] == '-' ? 1 : 0;
    for (std::size_t at = whole_end; at > first + 3;) {
        at -= 3;
        plain.insert(at, language == Language::french ? no_break_space : comma ? "." : ",");
    }
    return plain;
}

// One decimal, left out when it is zero.
std::string tenths(std::int64_t units, Language language)
{
    return units % 10 == 0 ? localised(std::to_string(units / 10), language) : localised(unscaled(units, 1), language);
}

} // namespace

Language language_for(std::string_view country)
{
    // By what most people there speak (common practice, no source); Belgium and Canada have no one language.
    constexpr std::array<std::pair<Language, std::string_view>, 4> spoken{
        {{Language::german, "DE AT LI CH"},
         {Language::french, "FR MC LU"},
         {Language::italian, "IT SM VA"},
         {Language::spanish, "ES AR BO CL CO CR CU DO EC GT HN MX NI PA PE PR PY SV UY VE"}}};
    if (country.size() != 2) return Language::english;
    for (const auto& [language, countries] : spoken) {
        if (const auto at = countries.find(country); at != std::string_view::npos && at % 3 == 0) return language;
    }
    return Language::english;
}

std::string_view code_of(Language language)
{
    switch (language) {
    case Language::english: return "en";
    case Language::german: return "de";
    case Language::french: return "fr";
    case Language::italian: return "it";
    case Language::spanish: return "es";
    }
    return {};
}

std::string_view Words::operator()(Word word) const
{
    const Row& row = rows[static_cast<std::size_t>(word)];
    if (language_ == Language::english) return row.english;
    if (language_ == Language::german) return row.german;
    const auto* const found =
        std::find_if(buyers_rows.begin(), buyers_rows.end(), [&](const BuyersRow& b) { return b.word == word; });
    if (found == buyers_rows.end()) return row.english;
    return found->french_italian_spanish.at(static_cast<std::size_t>(language_) -
                                            static_cast<std::size_t>(Language::french));
}

std::string Words::with(Word word, const std::string& first, const std::string& second) const
{
    std::string text((*this)(word));
    for (const std::string& value : {first, second}) {
        const std::size_t gap = text.find("{}");
        if (gap != std::string::npos) text.replace(gap, 2, value);
    }
    return text;
}

std::string Words::reprinted(const Reprint& reprint) const
{
    return with(Word::reprint, std::to_string(reprint.print), date(reprint.day) + ", " + to_text(reprint.time));
}

std::string Words::quoted(const std::string& text) const
{
    switch (language_) {
    case Language::english: return "“" + text + "”";
    case Language::german: return "„" + text + "“";
    case Language::french: return std::string("«") + no_break_space + text + no_break_space + "»";
    case Language::italian:
    case Language::spanish: break;
    }
    return "«" + text + "»";
}

std::string Words::date(Date date) const
{
    const std::chrono::year_month_day day(date);
    const std::string_view month = months.at(static_cast<std::size_t>(language_))
                                       .at(static_cast<std::size_t>(static_cast<unsigned>(day.month()) - 1));
    const unsigned number = static_cast<unsigned>(day.day());
    std::string text = std::to_string(number);
    if (language_ == Language::german) text += '.';
    if (language_ == Language::french && number == 1) text += "er";
    const std::string_view between = language_ == Language::spanish ? " de " : " ";
    return text.append(between).append(month).append(between) + std::to_string(static_cast<int>(day.year()));
}

std::string Words::money(Money amount) const
{
    return localised(unscaled(amount.minor, amount.currency.places()), language_) + " " + amount.currency.code();
}

std::string Words::weight(Weight weight) const
{
    const std::int64_t whole = (weight.units + 5) / 10; // grams
    if (whole < 1000) return std::to_string(whole) + " g";
    return localised(unscaled((whole + 5) / 10, 2), language_) + " kg";
}

std::string Words::weight(const shop::WeightEstimate& estimate) const
{
    const std::int64_t mean = (estimate.mean.units + 5) / 10, twice = (2 * estimate.spread.units + 5) / 10;
    return localised(std::to_string(mean), language_) + " ± " + localised(std::to_string(twice), language_) + " g";
}

std::string Words::size(const Size& size) const
{
    return tenths(size.x.units, language_) + " × " + tenths(size.y.units, language_) + " × " +
           tenths(size.z.units, language_) + " mm";
}

std::string Words::flat_size(const Size& size) const
{
    return tenths(size.x.units, language_) + " × " + tenths(size.y.units, language_) + " mm";
}

std::string Words::length(Length length) const
{
    if (length < mm(500)) return tenths(length.units, language_) + " mm";
    return localised(unscaled((length.units + 500) / 1000, 1), language_) + " m";
}

std::string Words::litres(Volume volume) const
{
    return localised(unscaled((volume.units + 50'000'000) / 100'000'000, 1), language_) + " L";
}

} // namespace stow::papers
