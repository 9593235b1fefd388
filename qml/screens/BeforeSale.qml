// Before the sale: what it would cost to send it there.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property BeforeSaleController controller

    headline: qsTr("Before the sale")
    footed: false
    named: false

    function ask() {
        controller.ask(good.currentIndex, count.text, country.text, postcode.text);
    }

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        if (event.key === Qt.Key_E) controller.writeTable();
        else if (event.key === Qt.Key_G) good.forceActiveFocus();
        else if (event.key === Qt.Key_Escape) rest.forceActiveFocus();
        else event.accepted = false;
    }

    headRight: [
        Button {
            text: screen.controller.writing ? qsTr("Writing the table …") : qsTr("Table of postage to charge")
            keyHint: "E"
            onClicked: screen.controller.writeTable()
        }
    ]

    Item { // has the keys when no field does
        id: rest
        focus: true
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.bottomMargin: 16
        spacing: 16
        Flow {
            Layout.fillWidth: true
            spacing: 8
            Choice {
                id: good
                label: qsTr("Good")
                title: label
                model: screen.controller.goods
                width: Math.min(400, screen.width - 48)
            }
            Field {
                id: count
                label: qsTr("How many")
                fault: screen.controller.countFault
                text: "1"
                width: 88
                onAccepted: screen.ask()
            }
            Field {
                id: country
                label: qsTr("Country")
                placeholder: "DE"
                fault: screen.controller.countryFault
                width: 120
                onAccepted: screen.ask()
            }
            Field {
                id: postcode
                label: qsTr("Postcode, if it matters")
                width: 176
                onAccepted: screen.ask()
            }
            Column {
                topPadding: count.input.y
                Button {
                    primary: true
                    text: qsTr("What would it cost?")
                    keyHint: qsTr("Enter")
                    onClicked: screen.ask()
                }
            }
        }
        Label {
            visible: !screen.controller.asking && screen.controller.answer === ""
            text: qsTr("For a question at the stall or by mail: the outer it would take, its weight, and what each service asks for it.")
            quiet: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Label {
            visible: text !== ""
            text: screen.controller.asking ? qsTr("Trying …") : screen.controller.answer
            font.pixelSize: Theme.title
            font.bold: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Label {
            visible: text !== ""
            text: screen.controller.packed
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Label {
            visible: text !== ""
            text: screen.controller.risk ? "! " + screen.controller.risk : ""
            color: Theme.ochreText
            font.bold: true
            Layout.fillWidth: true
        }
        Label {
            visible: text !== ""
            text: screen.controller.saving
            quiet: true
            Layout.fillWidth: true
        }
        ListView {
            id: list
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            model: screen.controller.services
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Services")
            delegate: TableRow {
                id: row
                required property int index
                required property string service
                required property string price
                required property string more
                required property bool chosen
                sentence: [service, price, more].filter(words => words !== "").join(", ")
                RowLayout {
                    anchors.fill: parent
                    spacing: 16
                    Label {
                        text: (row.chosen ? "✓ " : "") + row.service
                        font.bold: row.chosen
                        Layout.fillWidth: true
                        Layout.preferredWidth: 2
                    }
                    Label {
                        text: row.price || "–"
                        font.bold: row.price !== ""
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: 112
                    }
                    Label {
                        text: row.more
                        quiet: true
                        Layout.fillWidth: true
                        Layout.preferredWidth: 3
                    }
                }
            }
        }
    }
}
