#include "app/painting/fonts.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QString>
#include <QStringList>
#include <QtMath>

// Outside of any namespace, as Qt asks for resources of static libraries.
static void make_resources_known()
{
    Q_INIT_RESOURCE(stow_fonts);
}

namespace stow::painting {

bool load_fonts()
{
    make_resources_known();
    bool all = true;
    for (const char* file : {"B612-Regular.otf", "B612-Bold.otf", "NotoSans-Regular.ttf", "NotoSans-Bold.ttf"}) {
        all = QFontDatabase::addApplicationFont(QStringLiteral(":/stow/fonts/") + QLatin1String(file)) >= 0 && all;
    }
    return all;
}

QFont font_of(const papers::Style& style)
{
    QFont font;
    font.setFamilies(QStringList{QStringLiteral("B612"), QStringLiteral("Noto Sans")});
    font.setPixelSize(style.size);
    font.setBold(style.face == papers::Face::bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferQuality);
    return font;
}

int FontMeasure::width(std::string_view utf8, const papers::Style& style) const
{
    const QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
    return qCeil(QFontMetricsF(font_of(style)).horizontalAdvance(text));
}

// A quarter more than the em: B612 is set with air.
int FontMeasure::line_height(const papers::Style& style) const
{
    return style.size * 5 / 4;
}

} // namespace stow::painting
