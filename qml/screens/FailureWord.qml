// Over everything until it is mended: the shop book failed underneath. What happened, what is safe, what to do.
import QtQuick
import QtQuick.Window
import Stowbench.Style

FocusScope {
    id: word

    required property string failure
    required property string safe
    required property string remedy

    signal triedAgain
    signal closeAsked
    signal mended // and what had the keys is gone

    readonly property bool keepsFocus: visible // Tab stays here (TabKeeper)
    property Item before: null // had the keys, and gets them back

    function hold() { // whatever takes the keys behind it
        if (visible && !activeFocus) again.forceActiveFocus();
    }

    function giveBack() { // a row of a list that was read anew is gone by now
        if (before) before.forceActiveFocus();
        else mended();
    }

    visible: failure !== ""
    Accessible.role: Accessible.AlertMessage
    Accessible.name: [failure, safe, remedy].join(". ")
    onVisibleChanged: {
        if (visible) {
            before = Window.window ? Window.window.activeFocusItem : null;
            again.forceActiveFocus();
        } else {
            Qt.callLater(giveBack);
        }
    }
    onActiveFocusChanged: if (!activeFocus) Qt.callLater(hold)
    Keys.onPressed: event => { // what lies behind hears nothing
        event.accepted = !event.modifiers;
        if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter) word.triedAgain();
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
        MouseArea {
            anchors.fill: parent
        }
    }
    Rectangle { // as wide as the word is grave
        width: parent.width
        height: 16
        color: Theme.brick
    }
    Column {
        anchors.verticalCenter: parent.verticalCenter
        x: Math.min(2 * Theme.page, parent.width / 16)
        width: Math.min(parent.width - 2 * x, 960)
        spacing: word.height < 520 ? 12 : 24
        Label {
            width: parent.width
            text: "× " + word.failure
            color: Theme.brick
            font.pixelSize: word.height < 520 ? Theme.title : Theme.shout
            font.bold: true
            wrapMode: Text.Wrap
        }
        Label {
            width: parent.width
            text: word.safe
            font.pixelSize: word.height < 520 ? Theme.strong : Theme.title
            wrapMode: Text.Wrap
        }
        Label {
            width: parent.width
            text: word.remedy
            font.pixelSize: Theme.strong
            wrapMode: Text.Wrap
        }
        Row {
            spacing: 16
            Button {
                id: again
                primary: true
                text: qsTr("Try again")
                keyHint: qsTr("Enter")
                onClicked: word.triedAgain()
            }
            Button {
                text: qsTr("Close the program")
                keyHint: qsTr("Ctrl Q")
                onClicked: word.closeAsked()
            }
        }
    }
}
