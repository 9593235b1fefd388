// Why a weight stands although it did not look right: the records tell it when a buyer asks.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

Panel {
    id: panel

    signal decided(string why)

    function ask(verdict: string) {
        about.text = verdict;
        why.text = "";
        open();
        why.forceActiveFocus();
    }
    function decide() {
        decided(why.text.trim());
        close();
    }

    title: qsTr("It is right all the same")

    Label {
        id: about
        visible: text !== ""
        quiet: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Field {
        id: why
        label: qsTr("Why, for the records; may stay empty")
        placeholder: qsTr("counted once more, nothing is missing")
        Layout.fillWidth: true
        onAccepted: panel.decide()
    }
    Flow {
        spacing: 8
        Layout.fillWidth: true
        Repeater {
            model: [qsTr("counted once more, nothing is missing"), qsTr("more filler than planned"), qsTr("a note or a gift was added"), qsTr("the paper is damp")]
            Button {
                required property string modelData
                text: modelData
                onClicked: {
                    why.text = modelData;
                    panel.decide();
                }
            }
        }
    }
    buttons: Button {
        primary: true
        text: qsTr("Keep the weight")
        keyHint: qsTr("Enter")
        onClicked: panel.decide()
    }
}
