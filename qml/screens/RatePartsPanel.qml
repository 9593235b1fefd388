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

    buttons: [
        Button {
            primary: true
            text: qsTr("To the prices")
            keyHint: qsTr("Esc")
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
    Repeater {
        model: panel.controller.parts
        ColumnLayout {
            id: part
            required property int index
            required property string record
            required property string name
            required property string amount
            required property string details
            required property string fault
            required property string chapter
            required property string hint
            Layout.fillWidth: true
            spacing: 4
            Label {
                visible: part.chapter !== ""
                text: part.chapter
                font.bold: true
                Layout.topMargin: 8
            }
            RowLayout {
                Layout.fillWidth: true
                spacing: 8
                TextField {
                    text: part.name
                    label: qsTr("%1: name").arg(part.record)
                    placeholderText: part.record === "service" ? qsTr("code") : qsTr("name")
                    fault: part.fault !== ""
                    Layout.preferredWidth: 176
                    onTextEdited: panel.controller.setPart(part.index, "name", text)
                }
                TextField {
                    visible: part.record !== "zone" && part.record !== "format" && part.record !== "holiday"
                    text: part.amount
                    label: part.record === "service" ? qsTr("service: title") : qsTr("%1: price or percent").arg(part.record)
                    placeholderText: part.record === "service" ? qsTr("title") : "4.00"
                    Layout.preferredWidth: 128
                    onTextEdited: panel.controller.setPart(part.index, "amount", text)
                }
                TextField {
                    text: part.details
                    label: qsTr("%1: details").arg(part.record)
                    placeholderText: part.hint
                    fault: part.fault !== ""
                    Layout.fillWidth: true
                    onTextEdited: panel.controller.setPart(part.index, "details", text)
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
}
