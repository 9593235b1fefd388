// An order by mail, by telephone or from a fair.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property ArrivalsController controller

    title: qsTr("Enter an order")
    sheetWidth: 600
    gap: 8

    function take() {
        const order = address.values();
        order.shop = shop.text;
        order.number = number.text;
        order.lines = lines.text;
        order.note = note.text;
        order.gift = gift.checked;
        order.giver = giver.text;
        order.message = message.text;
        fault.text = controller.enterByHand(order);
        if (fault.text !== "") return;
        address.take({});
        lines.text = note.text = giver.text = message.text = number.text = "";
        gift.checked = false;
        close();
    }

    onOpened: address.first()

    AddressCard {
        id: address
        focus: true
        Layout.fillWidth: true
        onAccepted: lines.forceActiveFocus()
    }
    Field {
        id: lines
        label: qsTr("What is ordered: count and code, with commas between")
        placeholder: qsTr("2 INK-SEA, 1 NOTE-R")
        Layout.fillWidth: true
        onAccepted: panel.take()
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Field {
            id: shop
            label: qsTr("Where from")
            text: qsTr("by hand")
            Layout.fillWidth: true
        }
        Field {
            id: number
            label: qsTr("Number, may stay empty")
            Layout.fillWidth: true
        }
    }
    Field {
        id: note
        label: qsTr("Note")
        Layout.fillWidth: true
        onAccepted: panel.take()
    }
    CheckBox {
        id: gift
        text: qsTr("A gift: no prices in the parcel")
    }
    Field {
        id: giver
        visible: gift.checked
        label: qsTr("From whom")
        Layout.fillWidth: true
    }
    Field {
        id: message
        visible: gift.checked
        label: qsTr("Message")
        Layout.fillWidth: true
    }
    Shortcut {
        enabled: panel.visible
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        onActivated: panel.take()
    }
    buttons: [
        Button {
            primary: true
            text: qsTr("Take it in")
            keyHint: qsTr("Ctrl Enter")
            onClicked: panel.take()
        },
        FaultWord {
            id: fault
        }
    ]
}
