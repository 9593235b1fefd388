// Instead of a second window on one shop book, which would show what the first has changed since.
import QtQuick
import QtQuick.Window
import Stowbench.Style

Window {
    id: window

    required property string book
    required property bool dark

    width: 640
    height: 320
    visible: true
    color: Theme.paper
    title: qsTr("Stowbench")
    Component.onCompleted: Theme.dark = dark

    Column {
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.page
        spacing: 16
        Label {
            width: parent.width
            text: qsTr("This shop book is open in another window")
            font.pixelSize: Theme.title
            font.bold: true
            wrapMode: Text.Wrap
        }
        Label {
            width: parent.width
            text: window.book
            quiet: true
            font.pixelSize: Theme.small
            wrapMode: Text.WrapAnywhere
        }
        Label {
            width: parent.width
            text: qsTr("Go on there.")
            wrapMode: Text.Wrap
        }
        Button {
            text: qsTr("Close")
            keyHint: qsTr("Esc")
            focus: true
            onClicked: window.close()
        }
    }
    Shortcut {
        sequences: ["Esc", "Ctrl+Q"]
        onActivated: window.close()
    }
}
