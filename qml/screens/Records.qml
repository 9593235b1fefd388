// Records: what parcels really cost, how full they were, what packaging left the house. Every figure opens the list
// behind it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property RecordsController controller

    headline: qsTr("Records")
    aside: controller.covers
    footed: false
    named: false

    Component.onCompleted: controller.look()
    Component.onDestruction: controller.leave()

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_P:
            controller.nextPeriod();
            break;
        case Qt.Key_W:
            controller.printFiles();
            break;
        case Qt.Key_Return:
        case Qt.Key_Enter:
            behindPanel.show(list.currentIndex);
            break;
        default:
            event.accepted = false;
        }
    }

    headRight: [
        Button {
            text: screen.controller.period
            keyHint: "P"
            Accessible.description: qsTr("P changes the period")
            onClicked: screen.controller.nextPeriod()
        },
        Button {
            text: qsTr("Packaging report")
            keyHint: "W"
            visible: screen.controller.rows.total > 0 && !screen.tight
            onClicked: screen.controller.printFiles()
        }
    ]

    Empty {
        visible: screen.controller.rows.total === 0
        title: screen.controller.covers === "" ? qsTr("Nothing to record yet")
                                               : qsTr("%1: nothing was packed").arg(screen.controller.period)
        words: qsTr("Every parcel that is packed is counted here: cost, air, weights and packaging by material.")
    }
    Sketch {
        id: drawn
        anchors.left: parent.left
        anchors.right: parent.right
        height: 144
        visible: sentence !== "" && !screen.tight
        scene: screen.controller.weeks
        dark: Theme.dark
        family: Theme.family
        Accessible.role: Accessible.Graphic
        Accessible.name: sentence
    }
    ListView {
        id: list
        anchors.fill: parent
        anchors.topMargin: drawn.visible ? drawn.height + 8 : 0
        focus: true
        activeFocusOnTab: true
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Records")
        clip: true
        model: screen.controller.rows
        onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
        boundsBehavior: Flickable.StopAtBounds
        delegate: TableRow {
            id: row
            required property int index
            required property string name
            required property string value
            required property string more
            required property string chapter
            required property bool first
            required property double bar
            required property int behind
            implicitHeight: first ? 96 : 48
            current: ListView.isCurrentItem && list.activeFocus
            sentence: [name + ": " + value, more].filter(words => words !== "").join(", ")
            onPressed: {
                list.currentIndex = index;
                list.forceActiveFocus();
            }
            onOpened: behindPanel.show(index)
            Label {
                visible: row.first
                y: 20
                text: row.chapter
                font.bold: true
                font.pixelSize: Theme.strong
                Accessible.role: Accessible.Heading
            }
            RowLayout {
                anchors.bottom: parent.bottom
                width: parent.width
                height: 48
                spacing: 16
                Label {
                    text: row.name
                    Layout.preferredWidth: 280
                }
                Label {
                    text: row.value
                    font.bold: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 130
                }
                Bar {
                    opacity: row.bar >= 0 ? 1 : 0
                    share: Math.max(0, row.bar)
                    implicitHeight: 10
                    visible: !screen.tight
                    Layout.preferredWidth: 180
                }
                Label {
                    text: row.more
                    quiet: true
                    font.pixelSize: Theme.small
                    wrapMode: Text.Wrap
                    maximumLineCount: 2
                    Layout.fillWidth: true
                }
                Label {
                    text: row.behind > 0 ? qsTr("%1 ›").arg(row.behind) : ""
                    quiet: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 56
                }
            }
        }
    }
    ScrollMark {
        flickable: list
    }
    over: [
        Panel {
            id: behindPanel
            title: screen.controller.behindTitle
            sheetWidth: 640
            gap: 8
            function show(row: int) {
                if (row < 0) return;
                screen.controller.open(row);
                open();
            }
            onClosed: list.forceActiveFocus()
            Label {
                visible: screen.controller.behind.total === 0
                text: qsTr("No parcel: there is nothing behind it.")
                quiet: true
            }
            Repeater {
                model: screen.controller.behind
                ColumnLayout {
                    id: parcel
                    required property string number
                    required property string about
                    required property string cost
                    required property string more
                    Layout.fillWidth: true
                    spacing: 2
                    RowLayout {
                        Layout.fillWidth: true
                        Label {
                            text: parcel.number
                            font.bold: true
                            Layout.preferredWidth: 100
                        }
                        Label {
                            text: parcel.about
                            Layout.fillWidth: true
                        }
                        Label {
                            text: parcel.cost
                            font.bold: true
                        }
                    }
                    Label {
                        text: parcel.more
                        visible: text !== ""
                        quiet: true
                        font.pixelSize: Theme.small
                        Layout.fillWidth: true
                    }
                    Rule {
                        Layout.fillWidth: true
                    }
                }
            }
        }
    ]
}
