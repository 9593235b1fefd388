// The program's texts in the language of the person at the bench.
#pragma once

class QCoreApplication;

namespace stow::words {

// Before any text is asked for. English carries its plural forms; other languages follow.
void install_translations(QCoreApplication& application);

} // namespace stow::words
