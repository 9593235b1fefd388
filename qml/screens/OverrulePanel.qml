// Why a weight stands although it did not look right: the records tell it when a buyer asks.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

Panel {
    id: panel

    required property var excuses // to choose from

    signal decided(string why)

    function ask(verdict: string) {
        about.text = verdict;
        why.text = "";
        open();
        why.forceActiveFocus();
    }
    function choose(excuse: int) {
        if (excuse >= excuses.length) return;
        why.text = excuses[excuse];
        decide();
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
        placeholder: panel.excuses[0]
        Layout.fillWidth: true
        onAccepted: panel.decide()
    }
    Flow {
        spacing: 8
        Layout.fillWidth: true
        Repeater {
            model: panel.excuses
            Button {
                id: excuse
                required property int index
                required property string modelData
                text: modelData
                keyHint: qsTr("Alt %1").arg(index + 1)
                onClicked: panel.choose(index)
                Shortcut {
                    enabled: panel.visible
                    sequence: "Alt+" + (excuse.index + 1)
                    onActivated: panel.choose(excuse.index)
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
