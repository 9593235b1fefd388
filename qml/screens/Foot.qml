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

    readonly property bool tight: width < 800

    width: parent ? parent.width : 0
    implicitHeight: tight ? 60 : 76

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
                font.pixelSize: foot.tight ? Theme.small : Theme.body
                wrapMode: Text.Wrap
                maximumLineCount: 2
                shortens: foot.tight // the first figures say most
                Layout.fillWidth: true
                visible: text !== ""
            }
            Label {
                text: foot.warning ? "! " + foot.warning : ""
                color: Theme.ochreText
                font.pixelSize: Theme.small
                font.bold: true
                Layout.fillWidth: true
                shortens: true // the command line names them all
                visible: text !== ""
            }
            Label {
                text: foot.quiet
                quiet: true
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
                maximumLineCount: 2
                Layout.fillWidth: true
                visible: text !== "" && !foot.tight
            }
        }
        RowLayout {
            id: right
            spacing: 8
        }
    }
}
