// One supply to enter or to change: what it is, then what that needs.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property SupplyCard card

    title: card.title
    sheetWidth: 640
    gap: 12

    function begin() {
        card.begin();
        open();
        kind.forceActiveFocus();
    }
    function change(code: string) {
        card.change(code);
        open();
    }
    function keep() {
        if (card.keep()) return close();
        for (let i = 0; i < fields.count; ++i) { // the first that is wrong has the keys
            if (fields.itemAt(i).fault === "") continue;
            fields.itemAt(i).take();
            return;
        }
    }

    Shortcut {
        enabled: panel.visible
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        onActivated: panel.keep()
    }

    Choice {
        id: kind
        label: qsTr("What it is")
        title: label
        model: panel.card.kinds
        currentIndex: panel.card.kind
        enabled: panel.card.fresh
        Layout.fillWidth: true
        onActivated: index => panel.card.kind = index
    }
    GridLayout {
        columns: panel.width < 560 ? 2 : 3
        columnSpacing: 8
        rowSpacing: 12
        Layout.fillWidth: true
        Repeater {
            id: fields
            model: panel.card.fields
            ColumnLayout {
                id: cell
                function take() {
                    entry.forceActiveFocus();
                    entry.input.selectAll();
                }
                required property string key
                required property string label
                required property string unit
                required property string typed
                required property string fault
                required property var options
                required property int chosen
                required property bool wide
                required property bool fixed
                spacing: 4
                Layout.alignment: Qt.AlignTop
                Layout.fillWidth: true
                Layout.preferredWidth: wide ? 136 : 64
                Layout.columnSpan: wide ? 2 : 1
                Field {
                    id: entry
                    visible: cell.options.length === 0
                    label: cell.label
                    unit: cell.unit
                    text: cell.typed
                    fault: cell.fault
                    readOnly: cell.fixed
                    Layout.fillWidth: true
                    input.onTextEdited: panel.card.set(cell.key, input.text)
                }
                Choice {
                    visible: cell.options.length > 0
                    label: cell.label
                    title: label
                    model: cell.options
                    currentIndex: cell.chosen
                    implicitWidth: 64
                    Layout.fillWidth: true
                    onActivated: index => panel.card.choose(cell.key, index)
                }
            }
        }
    }
    buttons: Button {
        primary: true
        text: qsTr("Keep")
        keyHint: qsTr("Ctrl Enter")
        onClicked: panel.keep()
    }
}
