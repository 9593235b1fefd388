// Lays pictures out on contact sheets, so that an eye can go over many: columns by rows a sheet, each under its name.
//   contact_sheets [--across 4] [--down 5] [--width 400] OUT PICTURE...      writes OUT_1.png, OUT_2.png...
#include "app/painting/fonts.h"

#include <QCommandLineParser>
#include <QFileInfo>
#include <QGuiApplication>
#include <QImageReader>
#include <QPainter>

#include <iostream>

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    QCommandLineParser line;
    line.addOptions({{QStringLiteral("across"), {}, QStringLiteral("n"), QStringLiteral("4")},
                     {QStringLiteral("down"), {}, QStringLiteral("n"), QStringLiteral("5")},
                     {QStringLiteral("width"), {}, QStringLiteral("px"), QStringLiteral("400")}});
    line.process(application);
    if (!stow::painting::load_fonts()) return 2;
    const int across = line.value(QStringLiteral("across")).toInt();
    const int down = line.value(QStringLiteral("down")).toInt();
    const int width = line.value(QStringLiteral("width")).toInt();
    QStringList files = line.positionalArguments();
    if (files.size() < 2 || across < 1 || down < 1 || width < 1) {
        std::cerr << "contact_sheets OUT PICTURE...\n";
        return 2;
    }
    const QString out = files.takeFirst();
    constexpr int gap = 12, caption = 24;
    const int a_sheet = across * down;
    for (int first = 0; first < files.size(); first += a_sheet) {
        const QSize size = QImageReader(files[first]).size();
        const int height = size.isEmpty() ? width : width * size.height() / size.width();
        const int here = std::min(a_sheet, static_cast<int>(files.size()) - first);
        const int rows = (here + across - 1) / across;
        QImage sheet(across * (width + gap) + gap, rows * (height + caption + gap) + gap, QImage::Format_RGB32);
        sheet.fill(QColor(0x8A, 0x90, 0x96));
        QPainter painter(&sheet);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        QFont font(QStringLiteral("Stow"));
        font.setPixelSize(14);
        painter.setFont(font);
        for (int i = 0; i < here; ++i) {
            const QString& file = files[first + i];
            const QImage picture(file);
            if (picture.isNull()) {
                std::cerr << qPrintable(file) << " cannot be read\n";
                return 1;
            }
            const int x = gap + (i % across) * (width + gap), y = gap + (i / across) * (height + caption + gap);
            painter.drawText(QRect(x, y, width, caption), Qt::AlignVCenter, QFileInfo(file).completeBaseName());
            painter.drawImage(x, y + caption,
                              picture.scaled(width, height, Qt::KeepAspectRatio, Qt::SmoothTransformation));
        }
        painter.end();
        const QString name = QStringLiteral("%1_%2.png").arg(out).arg(first / a_sheet + 1);
        if (!sheet.save(name)) {
            std::cerr << qPrintable(name) << " cannot be written\n";
            return 1;
        }
        std::cout << qPrintable(name) << '\n';
    }
    return 0;
}
