import QtQuick
import QtQuick.Templates as T

T.Slider {
    id: control

    property string label: ""

    implicitWidth: 160
    implicitHeight: Theme.target
    snapMode: T.Slider.SnapAlways
    stepSize: 1

    Accessible.name: label

    background: Rectangle {
        x: 10
        y: (control.height - height) / 2
        width: control.width - 20
        height: 4
        radius: 2
        color: Theme.hairline
        Rectangle {
            width: parent.width * control.visualPosition
            height: parent.height
            radius: 2
            color: Theme.accent
        }
    }
    handle: Rectangle {
        x: control.visualPosition * (control.width - width)
        y: (control.height - height) / 2
        width: 20
        height: 20
        radius: 10
        color: control.pressed ? Theme.accentTint : Theme.sheet
        border.width: 2
        border.color: Theme.accent
        FocusRing {
            radius: 14
            shown: control.visualFocus
        }
    }
}
