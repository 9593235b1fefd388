import QtQuick
import QtQuick.Templates as T

T.ScrollBar {
    id: control

    implicitWidth: 12
    implicitHeight: 12
    padding: 3
    minimumSize: 0.08
    visible: policy === T.ScrollBar.AlwaysOn || (policy === T.ScrollBar.AsNeeded && size < 1.0)
    Accessible.ignored: true

    contentItem: Rectangle {
        implicitWidth: 6
        implicitHeight: 6
        radius: 3
        color: control.pressed ? Theme.accent : Theme.border
        opacity: control.active || control.pressed ? 1 : 0.5
    }
}
