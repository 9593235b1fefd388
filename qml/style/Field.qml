// A text field under its label, with room for what is wrong.
import QtQuick

FocusScope {
    id: field

    property alias label: name.text
    property alias text: input.text
    property alias unit: input.unit
    property alias placeholder: input.placeholderText
    property alias readOnly: input.readOnly
    property alias input: input
    property string fault: ""
    property string more: ""

    signal accepted

    implicitWidth: 200
    implicitHeight: column.implicitHeight

    Column {
        id: column
        width: parent.width
        spacing: 4
        Label {
            id: name
            width: parent.width
            font.pixelSize: Theme.small
            quiet: true
            Accessible.ignored: true
        }
        TextField {
            id: input
            width: parent.width
            focus: true
            label: name.text
            fault: field.fault !== ""
            onAccepted: field.accepted()
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: field.fault ? "! " + field.fault : field.more
            color: field.fault ? Theme.brick : Theme.secondInk
            font.pixelSize: Theme.small
            wrapMode: Text.Wrap
        }
    }
}
