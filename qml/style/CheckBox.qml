import QtQuick
import QtQuick.Templates as T

T.CheckBox {
    id: control

    implicitWidth: implicitContentWidth + leftPadding + rightPadding
    implicitHeight: Theme.target
    spacing: 12
    leftPadding: 24 + spacing // behind the box
    font.family: Theme.family
    font.pixelSize: Theme.body

    Accessible.name: text

    indicator: Rectangle {
        y: (control.height - height) / 2
        width: 24
        height: 24
        radius: Theme.radius
        color: control.checked ? Theme.accent : Theme.sheet
        border.color: control.checked ? Theme.accent : Theme.border
        Text {
            anchors.centerIn: parent
            visible: control.checked
            text: "✓"
            color: Theme.accentInk
            font.family: Theme.family
            font.pixelSize: Theme.body
            font.bold: true
        }
        FocusRing {
            shown: control.visualFocus
        }
    }
    contentItem: Text {
        text: control.text
        font: control.font
        color: Theme.ink
        verticalAlignment: Text.AlignVCenter
        textFormat: Text.PlainText
    }
}
