// Why an order waits, and until when.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

Panel {
    id: panel

    property var order: 0

    required property var keeps // (order, reason, until) => empty, or what is wrong with the day

    function ask(which: var, heading: string) {
        order = which;
        title = qsTr("Set aside: %1").arg(heading);
        reason.text = until.text = "";
        reason.fault = until.fault = "";
        open();
        reason.forceActiveFocus();
    }
    function decide() {
        if (reason.text.trim() === "") {
            reason.fault = qsTr("say why, so that it is not forgotten");
            return;
        }
        reason.fault = "";
        until.fault = keeps(order, reason.text, until.text);
        if (until.fault === "") close();
    }

    Field {
        id: reason
        label: qsTr("Why it waits")
        placeholder: qsTr("address asked for, waiting for ink")
        Layout.fillWidth: true
        onAccepted: panel.decide()
    }
    Field {
        id: until
        label: qsTr("Until which day, may stay empty")
        placeholder: qsTr("2026-12-01")
        Layout.fillWidth: true
        onAccepted: panel.decide()
    }
    buttons: Button {
        primary: true
        text: qsTr("Set aside")
        keyHint: qsTr("Enter")
        onClicked: panel.decide()
    }
}
