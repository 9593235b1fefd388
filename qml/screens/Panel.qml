// A sheet laid over the right of a screen for one thing in detail. Esc puts it away.
import QtQuick
import QtQuick.Layouts
import QtQuick.Window
import Stowbench.Style

FocusScope {
    id: panel

    property string title: ""
    property int sheetWidth: 520
    property int gap: 16
    default property alias content: column.data
    property alias buttons: buttonRow.data
    readonly property real scrolled: flick.contentY

    signal opened
    signal closed

    property bool laid: false // open, be the screen in sight or not
    property Item before: null // had the keys when the sheet came, and gets them back

    function open() {
        if (!laid) before = Window.window ? Window.window.activeFocusItem : null;
        laid = true;
        forceActiveFocus();
        opened();
    }
    function close() {
        if (!laid) return;
        laid = false;
        if (before) before.forceActiveFocus();
        closed();
    }

    readonly property bool keepsFocus: visible // Tab stays here (TabKeeper)

    anchors.fill: parent
    visible: laid
    z: 10
    Accessible.role: Accessible.Dialog
    Accessible.name: title
    Keys.onEscapePressed: close()
    Keys.onPressed: event => { // the keys of the screen beneath rest
        if (event.key !== Qt.Key_Tab && event.key !== Qt.Key_Backtab) event.accepted = !(event.modifiers & (Qt.ControlModifier | Qt.AltModifier | Qt.MetaModifier));
    }

    function reveal(item: Item) { // scrolls to it
        const y = item.mapToItem(column, 0, 0).y;
        const most = Math.max(0, flick.contentHeight - flick.height);
        if (y - 32 < flick.contentY) flick.contentY = Math.max(0, y - 32);
        else if (y + item.height + 16 > flick.contentY + flick.height) flick.contentY = Math.min(most, y + item.height + 16 - flick.height);
    }

    readonly property Item typedIn: visible && Window.window ? Window.window.activeFocusItem : null
    onTypedInChanged: {
        for (let item = typedIn; item; item = item.parent) {
            if (item === column && typedIn.height < flick.height) reveal(typedIn);
        }
    }

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
            anchors.margins: panel.height < 400 ? 16 : 24
            anchors.topMargin: panel.height < 400 ? 8 : 16
            spacing: panel.height < 400 ? 8 : 16
            RowLayout {
                Layout.fillWidth: true
                Layout.fillHeight: false
                Heading {
                    text: panel.title
                    wrapMode: Text.Wrap
                    maximumLineCount: 2
                    font.pixelSize: panel.height < 400 ? Theme.strong : Theme.title
                    Layout.fillWidth: true
                }
                Button {
                    flat: true
                    text: qsTr("Close")
                    keyHint: qsTr("Esc")
                    onClicked: panel.close()
                }
            }
            Item {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Flickable {
                    id: flick
                    anchors.fill: parent
                    contentHeight: column.implicitHeight + 8
                    clip: contentHeight > height
                    boundsBehavior: Flickable.StopAtBounds
                    ColumnLayout {
                        id: column
                        width: flick.width
                        spacing: panel.gap
                    }
                }
                ScrollMark {
                    parent: flick.parent
                    flickable: flick
                    beside: 16
                    ruled: true
                }
            }
            RowLayout {
                id: buttonRow
                visible: implicitWidth > 0
                Layout.fillWidth: true
                Layout.fillHeight: false
                spacing: 8
            }
        }
    }
}
