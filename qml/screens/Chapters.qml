// Words in a row of which one is current: the shelves of the cupboard.
pragma ComponentBehavior: Bound
import QtQuick
import Stowbench.Style

Row {
    id: chapters

    required property var names
    property int current: 0

    signal chosen(int index)

    spacing: 8
    Accessible.role: Accessible.PageTabList

    Repeater {
        model: chapters.names
        Button {
            id: chapter
            required property int index
            required property string modelData
            flat: true
            text: modelData
            keyHint: (index + 1).toString()
            font.bold: chapters.current === index
            Accessible.role: Accessible.PageTab
            Accessible.selected: chapters.current === index
            onClicked: chapters.chosen(index)
            Rectangle {
                anchors.bottom: parent.bottom
                x: 8
                width: parent.width - 16
                height: 3
                color: Theme.accent
                visible: chapters.current === chapter.index
            }
        }
    }
}
