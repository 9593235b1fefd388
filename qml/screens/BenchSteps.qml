// The steps of the parcel on the bench, the one in hand in sight.
pragma ComponentBehavior: Bound
import QtQuick
import Stowbench.App
import Stowbench.Style

ListView {
    id: steps

    required property BenchController controller
    readonly property int row: 44

    function keepInView() { // the step in hand whole, and the next one
        positionViewAtIndex(Math.max(0, currentIndex - 1), ListView.Contain);
        positionViewAtIndex(Math.min(count - 1, currentIndex + 1), ListView.Contain);
        positionViewAtIndex(currentIndex, ListView.Contain);
    }
    onCurrentIndexChanged: Qt.callLater(keepInView)
    onHeightChanged: Qt.callLater(keepInView)
    onCountChanged: Qt.callLater(keepInView)

    clip: true
    model: controller.steps
    boundsBehavior: Flickable.StopAtBounds
    currentIndex: controller.currentStep
    highlightFollowsCurrentItem: false
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Steps")
    delegate: Rectangle {
        id: step
        required property int index
        required property string mark
        required property string words
        required property bool done
        required property bool current
        width: steps.width
        height: steps.row
        radius: Theme.radius
        color: current ? Theme.accentTint : "transparent"
        Accessible.role: Accessible.ListItem
        Accessible.name: words + (done ? qsTr(", done") : current ? qsTr(", now") : "")

        Rectangle {
            x: 8
            anchors.verticalCenter: parent.verticalCenter
            width: Math.max(24, number.implicitWidth + 10)
            height: 24
            radius: 12
            color: step.done ? Theme.accent : Theme.sheet
            border.width: step.current ? 2 : 1
            border.color: step.done || step.current ? Theme.accent : Theme.secondInk
            Text {
                id: number
                anchors.centerIn: parent
                text: step.done ? "✓" : step.mark === "·" ? "" : step.mark
                color: step.done ? Theme.accentInk : Theme.ink
                font.family: Theme.family
                font.pixelSize: Theme.small
                font.bold: true
            }
        }
        Label {
            anchors.verticalCenter: parent.verticalCenter
            x: 48
            width: parent.width - 56
            text: step.words
            wrapMode: Text.Wrap
            maximumLineCount: 2
            lineHeight: 0.95
            font.bold: step.current
            quiet: step.done
            Accessible.ignored: true
        }
    }
}
