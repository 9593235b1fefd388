// What a rate sheet is made of besides its prices: whose it is, services, zones, formats, surcharges.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property RatesController controller

    title: qsTr("Services, zones, formats")
    sheetWidth: 880
    gap: 8

    function show() {
        open();
        carrier.forceActiveFocus();
    }

    Shortcut {
        enabled: panel.visible
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        onActivated: panel.close()
    }
    buttons: [
        Button {
            primary: true
            text: qsTr("To the prices")
            keyHint: qsTr("Ctrl Enter")
            onClicked: panel.close()
        }
    ]

    RowLayout {
        Layout.fillWidth: true
        Layout.fillHeight: false
        spacing: 8
        Field {
            id: carrier
            label: qsTr("Carrier")
            text: panel.controller.carrier
            Layout.fillWidth: true
            input.onTextEdited: panel.controller.setHead("carrier", input.text)
        }
        Field {
            label: qsTr("Currency")
            text: panel.controller.currency
            Layout.preferredWidth: 88
            input.onTextEdited: panel.controller.setHead("currency", input.text)
        }
        Field {
            label: qsTr("Tax on top")
            text: panel.controller.tax
            unit: "%"
            Layout.preferredWidth: 88
            input.onTextEdited: panel.controller.setHead("tax", input.text)
        }
        Field {
            label: qsTr("From")
            text: panel.controller.from
            placeholder: "2027-01-01"
            Layout.preferredWidth: 128
            input.onTextEdited: panel.controller.setHead("from", input.text)
        }
        Field {
            label: qsTr("Until")
            text: panel.controller.until
            placeholder: "2027-12-31"
            Layout.preferredWidth: 128
            input.onTextEdited: panel.controller.setHead("until", input.text)
        }
    }
    CheckBox {
        id: all
        text: qsTr("Ask for what is seldom used too: by volume, rolls, seasons")
    }
    Repeater {
        model: panel.visible ? panel.controller.parts : null
        ColumnLayout {
            id: part
            required property int index
            required property string record
            required property string name
            required property string amount
            required property var values
            required property string fault
            required property int faulty
            required property string chapter
            required property string one
            required property bool named
            required property string amountLabel
            required property string amountExample
            readonly property bool begun: !named || name !== "" || fault !== "" // the rest is asked when it has a name
            Layout.fillWidth: true
            spacing: 4
            Label {
                visible: part.chapter !== ""
                text: part.chapter
                font.bold: true
                Layout.topMargin: 8
            }
            Rule {
                visible: part.chapter === ""
                Layout.fillWidth: true
                Layout.topMargin: 4
            }
            Flow {
                Layout.fillWidth: true
                spacing: 8
                Field {
                    visible: part.named
                    width: 176
                    label: part.record === "service" ? qsTr("Short name") : qsTr("Name")
                    text: part.name
                    input.label: part.one + ": " + label
                    input.fault: part.fault !== "" && part.faulty < 0
                    input.onTextEdited: panel.controller.setPart(part.index, "name", input.text)
                }
                Field {
                    visible: part.amountLabel !== "" && part.begun
                    width: 128
                    label: part.amountLabel
                    text: part.amount
                    placeholder: part.amountExample
                    input.label: part.one + ": " + label
                    input.onTextEdited: panel.controller.setPart(part.index, "amount", input.text)
                }
                Repeater {
                    model: panel.controller.asked(part.record)
                    RateAsk {
                        required property int index
                        required property var modelData
                        active: part.begun && (!modelData.seldom || all.checked || value !== "")
                        question: modelData
                        value: part.values[index]
                        of: part.one
                        faulty: part.faulty === index
                        onAnswered: typed => panel.controller.setValue(part.index, index, typed)
                    }
                }
            }
            Label {
                visible: part.fault !== ""
                text: "× " + part.fault
                color: Theme.brick
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
        }
    }
    Label {
        text: qsTr("Sizes in mm: 240 is at most 240, 140– at least 140, 140–240 both. Countries in two letters; * is all others.")
        quiet: true
        font.pixelSize: Theme.small
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
}
