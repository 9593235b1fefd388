#include "tests/outside/papers_read_back.h"

#include "app/painting/paint.h"

#include <QFile>
#include <QProcess>
#include <QStringList>

#include <algorithm>

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

std::vector<std::string> Rendered::codes(int number, int dpi) const
{
    const auto read =
        output_of(STOW_ZBARIMG, {QStringLiteral("--quiet"), QStringLiteral("--raw"), QStringLiteral("-Sdisable"),
                                 QStringLiteral("-Sqrcode.enable"), picture(number, dpi)});
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
