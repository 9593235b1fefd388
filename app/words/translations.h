// The languages of the program itself; papers for buyers speak the buyer's.
#pragma once

#include <QString>
#include <QStringList>

class QCoreApplication;

namespace stow::words {

inline constexpr const char* remembered_language = "language"; // in the book; empty: the system's

QStringList languages(); // "en", "de"
// What the system speaks where that is one of them, else English.
QString language_of_system();
// In place of one installed before. Another language than the system's brings its numbers and dates along.
void install_translations(QCoreApplication& application, const QString& language = language_of_system());

} // namespace stow::words
