#include "core/shop/dispatch.h"

namespace stow::shop {

namespace {

// Parts of countries in and out of the Union's customs and tax areas. From memory, no source at hand: a list to start
// from, which she edits by what her post and customs office say.
std::vector<SpecialPlace> known_places()
{
    return {
        {"ES", "35", "35", "Canary Islands", true, false},
        {"ES", "38", "38", "Canary Islands", true, false},
        {"ES", "51", "51", "Ceuta", false, false},
        {"ES", "52", "52", "Melilla", false, false},
        {"FI", "22", "22", "Åland", true, false},
        {"AX", "", "", "Åland", true, false},
        {"DE", "27498", "27498", "Heligoland", false, false},
        {"DE", "78266", "78266", "Büsingen", false, false},
        {"IT", "23041", "23041", "Livigno", false, false},
        {"IT", "22061", "22061", "Campione d'Italia", true, false},
        {"GR", "63086", "63086", "Mount Athos", true, false},
        {"FR", "97", "97", "French overseas departments", true, false},
        {"MC", "", "", "Monaco", true, true},
        {"GB", "BT", "BT", "Northern Ireland", true, true},
    };
}

} // namespace

const std::vector<FileColumn>& plain_send_columns()
{
    static const std::vector<FileColumn> columns{{"reference", "parcel"},    {"name", "name"},
                                                 {"company", "company"},     {"street", "street"},
                                                 {"street 2", "street 2"},   {"postcode", "postcode"},
                                                 {"town", "town"},           {"region", "region"},
                                                 {"country", "country"},     {"service", "service"},
                                                 {"weight (g)", "weight g"}, {"length (mm)", "length mm"},
                                                 {"width (mm)", "width mm"}, {"height (mm)", "height mm"}};
    return columns;
}

const std::vector<FileColumn>& plain_shop_columns()
{
    static const std::vector<FileColumn> columns{
        {"order", "order"}, {"carrier", "carrier"}, {"tracking", "tracking"}, {"sent on", "handed over"}};
    return columns;
}

const std::vector<std::string>& send_fields()
{
    static const std::vector<std::string> fields{"parcel",
                                                 "order",
                                                 "shop",
                                                 "name",
                                                 "company",
                                                 "street",
                                                 "street 2",
                                                 "postcode",
                                                 "town",
                                                 "region",
                                                 "country",
                                                 "contact",
                                                 "service",
                                                 "carrier",
                                                 "weight g",
                                                 "weight kg",
                                                 "length mm",
                                                 "width mm",
                                                 "height mm",
                                                 "length cm",
                                                 "width cm",
                                                 "height cm",
                                                 "value",
                                                 "currency",
                                                 "contents",
                                                 "tracking",
                                                 "handed over",
                                                 "postage",
                                                 "vat number",
                                                 "eori number",
                                                 "import scheme number",
                                                 "text"};
    return fields;
}

Dispatch first_dispatch()
{
    Dispatch first;
    first.customs.places = known_places();
    first.texts = {
        {"en", "Dear {name},\nyour order {order} is on its way with {carrier}. {number}\nIt should arrive by "
               "{arrives}.\n{workshop}"},
        {"de", "Guten Tag {name},\nIhre Bestellung {order} ist mit {carrier} unterwegs. {number}\nSie sollte "
               "bis {arrives} da sein.\n{workshop}"}};
    return first;
}

} // namespace stow::shop
