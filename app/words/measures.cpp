#include "app/words/measures.h"

#include <QCoreApplication>
#include <QVariant>

namespace stow::words {

namespace {
constexpr const char* property = "measures";
}

std::string_view name_of(Measures measures)
{
    return measures == Measures::metric ? "metric" : "inches";
}

std::optional<Measures> measures(std::string_view name)
{
    for (const Measures known : {Measures::metric, Measures::inches_and_ounces}) {
        if (name == name_of(known)) return known;
    }
    return std::nullopt;
}

void use_measures(QCoreApplication& application, Measures measures)
{
    application.setProperty(property, static_cast<int>(measures));
}

Measures measures_in_use()
{
    const QCoreApplication* application = QCoreApplication::instance();
    return application == nullptr ? Measures::metric : static_cast<Measures>(application->property(property).toInt());
}

QString unit_of_weight()
{
    return measures_in_use() == Measures::metric ? QStringLiteral("g") : QStringLiteral("oz");
}

} // namespace stow::words
