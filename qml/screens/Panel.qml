// A sheet laid over the right of a screen for one thing in detail. Esc puts it away.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

FocusScope {
    id: panel

    property string title: ""
    property int sheetWidth: 520
    default property alias content: column.data
    property alias buttons: buttonRow.data

    signal opened
    signal closed

    function open() {
        visible = true;
        forceActiveFocus();
        opened();
    }
    function close() {
        if (!visible) return;
        visible = false;
        closed();
    }

    anchors.fill: parent
    visible: false
    z: 10
    Accessible.role: Accessible.Dialog
    Accessible.name: title
    Keys.onEscapePressed: close()

    MouseArea { // what lies beneath is put away by a press beside the sheet
        anchors.fill: parent
        onClicked: panel.close()
        Rectangle {
            anchors.fill: parent
            color: Theme.paper
            opacity: 0.7
        }
    }
    Sheet {
        id: sheet
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        anchors.margins: 8
        width: Math.min(panel.sheetWidth, panel.width - 16)
        border.color: Theme.border

        MouseArea {
            anchors.fill: parent
        }
        ColumnLayout {
            anchors.fill: parent
            anchors.margins: 24
            anchors.topMargin: 16
            spacing: 16
            RowLayout {
                Layout.fillWidth: true
                Heading {
                    text: panel.title
                    Layout.fillWidth: true
                }
                Button {
                    flat: true
                    text: qsTr("Close")
                    keyHint: qsTr("Esc")
                    onClicked: panel.close()
                }
            }
            Flickable {
                id: flick
                Layout.fillWidth: true
                Layout.fillHeight: true
                contentHeight: column.implicitHeight + 8
                clip: contentHeight > height
                boundsBehavior: Flickable.StopAtBounds
                ColumnLayout {
                    id: column
                    width: flick.width
                    spacing: 16
                }
            }
            RowLayout {
                id: buttonRow
                Layout.fillWidth: true
                spacing: 8
            }
        }
    }
}
