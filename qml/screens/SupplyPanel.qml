// One supply: count it, receive it, and every movement of it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property SuppliesController controller
    readonly property var supply: controller.detail
    readonly property bool low: height < 400 // what is there stands in the title

    title: [supply.name || "", low ? supply.onHand || "" : ""].filter(words => words !== "").join(" · ")

    signal changeAsked(string code)

    function show(row: int) {
        if (row < 0) return;
        controller.look(row);
        counted.text = received.text = cost.text = spoilt.text = why.text = "";
        counted.fault = received.fault = spoilt.fault = "";
        open();
        counted.forceActiveFocus();
    }
    function count() {
        counted.fault = controller.count(supply.code, counted.text);
        if (counted.fault === "") counted.text = "";
    }
    function receive() {
        received.fault = controller.receive(supply.code, received.text, cost.text);
        if (received.fault === "") received.text = cost.text = "";
    }
    function spoil() {
        spoilt.fault = controller.spoil(supply.code, spoilt.text, why.text);
        if (spoilt.fault === "") spoilt.text = why.text = "";
    }

    Shortcut {
        enabled: panel.visible
        sequence: "Ctrl+E"
        onActivated: panel.changeAsked(panel.supply.code)
    }
    buttons: Button {
        text: qsTr("Change what it is")
        keyHint: qsTr("Ctrl E")
        onClicked: panel.changeAsked(panel.supply.code)
    }

    Label {
        visible: !panel.low
        text: panel.supply.onHand || ""
        font.bold: true
        font.pixelSize: Theme.title
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Field {
            id: counted
            label: qsTr("Counted: really there")
            unit: panel.supply.unit || ""
            Layout.fillWidth: true
            onAccepted: panel.count()
        }
        Button {
            text: qsTr("Count")
            keyHint: qsTr("Enter")
            Layout.alignment: Qt.AlignTop
            Layout.topMargin: counted.input.y
            onClicked: panel.count()
        }
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Field {
            id: received
            label: qsTr("Received: came in")
            unit: panel.supply.unit || ""
            Layout.fillWidth: true
            onAccepted: panel.receive()
        }
        Field {
            id: cost
            label: qsTr("for, in all")
            Layout.preferredWidth: 150
            onAccepted: panel.receive()
        }
        Button {
            text: qsTr("Receive")
            keyHint: qsTr("Enter")
            Layout.alignment: Qt.AlignTop
            Layout.topMargin: received.input.y
            onClicked: panel.receive()
        }
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Field {
            id: spoilt
            label: qsTr("Spoilt")
            unit: panel.supply.unit || ""
            Layout.preferredWidth: 130
            onAccepted: panel.spoil()
        }
        Field {
            id: why
            label: qsTr("because")
            Layout.fillWidth: true
            onAccepted: panel.spoil()
        }
        Button {
            text: qsTr("Spoil")
            keyHint: qsTr("Enter")
            Layout.alignment: Qt.AlignTop
            Layout.topMargin: spoilt.input.y
            onClicked: panel.spoil()
        }
    }
    Label {
        text: panel.supply.facts || ""
        quiet: true
        wrapMode: Text.Wrap
        lineHeight: 1.25
        Layout.fillWidth: true
    }
    Label {
        text: qsTr("Movements, newest first")
        quiet: true
        font.pixelSize: Theme.small
    }
    Repeater {
        model: panel.controller.ledger
        RowLayout {
            id: movement
            required property string when
            required property string what
            required property string amount
            Layout.fillWidth: true
            spacing: 12
            Label {
                text: movement.when
                quiet: true
                font.pixelSize: Theme.small
                Layout.preferredWidth: 152
            }
            Label {
                text: movement.what
                Layout.fillWidth: true
            }
            Label {
                text: movement.amount
                font.bold: true
                horizontalAlignment: Text.AlignRight
            }
        }
    }
}
