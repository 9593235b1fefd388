// The papers that would be printed now, page by page, before they are.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property PreviewController controller

    title: controller.title
    sheetWidth: 760
    gap: 8

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_Right:
        case Qt.Key_PageDown:
        case Qt.Key_Space:
            controller.nextPage();
            break;
        case Qt.Key_Left:
        case Qt.Key_PageUp:
        case Qt.Key_Backspace:
            controller.previousPage();
            break;
        case Qt.Key_Down:
            controller.paper = controller.paper + 1;
            break;
        case Qt.Key_Up:
            controller.paper = controller.paper - 1;
            break;
        case Qt.Key_Plus:
            controller.large = !controller.large;
            break;
        case Qt.Key_Return:
        case Qt.Key_Enter:
            controller.print();
            break;
        default:
            event.accepted = event.key !== Qt.Key_Tab && event.key !== Qt.Key_Backtab && event.key !== Qt.Key_Escape;
        }
    }

    Connections {
        target: panel.controller
        function onOpened() {
            panel.open();
        }
        function onChanged() {
            if (!panel.controller.open) panel.close();
        }
    }
    onClosed: controller.close()

    buttons: [
        Button {
            text: panel.controller.printWords
            primary: true
            keyHint: qsTr("Enter")
            onClicked: panel.controller.print()
        }
    ]

    Flow { // one button a paper, where there are several
        id: papersRow
        visible: panel.controller.papers.length > 1 && panel.height >= 500 // a small window gives the page its room
        spacing: 4
        Layout.fillWidth: true
        Accessible.role: Accessible.PageTabList
        Accessible.name: qsTr("Papers")
        Repeater {
            model: panel.controller.papers
            Button {
                id: paper
                required property int index
                required property string modelData
                flat: true
                text: modelData
                font.pixelSize: Theme.small
                font.bold: panel.controller.paper === index
                Accessible.role: Accessible.PageTab
                Accessible.selected: panel.controller.paper === index
                onClicked: panel.controller.paper = index
                Rectangle {
                    anchors.bottom: parent.bottom
                    x: paper.leftPadding
                    width: parent.width - 2 * x
                    height: 3
                    color: Theme.accent
                    visible: panel.controller.paper === paper.index
                }
            }
        }
    }
    RowLayout {
        id: turning
        spacing: 4
        Layout.fillWidth: true
        Label {
            text: panel.controller.where
            quiet: true
            Layout.fillWidth: true
        }
        Button {
            flat: true
            text: panel.controller.large ? qsTr("Whole page") : qsTr("Larger")
            keyHint: "+"
            font.pixelSize: Theme.small
            onClicked: panel.controller.large = !panel.controller.large
        }
        Button {
            flat: true
            text: qsTr("Back")
            keyHint: "←"
            font.pixelSize: Theme.small
            enabled: !panel.controller.first
            onClicked: panel.controller.previousPage()
        }
        Button {
            flat: true
            text: qsTr("Next")
            keyHint: "→"
            font.pixelSize: Theme.small
            enabled: !panel.controller.last
            onClicked: panel.controller.nextPage()
        }
    }
    FaultWord {
        id: warning
        text: panel.controller.warning ? "! " + panel.controller.warning : ""
        visible: text !== ""
        maximumLineCount: 4
    }
    PagePreview {
        scene: panel.controller.scene
        hairline: Theme.border
        family: Theme.family
        Layout.fillWidth: true
        readonly property real halfPage: panel.controller.large && panel.height < 500 ? width * 0.71 : 0 // as wide as the sheet, scrolled
        Layout.preferredHeight: Math.max(panel.height < 500 ? 180 : 280, halfPage, panel.height - (papersRow.visible ? papersRow.height : 0) - turning.height - (warning.visible ? warning.height : 0) - 208)
        Accessible.role: Accessible.Graphic
        Accessible.name: sentence
    }
}
