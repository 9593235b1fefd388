// Over everything, until a key is pressed: something is wrong and must not be missed.
import QtQuick
import Stowbench.Style

Rectangle {
    id: stop

    required property string word
    required property string more

    signal goOn

    function hold() { // whatever takes the keys behind it
        if (visible) forceActiveFocus();
    }

    visible: word !== ""
    color: Theme.brick
    focus: visible
    Accessible.role: Accessible.AlertMessage
    Accessible.name: word + ". " + more
    onVisibleChanged: if (visible) forceActiveFocus()
    onActiveFocusChanged: if (!activeFocus) Qt.callLater(hold)
    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_Space || event.key === Qt.Key_Return || event.key === Qt.Key_Enter || event.key === Qt.Key_Escape) {
            stop.goOn();
        }
    }

    MouseArea {
        anchors.fill: parent
        onClicked: stop.goOn()
    }
    Column {
        anchors.centerIn: parent
        width: parent.width - 4 * Theme.page
        spacing: 24
        Label {
            width: parent.width
            text: stop.word
            color: Theme.paper
            font.pixelSize: Theme.shout
            font.bold: true
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
        Label {
            width: parent.width
            text: stop.more
            color: Theme.paper
            font.pixelSize: Theme.title
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
        Label {
            width: parent.width
            text: qsTr("Space goes on")
            color: Theme.paper
            font.pixelSize: Theme.strong
            horizontalAlignment: Text.AlignHCenter
        }
    }
}
