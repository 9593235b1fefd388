// Rate sheets: what each carrier asks, typed as it is printed: a row a weight, a column a zone; checked while typing.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property RatesController controller
    drafting: parts.laid

    readonly property int weightWidth: 120
    readonly property int priceWidth: 112

    headline: qsTr("Rate sheets")
    footed: false
    named: false
    least: controller.open ? 400 : 0

    function begin(file: bool) {
        if (file) {
            files.open();
            return;
        }
        controller.begin();
        parts.show();
    }
    function cell(row: int, column: int): Item {
        const line = lines.itemAt(row);
        return line ? line.field(column) : null;
    }
    function go(row: int, column: int) {
        const field = cell(row, column);
        if (!field) return;
        field.forceActiveFocus();
        field.selectAll();
        const y = field.mapToItem(table, 0, 0).y;
        if (y < flick.contentY) flick.contentY = Math.max(0, y - 8);
        else if (y + 52 > flick.contentY + flick.height) flick.contentY = y + 52 - flick.height;
    }
    function pasteAt(row: int, column: int) {
        controller.paste(row, column);
        Qt.callLater(screen.go, row, column);
    }

    Keys.onPressed: event => {
        const control = event.modifiers & Qt.ControlModifier;
        event.accepted = true;
        if (control && event.key === Qt.Key_S) controller.keep();
        else if (control && event.key === Qt.Key_Backspace) controller.putAway();
        else if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) event.accepted = false;
        else if (event.key === Qt.Key_O) files.open();
        else if (event.key === Qt.Key_N) {
            controller.begin();
            parts.show();
        } else if (event.key === Qt.Key_Y) controller.nextYear();
        else if (event.key === Qt.Key_E) save.open();
        else if (event.key === Qt.Key_P && controller.open) parts.show();
        else if (event.key === Qt.Key_G) screen.go(0, 0);
        else if (event.key === Qt.Key_T) tryIt.forceActiveFocus();
        else if (event.key === Qt.Key_Right) controller.current = controller.current + 1;
        else if (event.key === Qt.Key_Left) controller.current = controller.current - 1;
        else event.accepted = false;
    }

    headRight: [
        Choice {
            visible: screen.controller.sheets.length > 0
            label: qsTr("Rate sheet")
            model: screen.controller.sheets
            currentIndex: screen.controller.current
            implicitWidth: 300
            onActivated: index => screen.controller.current = index
        },
        Button {
            text: qsTr("Take in")
            keyHint: "O"
            onClicked: files.open()
        },
        Button {
            text: qsTr("New")
            keyHint: "N"
            onClicked: {
                screen.controller.begin();
                parts.show();
            }
        },
        Button {
            visible: screen.controller.open
            text: qsTr("Next year's")
            keyHint: "Y"
            onClicked: screen.controller.nextYear()
        },
        Button {
            visible: screen.controller.open
            text: qsTr("Write file")
            keyHint: "E"
            onClicked: save.open()
        }
    ]

    Item { // has the keys when no field does
        id: rest
        focus: true
    }
    Empty {
        visible: !screen.controller.open
        title: qsTr("No rate sheet yet")
        words: qsTr("A carrier's services, zones, formats and steps as one table. Without one, parcels are planned but not priced.")
        Button {
            primary: true
            text: qsTr("Type one in")
            keyHint: "N"
            onClicked: {
                screen.controller.begin();
                parts.show();
            }
        }
        Button {
            text: qsTr("Take in a file")
            keyHint: "O"
            onClicked: files.open()
        }
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.bottomMargin: 12
        visible: screen.controller.open
        spacing: 8

        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: false
            spacing: 8
            Choice {
                label: qsTr("Service")
                model: screen.controller.services
                currentIndex: screen.controller.service
                implicitWidth: 180
                onActivated: index => screen.controller.service = index
            }
            Choice {
                label: qsTr("Format")
                model: screen.controller.formats
                currentIndex: screen.controller.format
                implicitWidth: 180
                onActivated: index => screen.controller.format = index
            }
            Button {
                text: screen.tight ? qsTr("Parts") : qsTr("Services, zones, formats…")
                keyHint: "P"
                onClicked: parts.show()
            }
            Label {
                text: screen.controller.facts
                visible: !screen.tight
                quiet: true
                horizontalAlignment: Text.AlignRight
                Layout.fillWidth: true
            }
            Button {
                visible: screen.controller.unkept
                flat: true
                text: qsTr("Put away")
                keyHint: qsTr("Ctrl+⌫")
                onClicked: screen.controller.putAway()
            }
            Button {
                visible: screen.controller.unkept
                primary: true
                text: qsTr("Keep")
                keyHint: "Ctrl+S"
                onClicked: screen.controller.keep()
            }
        }
        Row { // headings of the grid
            spacing: 4
            Label {
                width: screen.weightWidth
                text: qsTr("up to, g")
                quiet: true
                font.pixelSize: Theme.small
                horizontalAlignment: Text.AlignRight
                rightPadding: 12
            }
            Repeater {
                model: screen.controller.zones
                Label {
                    required property string modelData
                    width: screen.priceWidth
                    text: modelData
                    font.pixelSize: Theme.small
                    font.bold: true
                    horizontalAlignment: Text.AlignRight
                    rightPadding: 12
                }
            }
        }
        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: 3 * 48
            Flickable {
                id: flick
                anchors.fill: parent
                contentHeight: table.height
                contentWidth: table.width
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                Column {
                    id: table
                    spacing: 4
                    Repeater {
                        id: lines
                        model: screen.controller.grid
                        Row {
                            id: line
                            required property int index
                            required property string grams
                            required property var prices
                            required property string faulty
                            spacing: 4

                            function field(column: int): Item {
                                return column === 0 ? weight : zones.itemAt(column - 1);
                            }

                            Cell {
                                id: weight
                                width: screen.weightWidth
                                row: line.index
                                column: 0
                                text: line.grams
                                fault: line.faulty.includes(" 0 ")
                                label: qsTr("up to, row %1").arg(line.index + 1)
                            }
                            Repeater {
                                id: zones
                                model: screen.controller.zones
                                Cell {
                                    required property int index
                                    required property string modelData
                                    width: screen.priceWidth
                                    row: line.index
                                    column: index + 1
                                    text: line.prices[index] ?? ""
                                    fault: line.faulty.includes(" " + (index + 1) + " ")
                                    label: qsTr("%1, row %2").arg(modelData).arg(line.index + 1)
                                }
                            }
                        }
                    }
                }
            }
            ScrollMark {
                flickable: flick
            }
        }
        Flickable {
            id: said
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(104, problems.implicitHeight)
            visible: screen.controller.problems.length > 0
            contentHeight: problems.implicitHeight
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            Column {
                id: problems
                width: said.width
                Repeater {
                    model: screen.controller.problems
                    Label {
                        required property string modelData
                        width: problems.width
                        text: modelData
                        color: modelData.startsWith("×") ? Theme.brick : Theme.ochreText
                        font.bold: true
                        wrapMode: Text.Wrap
                    }
                }
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: false
            spacing: 16
            Field {
                id: tryIt
                label: qsTr("Try a parcel (T): length width height, grams, country, postcode")
                placeholder: "250 180 90 812 DE 20095"
                fault: screen.controller.triedFault
                Layout.preferredWidth: 440
                Layout.maximumWidth: 440
                Layout.alignment: Qt.AlignTop
                input.onTextEdited: screen.controller.tryParcel(input.text)
                Keys.onEscapePressed: rest.forceActiveFocus()
            }
            Column {
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignTop
                Layout.topMargin: 20
                spacing: 2
                Repeater {
                    model: screen.controller.tried
                    Label {
                        required property string modelData
                        width: parent.width
                        text: modelData
                        font.pixelSize: Theme.small
                        Accessible.role: Accessible.ListItem
                        Accessible.name: text
                    }
                }
            }
        }
    }

    component Cell: TextField {
        id: field
        property int row: 0
        property int column: 0
        implicitHeight: Theme.target
        horizontalAlignment: TextInput.AlignRight
        inputMethodHints: Qt.ImhFormattedNumbersOnly
        onTextEdited: screen.controller.setCell(row, column, text)
        Keys.onPressed: event => {
            event.accepted = true;
            if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || event.key === Qt.Key_Down) screen.go(row + 1, column);
            else if (event.key === Qt.Key_Up) screen.go(row - 1, column);
            else if (event.key === Qt.Key_Escape) rest.forceActiveFocus();
            else if (event.matches(StandardKey.Paste)) {
                event.accepted = screen.controller.tableInClipboard();
                if (event.accepted) Qt.callLater(screen.pasteAt, row, column); // this cell is gone then
            } else event.accepted = false;
        }
    }

    over: [
        RatePartsPanel {
            id: parts
            controller: screen.controller
            onClosed: screen.go(0, 0)
        }
    ]
    FileDialog {
        id: files
        title: qsTr("A carrier's rate sheet")
        nameFilters: [qsTr("Tables (*.csv *.txt *.tsv)"), qsTr("All files (*)")]
        onAccepted: screen.controller.takeIn(selectedFile)
    }
    FileDialog {
        id: save
        title: qsTr("Write this rate sheet to")
        fileMode: FileDialog.SaveFile
        nameFilters: [qsTr("Tables (*.csv)")]
        onAccepted: screen.controller.write(selectedFile)
    }
}
