// What the columns of a list are called. `columns`: words, and a width or none for the one that fills; right-aligned
// ones have `right`.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts

Item {
    id: head

    required property var columns

    implicitHeight: 28

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: 16
        anchors.rightMargin: 16
        spacing: 16

        Repeater {
            model: head.columns
            Label {
                required property var modelData
                text: modelData.words
                quiet: true
                font.pixelSize: Theme.small
                horizontalAlignment: modelData.right ? Text.AlignRight : Text.AlignLeft
                Layout.fillWidth: !modelData.width
                Layout.preferredWidth: modelData.width || modelData.share || 1
            }
        }
    }
}
