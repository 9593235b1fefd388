// Words in a row of which one is current: the shelves of the cupboard.
pragma ComponentBehavior: Bound
import QtQuick
import Stowbench.Style

Row {
    id: chapters

    required property var names
    property int current: 0
    property bool tight: false // words alone, small

    signal chosen(int index)

    spacing: tight ? 0 : 8
    Accessible.role: Accessible.PageTabList

    Repeater {
        model: chapters.names
        Button {
            id: chapter
            required property int index
            required property string modelData
            flat: true
            text: modelData
            keyHint: chapters.tight ? "" : (index + 1).toString()
            font.pixelSize: chapters.tight ? Theme.small : Theme.body
            leftPadding: chapters.tight ? 6 : 8
            rightPadding: leftPadding
            font.bold: chapters.current === index
            Accessible.role: Accessible.PageTab
            Accessible.description: (index + 1).toString()
            Accessible.selected: chapters.current === index
            onClicked: chapters.chosen(index)
            Rectangle {
                anchors.bottom: parent.bottom
                x: chapter.leftPadding
                width: parent.width - 2 * x
                height: 3
                color: Theme.accent
                visible: chapters.current === chapter.index
            }
        }
    }
}
