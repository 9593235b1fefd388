// Over everything while long work is under way that the next key has to wait for. What is over in a moment is not shown.
import QtQuick
import Stowbench.Style

Item {
    id: wait

    required property string words

    visible: words !== "" && shown.opacity > 0
    Accessible.role: Accessible.AlertMessage
    Accessible.name: words

    Rectangle {
        id: shown
        anchors.fill: parent
        color: Theme.paper
        opacity: 0
        states: State {
            name: "long"
            when: wait.words !== ""
            PropertyChanges {
                shown.opacity: 0.97
            }
        }
        transitions: Transition {
            to: "long"
            SequentialAnimation {
                PauseAnimation {
                    duration: 200
                }
                NumberAnimation {
                    property: "opacity"
                    duration: Theme.motion
                }
            }
        }
    }
    Column {
        anchors.centerIn: parent
        width: parent.width - 4 * Theme.page
        spacing: 16
        opacity: shown.opacity
        Label {
            width: parent.width
            text: wait.words
            font.pixelSize: Theme.now
            font.bold: true
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
        Label {
            width: parent.width
            text: qsTr("What you press meanwhile is done next.")
            font.pixelSize: Theme.strong
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
    }
}
