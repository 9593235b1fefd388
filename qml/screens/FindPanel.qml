// Find, from anywhere: what went in, when, how heavy, on which list; and back to its place at the bench.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property FindController controller

    signal parcelChosen(var parcel)

    title: qsTr("Find")
    sheetWidth: 720
    onOpened: {
        search.forceActiveFocus();
        search.selectAll();
    }

    function lookFor(code: string) {
        open();
        search.text = code;
        search.selectAll();
    }
    function take(index: int) {
        const parcel = controller.found.value(index, "parcel");
        if (!parcel) return;
        close();
        parcelChosen(parcel);
    }

    TextField {
        id: search
        Layout.fillWidth: true
        label: qsTr("Name, postcode, order or tracking number")
        placeholderText: label
        onTextChanged: {
            panel.controller.text = text;
            list.currentIndex = list.count > 0 ? 0 : -1;
        }
        onAccepted: panel.take(list.currentIndex)
        Keys.onDownPressed: list.incrementCurrentIndex()
        Keys.onUpPressed: list.decrementCurrentIndex()
    }
    Label {
        text: panel.controller.words
        quiet: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    ListView {
        id: list
        Layout.fillWidth: true
        implicitHeight: contentHeight
        onCurrentItemChanged: if (currentItem) panel.reveal(currentItem)
        interactive: false
        model: panel.controller.found
        onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
        delegate: TableRow {
            id: row
            required property int index
            required property string number
            required property string buyer
            required property string place
            required property string contents
            required property string state
            required property bool gone
            implicitHeight: words.implicitHeight + 24
            current: ListView.isCurrentItem
            sentence: [number, buyer, place, contents, state].join(", ")
            onPressed: list.currentIndex = index
            onOpened: panel.take(index)
            ColumnLayout {
                id: words
                width: parent.width
                y: 12
                spacing: 4
                RowLayout {
                    spacing: 8
                    Label {
                        text: row.number
                        font.bold: true
                        font.pixelSize: Theme.strong
                    }
                    Label {
                        text: row.buyer + ", " + row.place
                        shortens: true
                        Layout.fillWidth: true
                    }
                    Label {
                        text: row.state
                        font.bold: true
                        color: Theme.accent
                    }
                }
                Label {
                    text: row.contents
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
                Label {
                    visible: text !== ""
                    text: row.current ? panel.controller.history(row.index) : ""
                    quiet: true
                    font.pixelSize: Theme.small
                    lineHeight: 1.25
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
            }
        }
    }
    buttons: [
        Button {
            primary: true
            text: qsTr("Go there")
            keyHint: qsTr("Enter")
            enabled: list.count > 0
            onClicked: panel.take(list.currentIndex)
        },
        Button {
            id: forget

            property bool sure: false // pressed once: what is erased does not come back

            text: sure ? qsTr("Press again: it cannot be undone") : qsTr("Erase the buyer's data")
            enabled: list.currentItem !== null && list.currentItem.gone
            onEnabledChanged: sure = false
            onClicked: {
                if (sure) panel.controller.forget(list.currentIndex);
                sure = !sure;
            }
        }
    ]
}
