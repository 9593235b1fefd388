// Another outer for one parcel: those that hold it, why the others do not, and two of them side by side.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property PlanController controller
    readonly property OuterComparison comparison: controller.comparison
    readonly property bool wide: width > 1000
    property int row: -1

    sheetWidth: 1080

    function ask(which: int) {
        if (which < 0) return;
        row = which;
        title = qsTr("An outer for %1").arg(controller.rows.value(row, "number"));
        controller.askOuters(row);
        list.currentIndex = 0;
        open();
        list.currentIndex = 0;
        list.forceActiveFocus();
    }
    function take(index: int) {
        const code = controller.choices.value(index, "code");
        if (code === undefined) return;
        if (controller.useOuter(row, code)) close();
    }

    GridLayout {
        columns: panel.wide ? 2 : 1
        columnSpacing: 32
        rowSpacing: 8
        Layout.fillWidth: true

        ListView {
            id: list
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Layout.alignment: Qt.AlignTop
            implicitHeight: contentHeight
            onCurrentItemChanged: if (currentItem) panel.reveal(currentItem)
            onCurrentIndexChanged: if (panel.visible) panel.comparison.look(panel.controller.choices.value(currentIndex, "code") || "")
            interactive: false
            keyNavigationEnabled: true
            focus: true
            model: panel.controller.choices
            onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
            Keys.onReturnPressed: panel.take(currentIndex)
            Keys.onEnterPressed: panel.take(currentIndex)
            Keys.onPressed: event => {
                event.accepted = event.key === Qt.Key_C && !event.modifiers;
                if (event.accepted) panel.comparison.hold();
            }
            delegate: TableRow {
                id: choice
                required property int index
                required property string code
                required property string name
                required property string words
                required property bool possible
                current: ListView.isCurrentItem
                sentence: name + ": " + words
                onPressed: list.currentIndex = index
                onOpened: panel.take(index)
                RowLayout {
                    anchors.fill: parent
                    spacing: 16
                    Label {
                        text: choice.code
                        font.bold: true
                        Layout.preferredWidth: 88
                    }
                    ColumnLayout {
                        spacing: 2
                        Layout.fillWidth: true
                        Label {
                            text: choice.name
                            Layout.fillWidth: true
                        }
                        Label {
                            text: choice.words
                            color: choice.possible ? Theme.secondInk : Theme.brick
                            font.pixelSize: Theme.small
                            Layout.fillWidth: true
                        }
                    }
                }
            }
        }

        ColumnLayout { // stays in sight while the list scrolls
            visible: panel.wide
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            Layout.alignment: Qt.AlignTop
            transform: Translate {
                y: panel.scrolled
            }
            spacing: 4

            OuterRow {
                Layout.fillWidth: true
                Layout.preferredHeight: 208
                mostPixelsPerMm: 1.2
                scene: panel.comparison.scene
                sheet: Theme.sheet
                ink: Theme.ink
                secondInk: Theme.secondInk
                hairline: Theme.border
                accent: Theme.accent
                ochre: Theme.ochreText
                brick: Theme.brick
                dark: Theme.dark
                family: Theme.family
                Accessible.role: Accessible.Graphic
                Accessible.name: sentence || qsTr("Two outers side by side")
            }
            Label {
                text: panel.comparison.working ? qsTr("Trying …") : panel.comparison.verdict || qsTr("Go up and down the list to compare.")
                font.bold: true
                wrapMode: Text.Wrap
                maximumLineCount: 2
                Layout.fillWidth: true
                Accessible.role: Accessible.AlertMessage
            }
            Rule {
                Layout.fillWidth: true
            }
            Repeater {
                model: panel.comparison.facts
                RowLayout {
                    id: fact
                    required property string name
                    required property string held
                    required property string other
                    required property int better
                    spacing: 16
                    Layout.fillWidth: true
                    Accessible.role: Accessible.ListItem
                    Accessible.name: name + ": " + held + (other ? qsTr(" against %1").arg(other) : "")
                    Label {
                        text: fact.name
                        quiet: true
                        font.pixelSize: Theme.small
                        Layout.preferredWidth: 96
                        Accessible.ignored: true
                    }
                    Repeater {
                        model: [fact.held, fact.other]
                        Label {
                            required property string modelData
                            required property int index
                            readonly property bool better: fact.better === index + 1
                            text: (better ? "✓ " : "") + modelData
                            color: better ? Theme.accent : Theme.ink
                            font.bold: better
                            wrapMode: Text.Wrap
                            maximumLineCount: 2
                            Layout.fillWidth: true
                            Layout.preferredWidth: 1
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
    }

    buttons: [
        Button {
            primary: true
            text: qsTr("Take this one and keep it")
            keyHint: qsTr("Enter")
            enabled: list.currentIndex >= 0 && panel.controller.choices.value(list.currentIndex, "possible") === true
            onClicked: panel.take(list.currentIndex)
        },
        Button {
            visible: panel.wide
            text: qsTr("Compare with this one")
            keyHint: "C"
            enabled: panel.comparison.canHold
            onClicked: panel.comparison.hold()
        },
        Label {
            visible: !panel.wide
            text: panel.comparison.verdict
            font.bold: true
            font.pixelSize: Theme.small
            wrapMode: Text.Wrap
            maximumLineCount: 2
            Layout.fillWidth: true
        }
    ]
}
