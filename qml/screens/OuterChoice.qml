// Another outer for one parcel: those that hold it, and why the others do not.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property PlanController controller
    property int row: -1

    function ask(which: int) {
        if (which < 0) return;
        row = which;
        title = qsTr("An outer for %1").arg(controller.rows.value(row, "number"));
        controller.askOuters(row);
        list.currentIndex = 0;
        open();
        list.currentIndex = 0;
        list.forceActiveFocus();
    }
    function take(index: int) {
        const code = controller.choices.value(index, "code");
        if (code === undefined) return;
        controller.useOuter(row, code);
        close();
    }

    ListView {
        id: list
        Layout.fillWidth: true
        implicitHeight: contentHeight
        onCurrentItemChanged: if (currentItem) panel.reveal(currentItem)
        interactive: false
        keyNavigationEnabled: true
        focus: true
        model: panel.controller.choices
        onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
        Keys.onReturnPressed: panel.take(currentIndex)
        Keys.onEnterPressed: panel.take(currentIndex)
        delegate: TableRow {
            id: choice
            required property int index
            required property string code
            required property string name
            required property string words
            required property bool possible
            current: ListView.isCurrentItem
            sentence: name + ": " + words
            onPressed: list.currentIndex = index
            onOpened: panel.take(index)
            RowLayout {
                anchors.fill: parent
                spacing: 16
                Label {
                    text: choice.code
                    font.bold: true
                    Layout.preferredWidth: 112
                }
                ColumnLayout {
                    spacing: 2
                    Layout.fillWidth: true
                    Label {
                        text: choice.name
                        Layout.fillWidth: true
                    }
                    Label {
                        text: choice.words
                        color: choice.possible ? Theme.secondInk : Theme.brick
                        font.pixelSize: Theme.small
                        Layout.fillWidth: true
                    }
                }
            }
        }
    }
    buttons: Button {
        primary: true
        text: qsTr("Take this one and keep it")
        keyHint: qsTr("Enter")
        enabled: list.currentIndex >= 0
        onClicked: panel.take(list.currentIndex)
    }
}
