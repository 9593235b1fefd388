// Shows where the keyboard is; stands outside its parent so that it never hides what it marks.
import QtQuick

Rectangle {
    property bool shown: false

    anchors.fill: parent
    anchors.margins: -4
    visible: shown
    color: "transparent"
    radius: Theme.radius + 4
    border.width: 2
    border.color: Theme.accent
}
