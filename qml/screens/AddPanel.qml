// Something more goes into this parcel: the parcel is planned again around it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property BenchController controller
    required property var goods

    title: qsTr("Add something")
    onOpened: {
        search.text = "";
        goods.filter = "";
        list.currentIndex = -1;
        search.forceActiveFocus();
    }

    function take(index: int) {
        const code = goods.value(index, "code");
        if (code === undefined) {
            fault.text = search.text === "" ? qsTr("Type a code or a name, or point at a good.") : qsTr("No good has these words.");
            return;
        }
        fault.text = controller.addSomething(code, Number.parseInt(count.text) || 1);
        if (fault.text === "") close();
    }

    RowLayout {
        spacing: 8
        Layout.fillWidth: true
        Field {
            id: count
            label: qsTr("How many")
            text: "1"
            Layout.preferredWidth: 96
            onAccepted: panel.take(list.currentIndex)
        }
        Field {
            id: search
            label: qsTr("Code or name")
            Layout.fillWidth: true
            input.onTextChanged: {
                panel.goods.filter = text;
                list.currentIndex = text !== "" && list.count > 0 ? 0 : -1; // nothing goes in by Enter alone
            }
            onAccepted: panel.take(list.currentIndex)
            Keys.onDownPressed: list.incrementCurrentIndex()
            Keys.onUpPressed: list.decrementCurrentIndex()
        }
    }
    Label {
        id: fault
        visible: text !== ""
        color: Theme.brick
        font.bold: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    ListView {
        id: list
        Layout.fillWidth: true
        implicitHeight: contentHeight
        onCurrentItemChanged: if (currentItem) panel.reveal(currentItem)
        interactive: false
        model: panel.goods
        currentIndex: -1
        delegate: TableRow {
            id: row
            required property int index
            required property string code
            required property string name
            current: ListView.isCurrentItem
            sentence: name
            onPressed: list.currentIndex = index
            onOpened: panel.take(index)
            Label {
                anchors.verticalCenter: parent.verticalCenter
                width: parent.width
                text: row.code + "   " + row.name
            }
        }
    }
    buttons: Button {
        primary: true
        text: qsTr("Add it")
        keyHint: qsTr("Enter")
        enabled: list.currentIndex >= 0
        onClicked: panel.take(list.currentIndex)
    }
}
