// What happened last, and the way back.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

Rectangle {
    id: line

    required property string notice
    property string standing: "" // what stands there while nothing was said
    property bool pressing: false
    required property string undoWords
    required property string redoWords
    required property string trouble // of the printer
    required property string remedy

    required property bool papers // this place prints some

    signal papersAsked
    signal undo
    signal redo
    signal mend

    implicitHeight: notice || standing || undoWords || redoWords || trouble || papers ? (width < 800 ? 36 : 44) : 0
    visible: implicitHeight > 0
    color: Theme.sheet

    Rule {
        width: parent.width
    }
    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Math.min(Theme.page, line.width / 40)
        anchors.rightMargin: anchors.leftMargin - 8
        spacing: 16
        Label {
            visible: line.trouble !== ""
            text: "× " + line.trouble
            shortens: true
            color: Theme.brick
            font.pixelSize: Theme.small
            font.bold: true
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Accessible.role: Accessible.AlertMessage
        }
        Button {
            flat: true
            visible: line.trouble !== ""
            text: line.remedy
            keyHint: qsTr("Ctrl P")
            font.pixelSize: Theme.small
            onClicked: line.mend()
        }
        Label {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: line.notice || line.standing
            shortens: true // it names files
            color: line.notice === "" && line.pressing ? Theme.ochreText : Theme.ink
            font.bold: line.notice === "" && line.pressing
            font.pixelSize: Theme.small
            Layout.minimumWidth: line.notice === "" ? implicitWidth : 0
            Accessible.role: Accessible.AlertMessage
        }
        Button {
            flat: true
            visible: line.undoWords !== ""
            text: line.undoWords
            keyHint: qsTr("Ctrl Z")
            font.pixelSize: Theme.small
            Layout.fillWidth: true
            Layout.minimumWidth: 120
            Layout.preferredWidth: Math.ceil(implicitWidth)
            Layout.maximumWidth: Math.ceil(implicitWidth)
            shortens: line.width < 800
            onClicked: line.undo()
        }
        Button {
            flat: true
            visible: line.redoWords !== ""
            text: line.width < 1000 ? qsTr("Again") : line.redoWords
            keyHint: qsTr("Ctrl Y")
            font.pixelSize: Theme.small
            Accessible.name: line.redoWords
            onClicked: line.redo()
        }
        Button {
            flat: true
            visible: line.papers
            text: line.width < 800 ? qsTr("Papers") : qsTr("Look at the papers")
            keyHint: "F8"
            font.pixelSize: Theme.small
            onClicked: line.papersAsked()
        }
    }
}
