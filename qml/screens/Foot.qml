// The line under a screen: what it comes to, and the one thing to do next.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

Item {
    id: foot

    property string strong: ""
    property string quiet: ""
    property string warning: ""
    default property alias buttons: right.data

    width: parent ? parent.width : 0
    implicitHeight: 76

    Rule {
        width: parent.width
    }
    RowLayout {
        anchors.fill: parent
        spacing: 16
        ColumnLayout {
            Layout.fillWidth: true
            spacing: 2
            Label {
                text: foot.strong
                font.bold: true
                Layout.fillWidth: true
                visible: text !== ""
            }
            Label {
                text: foot.warning ? "! " + foot.warning : ""
                color: Theme.ochreText
                font.pixelSize: Theme.small
                font.bold: true
                Layout.fillWidth: true
                visible: text !== ""
            }
            Label {
                text: foot.quiet
                quiet: true
                font.pixelSize: Theme.small
                Layout.fillWidth: true
                visible: text !== ""
            }
        }
        RowLayout {
            id: right
            spacing: 8
        }
    }
}
