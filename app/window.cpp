#include "app/window.h"

#include "app/day.h"
#include "app/scale/hid_scale.h"
#include "app/view/desk.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>

namespace stow {

int open_window(QGuiApplication& application, Day& day)
{
    QQuickStyle::setStyle(QStringLiteral("Basic")); // beneath our own controls, whatever the desktop says
    view::Desk desk(day);
    desk.plugIn(std::make_unique<scale::HidScale>());
    QQmlApplicationEngine engine;
    engine.setInitialProperties({{QStringLiteral("desk"), QVariant::fromValue(&desk)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt-project.org/imports/Stowbench/Screens/Main.qml")));
    if (engine.rootObjects().isEmpty()) return 1;
    return application.exec();
}

} // namespace stow
