// Hand-over: what each courier takes, and the numbers they travel by.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property HandOverController controller

    signal goBench

    headline: controller.headline
    aside: controller.summary
    footed: false
    least: controller.empty ? 0 : 440

    function details() {
        if (list.currentIndex < 0) return;
        panel.show(controller.parcels.value(list.currentIndex, "parcel"));
    }
    function carrierInHand(): string {
        return controller.parcels.value(Math.max(0, list.currentIndex), "carrier") || "";
    }
    function pasteNumbers() {
        const shown = [];
        for (let row = 0; row < list.count; ++row) {
            if (!controller.parcels.value(row, "tracking")) shown.push(controller.parcels.value(row, "number"));
        }
        controller.dispatch.pasteTracking(shown);
    }

    function askBack() {
        const row = list.currentIndex;
        if (row >= 0 && controller.mayComeBack(row)) back.ask(row, controller.parcels.value(row, "number"));
    }

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        event.accepted = true;
        if (event.key >= Qt.Key_1 && event.key <= Qt.Key_9) {
            controller.courierIsHere(event.key - Qt.Key_1);
        } else if (event.key === Qt.Key_D) {
            screen.details();
        } else if (event.key === Qt.Key_S) {
            controller.dispatch.writeSendFile(screen.carrierInHand());
        } else if (event.key === Qt.Key_X) {
            controller.dispatch.writeShopFiles();
        } else if (event.key === Qt.Key_M) {
            controller.dispatch.writeMessages();
        } else if (event.key === Qt.Key_K) {
            numbers.open();
        } else if (event.key === Qt.Key_V) {
            screen.pasteNumbers();
        } else if (event.key === Qt.Key_C) {
            screen.askBack();
        } else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || event.key === Qt.Key_T) {
            if (list.currentItem) list.currentItem.typeTracking();
        } else {
            event.accepted = false;
        }
    }

    Empty {
        visible: screen.controller.empty
        title: qsTr("Nothing is labelled yet")
        words: qsTr("A parcel comes here when its label sits on it. When the courier stands in the door, one key closes the list.")
        Button {
            primary: true
            text: qsTr("To the bench")
            keyHint: "F4"
            onClicked: screen.goBench()
        }
    }

    ScrollMark {
        flickable: list
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.bottomMargin: 16
        visible: !screen.controller.empty
        spacing: 16

        ListView {
            id: couriers
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(contentHeight, screen.height / (screen.tight ? 2.2 : 1.8))
            clip: contentHeight > height
            spacing: 16
            model: screen.controller.carriers
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Couriers")
            ScrollMark {
                flickable: couriers
            }
            delegate: Sheet {
                id: carrierSheet
                required property int index
                required property string carrier
                required property string collection
                required property string remaining
                required property int labelled
                required property string behindWords
                required property string closed
                width: couriers.width - (couriers.clip ? 14 : 0)
                implicitHeight: Math.max(96, carrierWords.implicitHeight + 32)
                RowLayout {
                    anchors.fill: parent
                    anchors.leftMargin: 24
                    anchors.rightMargin: 16
                    spacing: 24
                    ColumnLayout {
                        id: carrierWords
                        spacing: 4
                        Layout.fillWidth: true
                        GridLayout {
                            columns: screen.tight ? 1 : 3
                            columnSpacing: 12
                            rowSpacing: 0
                            Label {
                                text: carrierSheet.carrier
                                font.bold: true
                                font.pixelSize: Theme.title
                            }
                            Label {
                                visible: !screen.tight
                                text: carrierSheet.collection
                                quiet: true
                                Layout.alignment: Qt.AlignBaseline
                            }
                            Label {
                                text: carrierSheet.remaining
                                font.bold: true
                                Layout.fillWidth: true
                                color: Theme.ochreText
                                Layout.alignment: Qt.AlignBaseline
                            }
                        }
                        Label {
                            text: carrierSheet.behindWords ? "! " + carrierSheet.behindWords : ""
                            visible: text !== ""
                            color: Theme.ochreText
                            font.bold: true
                            wrapMode: Text.Wrap
                            Layout.fillWidth: true
                        }
                        Label {
                            text: carrierSheet.closed
                            visible: text !== ""
                            quiet: true
                            Layout.fillWidth: true
                        }
                    }
                    ColumnLayout {
                        spacing: 0
                        Layout.fillWidth: false
                        Layout.preferredWidth: 72
                        Label {
                            text: carrierSheet.labelled
                            font.bold: true
                            font.pixelSize: Theme.now
                            Layout.alignment: Qt.AlignHCenter
                        }
                        Label {
                            text: qsTr("labelled")
                            quiet: true
                            font.pixelSize: Theme.small
                            Layout.alignment: Qt.AlignHCenter
                        }
                    }
                    Button {
                        size: Theme.benchTarget
                        primary: carrierSheet.labelled > 0
                        enabled: carrierSheet.labelled > 0
                        text: qsTr("Courier is here")
                        keyHint: (carrierSheet.index + 1).toString()
                        Layout.preferredWidth: screen.tight ? implicitWidth : 216
                        Accessible.name: qsTr("%1: courier is here").arg(carrierSheet.carrier)
                        onClicked: screen.controller.courierIsHere(carrierSheet.index)
                    }
                }
            }
        }

        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: false
            spacing: 8
            Label {
                text: qsTr("Parcels")
                font.bold: true
                font.pixelSize: Theme.strong
                Layout.fillWidth: true
            }
            SortButton {
                visible: screen.controller.parcels.total > 1 && !screen.tight
                rows: screen.controller.parcels
            }
            FilterField {
                label: qsTr("Filter the parcels")
                rows: screen.controller.parcels
                list: list
            }
            Button {
                text: qsTr("Tracking number")
                keyHint: "T"
                enabled: list.currentIndex >= 0
                onClicked: if (list.currentItem) list.currentItem.typeTracking()
            }
            Button {
                text: qsTr("Came back")
                keyHint: "C"
                enabled: list.currentIndex >= 0
                onClicked: screen.askBack()
            }
        }
        Flow { // files of the day, and one parcel in detail
            Layout.fillWidth: true
            spacing: 8
            Button {
                text: qsTr("Postage, customs, message")
                keyHint: "D"
                enabled: list.currentIndex >= 0
                onClicked: screen.details()
            }
            Button {
                flat: true
                text: qsTr("Send file")
                keyHint: "S"
                onClicked: screen.controller.dispatch.writeSendFile(screen.carrierInHand())
            }
            Button {
                flat: true
                text: qsTr("Numbers from a file")
                keyHint: "K"
                onClicked: numbers.open()
            }
            Button {
                flat: true
                text: qsTr("Paste numbers")
                keyHint: "V"
                onClicked: screen.pasteNumbers()
            }
            Button {
                flat: true
                text: qsTr("Files for the shops")
                keyHint: "X"
                onClicked: screen.controller.dispatch.writeShopFiles()
            }
            Button {
                flat: true
                text: qsTr("Messages")
                keyHint: "M"
                onClicked: screen.controller.dispatch.writeMessages()
            }
        }
        ListView {
            id: list
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: 120
            focus: true
            activeFocusOnTab: true
            clip: true
            model: screen.controller.parcels
            onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Parcels")
            delegate: TableRow {
                id: row
                required property int index
                required property string number
                required property string buyer
                required property string place
                required property string carrier
                required property string service
                required property string weight
                required property string postage
                required property string tracking
                required property string handedOver

                function typeTracking() {
                    entry.visible = true;
                    entry.text = tracking;
                    entry.forceActiveFocus();
                }

                current: ListView.isCurrentItem
                sentence: [number, buyer, place, service, tracking, handedOver].filter(words => words !== "").join(", ")
                onPressed: {
                    list.currentIndex = index;
                    list.forceActiveFocus();
                }
                onOpened: typeTracking()
                RowLayout {
                    anchors.fill: parent
                    spacing: 16
                    Label {
                        text: row.number
                        font.bold: true
                        Layout.preferredWidth: 90
                    }
                    Label {
                        text: row.place ? row.buyer + ", " + row.place : row.buyer
                        shortens: true
                        Layout.fillWidth: true
                        Layout.preferredWidth: 3
                    }
                    Label {
                        visible: !screen.tight
                        text: row.service
                        quiet: true
                        Layout.fillWidth: true
                        Layout.preferredWidth: 2
                    }
                    Label {
                        visible: !screen.tight
                        text: row.weight
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: 72
                    }
                    Label {
                        visible: !screen.tight
                        text: row.postage
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: 64
                    }
                    Label {
                        text: entry.visible ? "" : row.tracking || "–"
                        Layout.preferredWidth: 170
                        Layout.leftMargin: 16
                        TextField {
                            id: entry
                            visible: false
                            anchors.verticalCenter: parent.verticalCenter
                            width: 170
                            label: qsTr("Tracking number of %1").arg(row.number)
                            onAccepted: {
                                const wrong = screen.controller.setTracking(row.index, text);
                                fault = wrong !== "";
                                if (fault) return;
                                visible = false;
                                list.forceActiveFocus();
                            }
                            Keys.onEscapePressed: {
                                visible = false;
                                list.forceActiveFocus();
                            }
                        }
                    }
                    Label {
                        visible: !screen.tight
                        text: row.handedOver
                        quiet: true
                        horizontalAlignment: Text.AlignRight
                        Layout.preferredWidth: 130
                    }
                }
            }
        }
    }
    over: [
        DispatchPanel {
            id: panel
            controller: screen.controller.dispatch
            onClosed: list.forceActiveFocus()
        },
        BackPanel {
            id: back
            onDecided: (parcel, why, goods, again) => screen.controller.cameBack(parcel, why, goods, again)
            onClosed: list.forceActiveFocus()
        }
    ]
    FileDialog {
        id: numbers
        title: qsTr("A carrier's file with tracking numbers")
        nameFilters: [qsTr("Tables (*.csv *.txt *.tsv)"), qsTr("All files (*)")]
        onAccepted: screen.controller.dispatch.takeTracking(selectedFile)
    }
}
