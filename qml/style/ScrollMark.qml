// How far one has scrolled, at the right of what scrolls.
import QtQuick

Item {
    id: mark

    required property Flickable flickable
    property bool ruled: false // a hairline where it goes on
    property int beside: 0 // how far the bar stands out at the right

    parent: flickable
    anchors.fill: parent
    visible: flickable.contentHeight > flickable.height + 1
    z: 1

    ScrollBar {
        orientation: Qt.Vertical
        anchors.right: parent.right
        anchors.rightMargin: -mark.beside
        height: parent.height
        size: mark.flickable.visibleArea.heightRatio
        position: mark.flickable.visibleArea.yPosition
        onPositionChanged: if (pressed) mark.flickable.contentY = position * mark.flickable.contentHeight + mark.flickable.originY
    }
    Rule {
        width: parent.width
        visible: mark.ruled && !mark.flickable.atYBeginning
    }
    Rule {
        width: parent.width
        anchors.bottom: parent.bottom
        visible: mark.ruled && !mark.flickable.atYEnd
    }
}
