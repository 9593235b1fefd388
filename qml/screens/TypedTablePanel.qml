// A short table to type: each row a card of fields, one more to fill in at the end.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property TypedTable table

    title: table.title
    sheetWidth: 960

    function begin() {
        table.begin();
        open();
    }
    function keep() {
        if (table.keep()) return close();
        for (let i = 0; i < cards.count; ++i) {
            if (cards.itemAt(i).takeFault()) return;
        }
    }

    Shortcut {
        enabled: panel.visible
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        onActivated: panel.keep()
    }

    Label {
        text: panel.table.words
        quiet: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Repeater {
        id: cards
        model: panel.table.rows
        ColumnLayout {
            id: card

            function takeFault(): bool { // the first field that is wrong has the keys
                for (let i = 0; i < fields.count; ++i) {
                    if (fields.itemAt(i).modelData.fault === "") continue;
                    fields.itemAt(i).take();
                    return true;
                }
                return false;
            }
            required property int index
            required property var cells
            required property bool blank
            spacing: 8
            Layout.fillWidth: true
            GridLayout {
                id: grid
                columns: Math.max(4, Math.floor(card.width / 64))
                columnSpacing: 8
                rowSpacing: 8
                Layout.fillWidth: true
                Repeater {
                    id: fields
                    model: card.cells
                    ColumnLayout {
                        id: cell
                        function take() {
                            entry.forceActiveFocus();
                            entry.input.selectAll();
                        }
                        required property var modelData
                        spacing: 4
                        Layout.alignment: Qt.AlignTop
                        Layout.fillWidth: true
                        Layout.preferredWidth: 64 * modelData.share
                        Layout.columnSpan: Math.min(modelData.share, grid.columns)
                        Field {
                            id: entry
                            visible: cell.modelData.options.length === 0
                            label: cell.modelData.label
                            unit: cell.modelData.unit
                            text: cell.modelData.typed
                            fault: cell.modelData.fault
                            implicitWidth: 64
                            Layout.fillWidth: true
                            Component.onCompleted: input.cursorPosition = 0 // long names from their beginning
                            input.onTextEdited: panel.table.set(card.index, cell.modelData.column, input.text)
                        }
                        Label {
                            visible: cell.modelData.options.length > 0
                            text: cell.modelData.label
                            quiet: true
                            font.pixelSize: Theme.small
                            Accessible.ignored: true
                        }
                        Choice {
                            visible: cell.modelData.options.length > 0
                            label: cell.modelData.label
                            model: cell.modelData.options
                            currentIndex: cell.modelData.chosen
                            implicitWidth: 64
                            Layout.fillWidth: true
                            onActivated: option => panel.table.choose(card.index, cell.modelData.column, option)
                        }
                        Label {
                            visible: cell.modelData.options.length > 0 && cell.modelData.fault !== ""
                            text: "! " + cell.modelData.fault
                            color: Theme.brick
                            font.pixelSize: Theme.small
                            wrapMode: Text.Wrap
                            Layout.fillWidth: true
                        }
                    }
                }
            }
            RowLayout {
                Layout.fillWidth: true
                Rule {
                    Layout.fillWidth: true
                }
                Button {
                    flat: true
                    visible: !card.blank
                    text: qsTr("Take out")
                    Accessible.name: qsTr("Take out row %1").arg(card.index + 1)
                    font.pixelSize: Theme.small
                    onClicked: panel.table.remove(card.index)
                }
            }
        }
    }
    buttons: [
        Button {
            primary: true
            text: qsTr("Keep")
            keyHint: qsTr("Ctrl Enter")
            onClicked: panel.keep()
        },
        Button {
            text: qsTr("One more")
            onClicked: panel.table.add()
        },
        FaultWord {
            text: panel.table.fault ? "! " + panel.table.fault : ""
        }
    ]
}
