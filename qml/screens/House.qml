// How this house works: the settings, one a line.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property HouseController controller
    drafting: rules.laid || wrappings.laid

    headline: qsTr("How this house works")
    aside: qsTr("Enter keeps a line · Ctrl D: dark or light")
    footed: false
    named: false

    function begin(file: bool) {
        const first = list.itemAtIndex(0);
        if (first) first.take();
    }

    headRight: [
        Button {
            text: qsTr("Inserts")
            keyHint: qsTr("Ctrl I")
            onClicked: rules.begin()
        },
        Button {
            text: qsTr("Wrappings")
            keyHint: qsTr("Ctrl W")
            onClicked: wrappings.begin()
        },
        Button {
            text: qsTr("Command cards")
            keyHint: qsTr("Ctrl K")
            onClicked: screen.controller.printCommandCards()
        }
    ]
    Shortcut {
        enabled: screen.visible
        sequence: "Ctrl+I"
        onActivated: rules.begin()
    }
    Shortcut {
        enabled: screen.visible
        sequence: "Ctrl+W"
        onActivated: wrappings.begin()
    }
    Shortcut {
        enabled: screen.visible
        sequence: "Ctrl+K"
        onActivated: screen.controller.printCommandCards()
    }

    ListView {
        id: list
        anchors.fill: parent
        focus: true
        clip: true
        model: screen.controller.fields
        boundsBehavior: Flickable.StopAtBounds
        cacheBuffer: 60 * count // Tab goes through all of them
        delegate: TableRow {
            id: row
            required property int index
            required property string key
            required property string name
            required property string value
            required property string unit
            required property string more
            property string fault: ""

            function take() {
                entry.forceActiveFocus();
                entry.selectAll();
            }

            implicitHeight: 60
            sentence: name + ": " + value
            RowLayout {
                anchors.fill: parent
                spacing: 16
                Label {
                    text: row.name
                    wrapMode: Text.Wrap
                    Layout.fillWidth: screen.tight
                    Layout.preferredWidth: 280
                }
                TextField {
                    id: entry
                    label: row.name
                    text: row.value
                    unit: row.unit
                    fault: row.fault !== ""
                    implicitWidth: 280
                    onActiveFocusChanged: if (activeFocus) list.positionViewAtIndex(row.index, ListView.Contain)
                    onAccepted: {
                        row.fault = screen.controller.set(row.key, text);
                        const next = list.itemAtIndex(row.index + 1);
                        if (row.fault === "" && next) next.take();
                    }
                    Keys.onEscapePressed: {
                        text = Qt.binding(() => row.value);
                        list.forceActiveFocus();
                    }
                    onEditingFinished: if (text !== row.value) row.fault = screen.controller.set(row.key, text)
                }
                Label {
                    text: row.fault ? "! " + row.fault : row.more
                    color: row.fault ? Theme.brick : Theme.secondInk
                    font.pixelSize: Theme.small
                    wrapMode: Text.Wrap
                    visible: !screen.tight || row.fault !== ""
                    Layout.fillWidth: true
                }
            }
        }
    }
    ScrollMark {
        flickable: list
    }
    over: [
        TypedTablePanel {
            id: rules
            table: screen.controller.rules
            onClosed: list.forceActiveFocus()
        },
        TypedTablePanel {
            id: wrappings
            table: screen.controller.wrappings
            onClosed: list.forceActiveFocus()
        }
    ]
}
