// Why a parcel came back, what becomes of its goods, and whether it goes out once more.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

Panel {
    id: panel

    property int parcel: -1
    property int goods: -1 // place in the choice below

    signal decided(int parcel, string why, int goods, bool again)

    function ask(row: int, number: string) {
        parcel = row;
        title = qsTr("Parcel %1 came back").arg(number);
        why.text = "";
        again.checked = false;
        goods = 0;
        open();
        why.forceActiveFocus();
    }
    function decide() {
        decided(parcel, why.text.trim(), goods, again.checked);
        close();
    }

    Field {
        id: why
        label: qsTr("Why it came back")
        placeholder: qsTr("nobody there, address wrong, crushed on the way")
        Layout.fillWidth: true
        onAccepted: panel.decide()
    }
    Label {
        text: qsTr("Its goods")
        quiet: true
    }
    Flow {
        spacing: 8
        Layout.fillWidth: true
        Repeater {
            model: [qsTr("not looked at yet"), qsTr("whole, on the shelf again"), qsTr("written off")]
            Button {
                required property int index
                required property string modelData
                text: modelData
                primary: panel.goods === index
                Accessible.role: Accessible.RadioButton
                Accessible.checked: panel.goods === index
                onClicked: panel.goods = index
            }
        }
    }
    CheckBox {
        id: again
        text: qsTr("Send it again: the order is planned anew")
    }
    buttons: Button {
        primary: true
        text: qsTr("Note it")
        keyHint: qsTr("Enter")
        onClicked: panel.decide()
    }
}
