// What she sells: size, weight, where it stands, how many there are.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property GoodsController controller
    drafting: panel.laid

    headline: controller.headline
    footed: false
    named: false

    function begin(file: bool) {
        if (file) files.open();
        else panel.begin();
    }

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_N:
            panel.begin();
            break;
        case Qt.Key_O:
            files.open();
            break;
        case Qt.Key_M:
            controller.printMaking();
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
        },
        FilterField {
            label: qsTr("Filter the goods")
            rows: screen.controller.rows
            list: list
        },
        Button {
            text: qsTr("New good")
            keyHint: "N"
            onClicked: panel.begin()
        },
        Button {
            text: qsTr("Making list")
            keyHint: "M"
            visible: !screen.tight
            onClicked: screen.controller.printMaking()
        },
        Button {
            text: qsTr("Take in a file")
            keyHint: "O"
            onClicked: files.open()
        }
    ]

    Empty {
        visible: screen.controller.empty
        title: qsTr("No goods yet")
        words: qsTr("Each good has a size and a weight; from these come the outer, the postage and the check on the scale. Enter the first one, or take in a table.")
        Button {
            primary: true
            text: qsTr("New good")
            keyHint: "N"
            onClicked: panel.begin()
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
                width: 156
            },
            {
                words: qsTr("name")
            },
            {
                words: qsTr("largest size"),
                width: 190,
                right: true
            },
            {
                words: qsTr("weight of one"),
                width: 140,
                right: true
            },
            {
                words: qsTr("shelf"),
                width: 64,
                right: true
            },
            {
                words: qsTr("there"),
                width: 56,
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
        Accessible.name: qsTr("Goods")
        delegate: TableRow {
            id: row
            required property int index
            required property string code
            required property string name
            required property string size
            required property string weight
            required property string shelf
            required property int pieces
            required property string marks
            required property string warning
            current: ListView.isCurrentItem
            sentence: [code, name, size, weight, warning].filter(words => words !== "").join(", ")
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
                    Layout.preferredWidth: screen.tight ? 120 : 156
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
                        visible: text !== ""
                        text: row.warning ? "! " + row.warning : row.marks
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
                    text: row.weight
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: screen.tight ? 96 : 140
                }
                Label {
                    visible: !screen.tight
                    text: row.shelf
                    quiet: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 64
                }
                Label {
                    text: row.pieces
                    font.bold: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 56
                }
            }
        }
    }

    ScrollMark {
        flickable: list
    }
    FileDialog {
        id: files
        title: qsTr("Goods to take in")
        nameFilters: [qsTr("Tables (*.csv *.txt *.tsv)"), qsTr("All files (*)")]
        onAccepted: screen.controller.takeIn(selectedFile)
    }
    over: [
        GoodPanel {
            id: panel
            controller: screen.controller
            onClosed: list.forceActiveFocus()
        }
    ]
}
