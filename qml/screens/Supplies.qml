// What is used up in packing: how much there is, how long it lasts, what to order.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property SuppliesController controller
    required property SizesController sizes
    required property SupplyCard card
    required property PaperBoxesController paperBoxes
    drafting: cardPanel.laid

    Component.onCompleted: controller.open()
    Component.onDestruction: controller.leave()

    headline: controller.headline
    footed: false
    named: false

    function begin(file: bool) {
        if (file) files.open();
        else cardPanel.begin();
    }

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_O:
            files.open();
            break;
        case Qt.Key_P:
            controller.printReorder();
            break;
        case Qt.Key_N:
            cardPanel.begin();
            break;
        case Qt.Key_E:
            if (list.currentIndex >= 0) cardPanel.change(controller.rows.value(list.currentIndex, "code"));
            break;
        case Qt.Key_S:
            sizesPanel.open();
            break;
        case Qt.Key_F:
            foldPanel.open();
            break;
        case Qt.Key_Return:
        case Qt.Key_Enter:
            panel.show(list.currentIndex);
            break;
        default:
            event.accepted = false;
        }
    }

    headRight: [
        SortButton {
            visible: screen.controller.rows.total > 1 && !screen.tight
            rows: screen.controller.rows
            brief: screen.width < 1400
        },
        FilterField {
            label: qsTr("Filter the supplies")
            implicitWidth: 112
            rows: screen.controller.rows
            list: list
        },
        Button {
            text: qsTr("New")
            keyHint: "N"
            onClicked: cardPanel.begin()
        },
        Button {
            text: qsTr("Sizes to buy")
            keyHint: "S"
            visible: !screen.controller.empty && !screen.tight
            onClicked: sizesPanel.open()
        },
        Button {
            text: qsTr("Fold a box")
            keyHint: "F"
            visible: !screen.controller.empty && !screen.tight
            onClicked: foldPanel.open()
        },
        Button {
            text: qsTr("Reorder list")
            keyHint: "P"
            visible: !screen.controller.empty && !screen.tight
            onClicked: screen.controller.printReorder()
        },
        Button {
            text: qsTr("Take in a file")
            keyHint: "O"
            onClicked: files.open()
        }
    ]

    Empty {
        visible: screen.controller.empty
        title: qsTr("No supplies yet")
        words: qsTr("Cartons, mailers, tubes, filler, tape, labels: whatever is used up in packing. Take in a table of them; one line each.")
        Button {
            primary: true
            text: qsTr("New supply")
            keyHint: "N"
            onClicked: cardPanel.begin()
        }
        Button {
            text: qsTr("Take in a file")
            keyHint: "O"
            onClicked: files.open()
        }
    }
    TableHead {
        id: head
        width: parent.width
        visible: !screen.controller.empty && !screen.tight
        columns: [
            {
                words: qsTr("code"),
                width: 120
            },
            {
                words: qsTr("name")
            },
            {
                words: qsTr("size, of outers inside"),
                width: 190,
                right: true
            },
            {
                words: qsTr("cost"),
                width: 72,
                right: true
            },
            {
                words: "",
                width: 130,
                right: true
            },
            {
                words: qsTr("there"),
                width: 80,
                right: true
            }
        ]
    }
    ListView {
        id: list
        anchors.fill: parent
        anchors.topMargin: head.height
        visible: !screen.controller.empty
        focus: true
        activeFocusOnTab: true
        clip: true
        model: screen.controller.rows
        onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
        boundsBehavior: Flickable.StopAtBounds
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Supplies")
        delegate: TableRow {
            id: row
            required property int index
            required property string code
            required property string name
            required property string kind
            required property string size
            required property string onHand
            required property string cover
            required property string cost
            required property string warning
            current: ListView.isCurrentItem
            sentence: [code, name, onHand, cover, warning].filter(words => words !== "").join(", ")
            onPressed: {
                list.currentIndex = index;
                list.forceActiveFocus();
            }
            onOpened: panel.show(index)
            RowLayout {
                anchors.fill: parent
                spacing: 16
                Label {
                    text: row.code
                    font.bold: true
                    Layout.preferredWidth: 120
                }
                ColumnLayout {
                    spacing: 2
                    Layout.fillWidth: true
                    Label {
                        text: row.name
                        shortens: true
                        Layout.fillWidth: true
                    }
                    Label {
                        text: row.warning ? "! " + row.warning : row.kind
                        color: row.warning ? Theme.ochreText : Theme.secondInk
                        font.bold: row.warning !== ""
                        font.pixelSize: Theme.small
                        Layout.fillWidth: true
                    }
                }
                Label {
                    visible: !screen.tight
                    text: row.size
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 190
                }
                Label {
                    visible: !screen.tight
                    text: row.cost
                    quiet: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 72
                }
                Label {
                    visible: !screen.tight
                    text: row.cover
                    quiet: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 130
                }
                Label {
                    text: row.onHand
                    font.bold: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 80
                }
            }
        }
    }

    ScrollMark {
        flickable: list
    }
    FileDialog {
        id: files
        title: qsTr("Supplies to take in")
        nameFilters: [qsTr("Tables (*.csv *.txt *.tsv)"), qsTr("All files (*)")]
        onAccepted: screen.controller.takeIn(selectedFile)
    }
    over: [
        SupplyCardPanel {
            id: cardPanel
            card: screen.card
            onClosed: list.forceActiveFocus()
        },
        SupplyPanel {
            id: panel
            onChangeAsked: code => {
                close();
                cardPanel.change(code);
            }
            controller: screen.controller
            onClosed: list.forceActiveFocus()
        },
        SizesPanel {
            id: sizesPanel
            controller: screen.sizes
            onClosed: list.forceActiveFocus()
        },
        PaperBoxPanel {
            id: foldPanel
            controller: screen.paperBoxes
            onClosed: list.forceActiveFocus()
        }
    ]
}
