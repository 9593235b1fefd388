// Marks a row, to treat it together with others.
import QtQuick
import QtQuick.Templates as T

T.AbstractButton {
    id: control

    property bool marked: false

    implicitWidth: 32
    implicitHeight: Theme.target
    focusPolicy: Qt.NoFocus // the list has the keys
    Accessible.role: Accessible.CheckBox
    Accessible.checked: marked

    contentItem: Item {
        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: 20
            height: 20
            radius: Theme.radius
            color: control.marked ? Theme.accent : control.down ? Theme.accentTint : Theme.sheet
            border.width: control.marked ? 0 : 1
            border.color: Theme.border
            Text {
                anchors.centerIn: parent
                visible: control.marked
                text: "✓"
                color: Theme.accentInk
                font.family: Theme.family
                font.pixelSize: Theme.small
                font.bold: true
            }
        }
    }
}
