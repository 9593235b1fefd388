// A thin bar that fills: the day, a step's weight, long work.
import QtQuick

Item {
    id: bar

    property double share: 0
    property color colour: Theme.accent

    implicitHeight: 4
    implicitWidth: 160
    Accessible.role: Accessible.ProgressBar
    Accessible.ignored: true

    Rectangle {
        anchors.fill: parent
        radius: height / 2
        color: Theme.hairline
    }
    Rectangle {
        width: bar.width * Math.max(0, Math.min(1, bar.share))
        height: bar.height
        radius: height / 2
        color: bar.colour
        Behavior on width {
            NumberAnimation {
                duration: Theme.motion
            }
        }
    }
}
