#include "tests/outside/papers_read_back.h"

#include "app/painting/paint.h"

#include <QFile>
#include <QPainter>
#include <QProcess>
#include <QStringList>
#include <QXmlStreamReader>

#include <algorithm>
#include <map>
#include <random>

namespace stow::outside {

namespace {

// Standard output of a program; nothing when it fails.
std::optional<QByteArray> output_of(const char* program, const QStringList& arguments)
{
    QProcess process;
    process.start(QString::fromUtf8(program), arguments);
    if (!process.waitForFinished(120'000) || process.exitStatus() != QProcess::NormalExit || process.exitCode() != 0) {
        return std::nullopt;
    }
    return process.readAllStandardOutput();
}

} // namespace

papers::Document before_the_scanner(const papers::DisplayList& page, const papers::Modules& code)
{
    constexpr int around = papers::from_mm(15);
    const int edge = code.side * code.module + 2 * around;
    papers::DisplayList seen{{edge, edge}, {}};
    seen.add(page, {around - code.at.x, around - code.at.y});
    return {"code", {std::move(seen)}};
}

Rendered::Rendered(const papers::Document& document, bool black_only)
    : file_(folder_.filePath(QStringLiteral("paper.pdf")))
{
    written_ = painting::write_pdf(file_, document, black_only ? painting::black_only() : painting::light());
}

std::string Rendered::text() const
{
    return output_of(STOW_PDFTOTEXT, {QStringLiteral("-layout"), file_, QStringLiteral("-")})
        .value_or("")
        .toStdString();
}

QByteArray Rendered::fonts() const
{
    return output_of(STOW_PDFFONTS, {file_}).value_or(QByteArray());
}

std::vector<PrintedText> Rendered::texts() const
{
    constexpr double zoom = 3; // the most it takes: sizes come in whole numbers, thirds of a point
    std::vector<PrintedText> found;
    const auto xml = output_of(STOW_PDFTOHTML, {QStringLiteral("-xml"), QStringLiteral("-i"), QStringLiteral("-stdout"),
                                                QStringLiteral("-noroundcoord"), QStringLiteral("-zoom"),
                                                QString::number(zoom), file_});
    if (!xml) return found;
    std::map<QString, double> sizes;
    int page = 0;
    QXmlStreamReader reader(*xml);
    while (!reader.atEnd()) {
        if (reader.readNext() != QXmlStreamReader::StartElement) continue;
        const QXmlStreamAttributes is = reader.attributes();
        const auto number = [&](const char* name) { return is.value(QLatin1String(name)).toDouble() / zoom; };
        if (reader.name() == QLatin1String("page")) ++page;
        if (reader.name() == QLatin1String("fontspec"))
            sizes[is.value(QLatin1String("id")).toString()] = number("size");
        if (reader.name() != QLatin1String("text")) continue;
        PrintedText text{page,
                         {},
                         sizes[is.value(QLatin1String("font")).toString()],
                         number("left"),
                         number("top"),
                         number("width"),
                         number("height")};
        text.text = reader.readElementText(QXmlStreamReader::IncludeChildElements).trimmed().toStdString();
        if (!text.text.empty()) found.push_back(std::move(text));
    }
    return found;
}

QString Rendered::picture(int number, int dpi) const
{
    const QString base = folder_.filePath(QStringLiteral("page-%1-%2").arg(number).arg(dpi));
    const QString page = QString::number(number);
    const bool made = output_of(STOW_PDFTOPPM, {QStringLiteral("-gray"), QStringLiteral("-singlefile"),
                                                QStringLiteral("-r"), QString::number(dpi), QStringLiteral("-f"), page,
                                                QStringLiteral("-l"), page, file_, base})
                          .has_value();
    return made ? base + QStringLiteral(".pgm") : QString();
}

QImage Rendered::page(int number, int dpi) const
{
    return QImage(picture(number, dpi));
}

std::vector<QImage> Rendered::pictures() const
{
    std::vector<QImage> found;
    const QString base = folder_.filePath(QStringLiteral("held"));
    if (!output_of(STOW_PDFIMAGES, {QStringLiteral("-png"), file_, base})) return found;
    for (int i = 0; i < 100; ++i) {
        const QImage picture(base + QStringLiteral("-%1.png").arg(i, 3, 10, QLatin1Char('0')));
        if (picture.isNull()) break;
        found.push_back(picture);
    }
    return found;
}

QImage Rendered::sharp_page(int number, int dpi) const
{
    const QString base = folder_.filePath(QStringLiteral("sharp-%1-%2").arg(number).arg(dpi)),
                  page = QString::number(number);
    const bool made = output_of(STOW_PDFTOPPM, {QStringLiteral("-singlefile"), QStringLiteral("-aa"),
                                                QStringLiteral("no"), QStringLiteral("-aaVector"), QStringLiteral("no"),
                                                QStringLiteral("-r"), QString::number(dpi), QStringLiteral("-f"), page,
                                                QStringLiteral("-l"), page, file_, base})
                          .has_value();
    return made ? QImage(base + QStringLiteral(".ppm")) : QImage();
}

std::vector<std::string> Rendered::codes(int number, int dpi) const
{
    return read(picture(number, dpi));
}

std::vector<std::string> Rendered::codes_of_worse(int number, int dpi, double noise, double degrees,
                                                  unsigned seed) const
{
    QImage page = this->page(number, dpi).convertToFormat(QImage::Format_Grayscale8);
    QImage askew(page.size(), QImage::Format_Grayscale8);
    askew.fill(Qt::white);
    QPainter painter(&askew);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(page.width() / 2.0, page.height() / 2.0);
    painter.rotate(degrees);
    painter.translate(-page.width() / 2.0, -page.height() / 2.0);
    painter.drawImage(0, 0, page);
    painter.end();
    std::mt19937 random(seed);
    std::bernoulli_distribution worn(noise);
    for (int y = 0; y < askew.height(); ++y) {
        uchar* line = askew.scanLine(y);
        for (int x = 0; x < askew.width(); ++x) {
            if (worn(random)) line[x] = static_cast<uchar>(255 - line[x]);
        }
    }
    // No lens sees single pixels: each counts with its neighbours.
    QImage seen = askew;
    for (int y = 1; y + 1 < askew.height(); ++y) {
        for (int x = 1; x + 1 < askew.width(); ++x) {
            int sum = 0;
            for (int dy = -1; dy <= 1; ++dy) {
                for (int dx = -1; dx <= 1; ++dx) sum += askew.constScanLine(y + dy)[x + dx];
            }
            seen.scanLine(y)[x] = static_cast<uchar>(sum / 9);
        }
    }
    const QString file = folder_.filePath(QStringLiteral("worse.pgm"));
    return seen.save(file) ? read(file) : std::vector<std::string>{};
}

std::vector<std::string> Rendered::read(const QString& picture)
{
    const auto read =
        output_of(STOW_ZBARIMG, {QStringLiteral("--quiet"), QStringLiteral("--raw"), QStringLiteral("-Sdisable"),
                                 QStringLiteral("-Sqrcode.enable"), picture});
    std::vector<std::string> found;
    if (!read) return found;
    for (const QByteArray& line : read->split('\n')) {
        if (!line.isEmpty()) found.push_back(line.toStdString());
    }
    std::sort(found.begin(), found.end());
    return found;
}

std::string Rendered::raw() const
{
    QFile file(file_);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

} // namespace stow::outside
