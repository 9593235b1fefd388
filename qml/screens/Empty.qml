// A screen with nothing on it says what to do next.
import QtQuick
import Stowbench.Style

Column {
    id: empty

    property alias title: title.text
    property alias words: words.text
    default property alias buttons: row.data

    anchors.centerIn: parent
    width: Math.min(560, parent ? parent.width : 560)
    spacing: 16

    Heading {
        id: title
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.Wrap
    }
    Label {
        id: words
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.Wrap
        quiet: true
        lineHeight: 1.3
    }
    Row {
        id: row
        anchors.horizontalCenter: parent.horizontalCenter
        spacing: 8
        topPadding: 8
    }
}
