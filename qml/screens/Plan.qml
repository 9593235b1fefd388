// Plan: every parcel's outer beside the ones it beat, and what the day comes to.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property PlanController controller

    signal goArrivals

    headline: controller.empty && !controller.working ? "" : controller.headline
    aside: ""
    footed: !controller.empty

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_P:
            controller.nextPreference();
            break;
        case Qt.Key_R:
            controller.plan();
            break;
        case Qt.Key_L:
            controller.toggleLock(list.currentIndex);
            break;
        case Qt.Key_O:
            choice.ask(list.currentIndex);
            break;
        case Qt.Key_Escape:
            controller.cancel();
            break;
        case Qt.Key_Return:
        case Qt.Key_Enter:
            if (controller.working) break;
            if (controller.stale) controller.plan();
            else controller.printAndPick();
            break;
        default:
            event.accepted = false;
        }
    }

    headRight: [
        SortButton {
            visible: screen.controller.rows.total > 1 && screen.width > 1000
            rows: screen.controller.rows
        },
        FilterField {
            label: qsTr("Filter the parcels")
            rows: screen.controller.rows
            list: list
            roomy: screen.controller.rows.total > 5 && screen.width > 1000
        },
        Button {
            visible: !screen.controller.empty
            flat: true
            text: screen.controller.preference
            keyHint: "P"
            Accessible.description: qsTr("P changes what is preferred")
            onClicked: screen.controller.nextPreference()
        },
        Button {
            visible: !screen.controller.empty && !screen.controller.stale
            text: qsTr("Plan again")
            keyHint: "R"
            enabled: !screen.controller.working
            onClicked: screen.controller.plan()
        }
    ]

    Empty {
        visible: screen.controller.empty && !screen.controller.working
        title: screen.controller.stale ? screen.controller.headline : qsTr("Nothing to plan")
        words: screen.controller.stale ? qsTr("Each gets the smallest outer that holds it, the filler, the weight and the postage.") : qsTr("Orders that are checked in Arrivals are planned here, all together.")
        Button {
            visible: screen.controller.stale
            primary: true
            text: qsTr("Plan the day")
            keyHint: qsTr("Enter")
            onClicked: screen.controller.plan()
        }
        Button {
            visible: !screen.controller.stale
            primary: true
            text: qsTr("To the arrivals")
            keyHint: "F1"
            onClicked: screen.goArrivals()
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 8
        visible: !screen.controller.empty || screen.controller.working

        RowLayout { // long work: how far, and the way to stop it
            visible: screen.controller.working
            Layout.fillWidth: true
            spacing: 16
            Label {
                text: screen.controller.workWords
                font.bold: true
            }
            Bar {
                share: screen.controller.progress
                Layout.fillWidth: true
                Accessible.ignored: false
                Accessible.name: screen.controller.workWords
            }
            Button {
                text: qsTr("Stop")
                keyHint: qsTr("Esc")
                onClicked: screen.controller.cancel()
            }
        }

        ListView { // orders that cannot go come first
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(contentHeight, screen.tight ? 32 : 3 * 48)
            visible: count > 0
            clip: true
            model: screen.controller.stuck
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Orders that cannot go")
            delegate: TableRow {
                id: stuckRow
                required property string number
                required property string buyer
                required property string why
                implicitHeight: screen.tight ? 32 : 48
                sentence: number + ", " + buyer + ": " + why
                Row {
                    anchors.verticalCenter: parent.verticalCenter
                    spacing: 12
                    Label {
                        text: stuckRow.number
                        font.bold: true
                        font.pixelSize: Theme.strong
                    }
                    Label {
                        anchors.verticalCenter: parent.verticalCenter
                        text: stuckRow.buyer
                    }
                    Label {
                        anchors.verticalCenter: parent.verticalCenter
                        text: "× " + stuckRow.why
                        color: Theme.brick
                        font.bold: true
                    }
                }
            }
        }

        MarkList {
            id: list
            Layout.fillWidth: true
            Layout.fillHeight: true
            spacing: 8
            rows: screen.controller.rows
            onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
            highlightMoveDuration: Theme.motion
            opacity: screen.controller.working ? 0.5 : 1
            Accessible.name: qsTr("Parcels")

            delegate: PlanRow {
                width: list.width - 14
                current: ListView.isCurrentItem && list.activeFocus
                onPressed: {
                    list.currentIndex = index;
                    list.forceActiveFocus();
                }
                onOpened: choice.ask(index)
                onLockAsked: screen.controller.toggleLock(index)
                onMarkAsked: screen.controller.rows.mark(index)
            }
            ScrollMark {
                flickable: list
            }
        }
    }

    foot: Foot {
        strong: screen.controller.rows.marked > 0 ? qsTr("%1 marked: L keeps or lets go, Esc unmarks").arg(screen.controller.rows.marked) : screen.controller.totals
        quiet: screen.controller.savings
        warning: screen.controller.shortages
        Button {
            visible: !screen.controller.empty
            text: qsTr("Another outer")
            keyHint: "O"
            enabled: list.count > 0
            onClicked: choice.ask(list.currentIndex)
        }
        Button {
            visible: screen.controller.stale
            primary: true
            enabled: !screen.controller.working
            text: qsTr("Plan the day")
            keyHint: qsTr("Enter")
            onClicked: screen.controller.plan()
        }
        Button {
            visible: !screen.controller.stale
            primary: true
            enabled: list.count > 0 && !screen.controller.working
            text: qsTr("Print and pick")
            keyHint: qsTr("Enter")
            onClicked: screen.controller.printAndPick()
        }
    }

    over: [
        OuterChoice {
            id: choice
            controller: screen.controller
            onClosed: list.forceActiveFocus()
        }
    ]
}
