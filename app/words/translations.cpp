#include "app/words/translations.h"

#include <QCoreApplication>
#include <QTranslator>

// The resources of a static library are linked in only when somebody asks for them.
static void initialise_resources()
{
    Q_INIT_RESOURCE(stow_translations);
}

namespace stow::words {

void install_translations(QCoreApplication& application)
{
    initialise_resources();
    auto* translator = new QTranslator(&application);
    if (translator->load(QStringLiteral(":/stow/words/stowbench_en.qm"))) {
        QCoreApplication::installTranslator(translator);
    }
}

} // namespace stow::words
