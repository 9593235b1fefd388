// What the files of this folder share: their one translation context, and plain text for Qt.
#pragma once

#include <QCoreApplication>
#include <QString>

#include <string>

namespace stow::words {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(words)
};

inline QString text(const std::string& s)
{
    return QString::fromStdString(s);
}

} // namespace stow::words
