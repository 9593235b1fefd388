#include "app/words/translations.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

// The resources of a static library are linked in only when somebody asks for them.
static void initialise_resources()
{
    Q_INIT_RESOURCE(stow_translations);
}

namespace stow::words {

QStringList languages()
{
    return {QStringLiteral("en"), QStringLiteral("de")};
}

QString language_of_system()
{
    const QString spoken = QLocale::system().name().left(2);
    return languages().contains(spoken) ? spoken : languages().front();
}

void install_translations(QCoreApplication& application, const QString& language)
{
    initialise_resources();
    const QString name = QStringLiteral("words");
    delete application.findChild<QTranslator*>(name, Qt::FindDirectChildrenOnly);
    auto* translator = new QTranslator(&application);
    translator->setObjectName(name);
    if (translator->load(QStringLiteral(":/stow/words/stowbench_%1.qm").arg(language))) {
        QCoreApplication::installTranslator(translator);
    }
    if (language != language_of_system()) QLocale::setDefault(QLocale(language));
}

} // namespace stow::words
