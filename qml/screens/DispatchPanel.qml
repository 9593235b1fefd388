// One parcel on its way out: postage bought, its number, what customs is told, what the buyer is told.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property DispatchController controller
    property bool again: false // the warning was read

    title: controller.title
    sheetWidth: 640
    gap: 12

    function show(parcel: var) {
        again = false;
        controller.look(parcel);
        amount.text = number.text = stamps.text = "";
        amount.fault = "";
        tracking.text = controller.tracking;
        tracking.fault = "";
        open();
        amount.forceActiveFocus();
    }
    function buy() {
        amount.fault = controller.buy(amount.text, number.text, stamps.text, again);
        again = amount.fault !== "" && controller.boughtBefore;
        if (amount.fault === "") amount.text = number.text = stamps.text = "";
    }

    buttons: [
        Button {
            text: qsTr("Copy message")
            onClicked: panel.controller.copyMessage()
        },
        Button {
            visible: panel.controller.declared
            text: qsTr("Customs data as PDF")
            onClicked: panel.controller.writeCustoms()
        }
    ]

    Label {
        text: qsTr("Postage")
        font.bold: true
    }
    Label {
        visible: panel.controller.price !== ""
        text: qsTr("counted with %1").arg(panel.controller.price)
        quiet: true
    }
    Repeater {
        model: panel.controller.bought
        RowLayout {
            id: purchase
            required property int index
            required property string words
            required property bool refunded
            Layout.fillWidth: true
            Label {
                text: "✓ " + purchase.words
                Layout.fillWidth: true
            }
            Button {
                visible: !purchase.refunded
                flat: true
                text: qsTr("Refunded")
                onClicked: panel.controller.refund(purchase.index)
            }
        }
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Field {
            id: amount
            label: qsTr("Bought for")
            Layout.preferredWidth: 120
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.buy()
        }
        Field {
            id: number
            label: qsTr("Number or receipt")
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.buy()
        }
        Field {
            id: stamps
            visible: panel.controller.stamps.length > 0
            label: qsTr("Stamps")
            placeholder: "2 STAMP-110"
            more: panel.controller.stamps.join(", ")
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.buy()
        }
        Button {
            text: panel.again ? qsTr("Buy again") : qsTr("Bought")
            keyHint: qsTr("Enter")
            Layout.alignment: Qt.AlignTop
            Layout.topMargin: amount.input.y
            onClicked: panel.buy()
        }
    }
    Field {
        id: tracking
        label: qsTr("Tracking number")
        Layout.fillWidth: true
        onAccepted: fault = panel.controller.setTracking(text)
    }
    Rule {
        Layout.fillWidth: true
    }
    Label {
        text: panel.controller.customs
        font.bold: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Repeater {
        model: panel.controller.lines
        RowLayout {
            id: line
            required property string what
            required property string weight
            required property string value
            required property string code
            required property string origin
            Layout.fillWidth: true
            spacing: 12
            Label {
                text: line.what
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Label {
                text: line.weight
                horizontalAlignment: Text.AlignRight
                Layout.preferredWidth: 64
            }
            Label {
                text: line.value
                horizontalAlignment: Text.AlignRight
                Layout.preferredWidth: 88
            }
            Label {
                text: line.code
                Layout.preferredWidth: 88
            }
            Label {
                text: line.origin
                Layout.preferredWidth: 28
            }
        }
    }
    Label {
        visible: panel.controller.declared
        text: panel.controller.totals
        quiet: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Repeater {
        model: panel.controller.faults
        Label {
            required property string modelData
            text: "! " + modelData
            color: Theme.ochreText
            font.bold: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
    }
    Rule {
        Layout.fillWidth: true
    }
    Label {
        text: qsTr("Message to the buyer")
        font.bold: true
    }
    Label {
        text: panel.controller.message
        wrapMode: Text.Wrap
        lineHeight: 1.25
        Layout.fillWidth: true
    }
}
