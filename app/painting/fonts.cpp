#include "app/painting/fonts.h"

#include <QFile>
#include <QFontDatabase>
#include <QString>
#include <QStringList>
#include <QtEndian>
#include <QtMath>

// Outside of any namespace, as Qt asks for resources of static libraries.
static void make_resources_known()
{
    Q_INIT_RESOURCE(stow_fonts);
}

namespace stow::painting {

namespace {

// A name as long as the one it replaces, so that the name table keeps its offsets.
constexpr char original_name[] = "B612";
constexpr char own_name[] = "Stow";
static_assert(sizeof original_name == sizeof own_name);

quint32 big_endian(const QByteArray& bytes, qsizetype at)
{
    return qFromBigEndian<quint32>(bytes.constData() + at);
}

// The font with another family name: replaced in its `name` table only (OpenType: 12 bytes of header, then 16 a table:
// tag, checksum, offset, length), in both encodings it may stand in.
QByteArray renamed(QByteArray font)
{
    const auto tables = qFromBigEndian<quint16>(font.constData() + 4);
    for (quint16 i = 0; i < tables; ++i) {
        const qsizetype record = 12 + 16 * i;
        if (font.mid(record, 4) != "name") continue;
        const auto offset = static_cast<qsizetype>(big_endian(font, record + 8));
        const auto length = static_cast<qsizetype>(big_endian(font, record + 12));
        QByteArray names = font.mid(offset, length);
        const auto wide = [](const char* text) {
            QByteArray two_bytes_each;
            for (; *text != 0; ++text) two_bytes_each.append('\0').append(*text);
            return two_bytes_each;
        };
        names.replace(wide(original_name), wide(own_name));
        names.replace(original_name, own_name);
        font.replace(offset, length, names);
    }
    return font;
}

} // namespace

QString text_family()
{
    return QString::fromLatin1(own_name);
}

bool load_fonts()
{
    make_resources_known();
    bool all = true;
    for (const char* file : {"B612-Regular.otf", "B612-Bold.otf", "NotoSans-Regular.ttf", "NotoSans-Bold.ttf"}) {
        QFile resource(QStringLiteral(":/stow/fonts/") + QLatin1String(file));
        if (!resource.open(QIODevice::ReadOnly)) return false;
        all = QFontDatabase::addApplicationFontFromData(renamed(resource.readAll())) >= 0 && all;
    }
    return all;
}

QFont font_of(const papers::Style& style)
{
    QFont font;
    font.setFamilies(QStringList{text_family(), QStringLiteral("Noto Sans")});
    font.setPixelSize(style.size);
    font.setBold(style.face == papers::Face::bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferQuality);
    return font;
}

int FontMeasure::width(std::string_view utf8, const papers::Style& style) const
{
    constexpr std::size_t most_remembered = 20'000;
    auto font = fonts_.find({style.size, style.face});
    if (font == fonts_.end()) {
        font = fonts_.emplace(std::pair(style.size, style.face), OneFont{QFontMetricsF(font_of(style)), {}}).first;
    }
    auto& [metrics, widths] = font->second;
    if (const auto known = widths.find(utf8); known != widths.end()) return known->second;
    if (widths.size() >= most_remembered) widths.clear();
    const QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
    return widths[std::string(utf8)] = qCeil(metrics.horizontalAdvance(text));
}

// A quarter more than the em: B612 is set with air.
int FontMeasure::line_height(const papers::Style& style) const
{
    return style.size * 5 / 4;
}

} // namespace stow::painting
