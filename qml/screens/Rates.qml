// Rate sheets: what each carrier asks, step by step, with what is wrong in them.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property RatesController controller

    headline: qsTr("Rate sheets")
    footed: false

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_O:
            files.open();
            break;
        case Qt.Key_Right:
            controller.current = controller.current + 1;
            break;
        case Qt.Key_Left:
            controller.current = controller.current - 1;
            break;
        default:
            event.accepted = false;
        }
    }

    headRight: [
        Choice {
            visible: screen.controller.sheets.length > 0
            label: qsTr("Rate sheet")
            model: screen.controller.sheets
            currentIndex: screen.controller.current
            implicitWidth: 340
            onActivated: index => screen.controller.current = index
        },
        Button {
            text: qsTr("Take in a sheet")
            keyHint: "O"
            onClicked: files.open()
        }
    ]

    Empty {
        visible: screen.controller.sheets.length === 0
        title: qsTr("No rate sheet yet")
        words: qsTr("A carrier's services, zones, formats and steps as one table. Without one, parcels are planned but not priced.")
        Button {
            primary: true
            text: qsTr("Take in a sheet")
            keyHint: "O"
            onClicked: files.open()
        }
    }
    ColumnLayout {
        anchors.fill: parent
        visible: screen.controller.sheets.length > 0
        spacing: 8
        Label {
            text: screen.controller.facts
            quiet: true
            Layout.fillWidth: true
        }
        Repeater {
            model: screen.controller.problems
            Label {
                required property string modelData
                text: modelData
                color: modelData.startsWith("×") ? Theme.brick : Theme.ochreText
                font.bold: true
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
        }
        TableHead {
            Layout.fillWidth: true
            columns: [
                {
                    words: qsTr("service"),
                    share: 3
                },
                {
                    words: qsTr("zone"),
                    share: 2
                },
                {
                    words: qsTr("format"),
                    share: 2
                },
                {
                    words: qsTr("weight"),
                    width: 140,
                    right: true
                },
                {
                    words: qsTr("price"),
                    width: 80,
                    right: true
                }
            ]
        }
        ListView {
            id: list
            Layout.fillWidth: true
            Layout.fillHeight: true
            focus: true
            activeFocusOnTab: true
            clip: true
            model: screen.controller.steps
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Steps")
            delegate: TableRow {
                id: row
                required property int index
                required property string service
                required property string zone
                required property string format
                required property string upTo
                required property string price
                required property bool first
                implicitHeight: first ? 44 : 32
                ruled: false
                sentence: [service, zone, format, upTo, price].join(", ")
                Rule {
                    anchors.left: parent.left
                    anchors.right: parent.right
                    anchors.margins: -16
                    visible: row.first
                }
                RowLayout {
                    anchors.fill: parent
                    anchors.topMargin: row.first ? 8 : 0
                    spacing: 16
                    Label {
                        text: row.first ? row.service : ""
                        font.bold: true
                        Layout.fillWidth: true
                        Layout.preferredWidth: 3
                    }
                    Label {
                        text: row.first ? row.zone : ""
                        Layout.fillWidth: true
                        Layout.preferredWidth: 2
                    }
                    Label {
                        text: row.first ? row.format : ""
                        Layout.fillWidth: true
                        Layout.preferredWidth: 2
                    }
                    Label {
                        text: row.upTo
                        quiet: true
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: 140
                    }
                    Label {
                        text: row.price
                        font.bold: true
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: 80
                    }
                }
            }
        }
    }
    ScrollMark {
        flickable: list
    }
    FileDialog {
        id: files
        title: qsTr("A carrier's rate sheet")
        nameFilters: [qsTr("Tables (*.csv *.txt *.tsv)"), qsTr("All files (*)")]
        onAccepted: screen.controller.takeIn(selectedFile)
    }
}
