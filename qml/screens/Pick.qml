// Pick: the walk along the shelves for one round of trays.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property PickController controller

    signal goPlan
    signal goBench

    headline: controller.empty ? "" : controller.headline
    footed: !controller.empty

    function row(): int {
        return list.currentIndex >= 0 ? list.currentIndex : controller.nextRow;
    }

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_Space:
            if (!controller.empty) controller.tick(screen.row());
            break;
        case Qt.Key_Backspace:
            controller.untick(screen.row());
            break;
        case Qt.Key_N:
            controller.notThere(screen.row(), false);
            break;
        case Qt.Key_K:
            controller.notThere(screen.row(), true);
            break;
        case Qt.Key_Return:
        case Qt.Key_Enter:
            if (controller.empty && controller.canStart) controller.startRound();
            else if (controller.roundDone) controller.finishRound();
            break;
        default:
            event.accepted = false;
        }
    }

    Connections {
        target: screen.controller
        function onChanged() {
            list.currentIndex = screen.controller.nextRow;
        }
        function onRoundFinished() {
            screen.goBench();
        }
    }

    Empty {
        visible: screen.controller.empty
        title: screen.controller.canStart ? screen.controller.headline : qsTr("Nothing to pick")
        words: screen.controller.canStart ? qsTr("The walk goes by shelf; every order has its tray.") : qsTr("Parcels that are planned are picked here, one tray an order.")
        Button {
            visible: screen.controller.canStart
            primary: true
            text: qsTr("Start a round")
            keyHint: qsTr("Enter")
            onClicked: screen.controller.startRound()
        }
        Button {
            visible: !screen.controller.canStart
            primary: true
            text: qsTr("To the plan")
            keyHint: "F2"
            onClicked: screen.goPlan()
        }
    }

    ColumnLayout {
        anchors.fill: parent
        visible: !screen.controller.empty
        spacing: 16

        ColumnLayout { // what to fetch now
            spacing: 4
            Layout.fillWidth: true
            Label {
                text: screen.controller.roundDone ? qsTr("The trays are full") : screen.controller.next
                font.pixelSize: Theme.now
                font.bold: true
                wrapMode: Text.Wrap
                maximumLineCount: 2
                Layout.fillWidth: true
            }
            Label {
                text: screen.controller.nextTrays
                font.pixelSize: Theme.title
                color: Theme.accent
                font.bold: true
                Layout.fillWidth: true
                visible: text !== ""
            }
        }
        Bar {
            share: screen.controller.done
            Layout.fillWidth: true
        }

        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            spacing: 24

            ListView {
                id: list
                Layout.fillWidth: true
                Layout.fillHeight: true
                focus: true
                activeFocusOnTab: true
                clip: true
                model: screen.controller.walk
                boundsBehavior: Flickable.StopAtBounds
                Accessible.role: Accessible.List
                Accessible.name: qsTr("The walk")
                delegate: TableRow {
                    id: row
                    required property int index
                    required property string shelf
                    required property string name
                    required property string code
                    required property int count
                    required property string trays
                    required property string personal
                    required property bool done
                    required property bool first
                    implicitHeight: personal ? 72 : 60
                    current: ListView.isCurrentItem
                    sentence: qsTr("Shelf %1: %2 %3, trays %4").arg(shelf).arg(count).arg(name).arg(trays) + (done ? qsTr(", picked") : "")
                    onPressed: {
                        list.currentIndex = index;
                        list.forceActiveFocus();
                    }
                    onOpened: screen.controller.tick(index)
                    RowLayout {
                        anchors.fill: parent
                        spacing: 16
                        Label {
                            text: row.first ? row.shelf : ""
                            quiet: row.done
                            font.bold: true
                            font.pixelSize: Theme.strong
                            Layout.preferredWidth: 72
                        }
                        Label {
                            text: row.done ? "✓" : row.count + " ×"
                            color: row.done ? Theme.accent : Theme.ink
                            font.bold: true
                            font.pixelSize: Theme.strong
                            horizontalAlignment: Text.AlignRight
                            Layout.preferredWidth: 48
                        }
                        ColumnLayout {
                            spacing: 2
                            Layout.fillWidth: true
                            Label {
                                text: row.name
                                quiet: row.done
                                font.pixelSize: Theme.strong
                                Layout.fillWidth: true
                            }
                            Label {
                                visible: text !== ""
                                text: row.personal
                                font.italic: true
                                color: Theme.ochreText
                                Layout.fillWidth: true
                            }
                        }
                        Label {
                            text: row.trays
                            quiet: row.done
                            font.bold: true
                            horizontalAlignment: Text.AlignRight
                        }
                    }
                }
            }

            ColumnLayout {
                Layout.preferredWidth: 340
                Layout.fillWidth: false
                Layout.fillHeight: true
                spacing: 0
                visible: screen.width > 900
                Label {
                    text: qsTr("Trays")
                    quiet: true
                    font.pixelSize: Theme.small
                }
                ListView {
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    clip: true
                    model: screen.controller.trays
                    boundsBehavior: Flickable.StopAtBounds
                    delegate: TableRow {
                        id: tray
                        required property int index
                        required property string name
                        required property string parcel
                        required property string buyer
                        required property string outer
                        required property int missing
                        sentence: qsTr("Tray %1, %2, %3 missing").arg(name).arg(buyer).arg(missing)
                        RowLayout {
                            anchors.fill: parent
                            spacing: 12
                            Label {
                                text: tray.name
                                font.bold: true
                                font.pixelSize: Theme.title
                                Layout.preferredWidth: 32
                            }
                            ColumnLayout {
                                spacing: 2
                                Layout.fillWidth: true
                                Label {
                                    text: tray.buyer
                                    Layout.fillWidth: true
                                }
                                Label {
                                    text: tray.parcel + " · " + tray.outer
                                    quiet: true
                                    font.pixelSize: Theme.small
                                    Layout.fillWidth: true
                                }
                            }
                            Label {
                                text: tray.missing === 0 ? "✓" : qsTr("%1 to go").arg(tray.missing)
                                color: tray.missing === 0 ? Theme.accent : Theme.secondInk
                                font.bold: tray.missing === 0
                            }
                        }
                    }
                }
            }
        }
    }

    ScrollMark {
        flickable: list
    }

    foot: Foot {
        quiet: qsTr("A scan of the good ticks one. “Not there” sets its orders aside, puts the stock right and gives the outers back.")
        Button {
            text: qsTr("Not there")
            keyHint: "N"
            enabled: !screen.controller.roundDone
            onClicked: screen.controller.notThere(screen.row(), false)
        }
        Button {
            text: qsTr("Broken")
            keyHint: "K"
            enabled: !screen.controller.roundDone
            onClicked: screen.controller.notThere(screen.row(), true)
        }
        Button {
            visible: !screen.controller.roundDone
            primary: true
            text: qsTr("In the tray")
            keyHint: qsTr("Space")
            onClicked: screen.controller.tick(screen.row())
        }
        Button {
            visible: screen.controller.roundDone
            primary: true
            text: qsTr("To the bench")
            keyHint: qsTr("Enter")
            onClicked: screen.controller.finishRound()
        }
    }
}
