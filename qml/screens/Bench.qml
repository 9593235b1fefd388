// Bench: one parcel, to be read from a metre away and worked with one hand.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property BenchController controller
    required property var goods

    signal goPick
    signal goHandOver

    headline: ""
    footed: false

    readonly property bool narrow: width < 1000
    property bool apart: false

    function done() { // what the scale says is typed where there is none on a cable
        if (controller.typesWeight) scale.takeFocus();
        else controller.done();
    }
    function overrule() {
        if (controller.verdictKind >= 2) why.ask(controller.verdict);
        else controller.itIsRight("");
    }

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier) || controller.empty) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_Space:
            done();
            break;
        case Qt.Key_Escape:
            if (controller.address !== "") controller.labelMissing(); // it is not copied
            else event.accepted = false;
            break;
        case Qt.Key_Backspace:
            controller.back();
            break;
        case Qt.Key_B:
            controller.boxGone();
            break;
        case Qt.Key_A:
            add.open();
            break;
        case Qt.Key_L:
            controller.labelMissing();
            break;
        case Qt.Key_P:
            controller.printAgain();
            break;
        case Qt.Key_H:
            controller.holdUntilMonday();
            break;
        case Qt.Key_S:
            controller.changesSeen();
            break;
        case Qt.Key_V:
            controller.later();
            break;
        case Qt.Key_W:
            scale.takeFocus();
            break;
        case Qt.Key_Y:
            overrule();
            break;
        case Qt.Key_T:
            apart = !apart;
            break;
        case Qt.Key_Up:
        case Qt.Key_Plus:
            controller.layer = controller.layer + 1;
            break;
        case Qt.Key_Down:
        case Qt.Key_Minus:
            controller.layer = controller.layer - 1;
            break;
        default:
            if (event.key >= Qt.Key_0 && event.key <= Qt.Key_9) scale.begin(event.text);
            else event.accepted = false;
        }
    }

    Empty {
        visible: screen.controller.empty
        title: screen.controller.canHandOver ? qsTr("All that was picked is packed") : qsTr("The bench is free")
        words: screen.controller.canHandOver ? qsTr("What is labelled waits for its courier.") : qsTr("Parcels whose tray is full are packed here, first those whose courier comes first.")
        Button {
            visible: screen.controller.canHandOver
            primary: true
            text: qsTr("To the hand-over")
            keyHint: "F5"
            onClicked: screen.goHandOver()
        }
        Button {
            visible: !screen.controller.canHandOver
            primary: true
            text: qsTr("To the shelves")
            keyHint: "F3"
            onClicked: screen.goPick()
        }
    }

    Item { // two columns and the scale; their widths are given, as words that wrap later keep the room of one line
        id: whole

        readonly property real gap: screen.tight ? 16 : 32
        readonly property real doing: scale.alone ? width : screen.tight ? width * 0.63 : Math.min(480, (width - gap) * 0.4)

        anchors.fill: parent
        anchors.topMargin: screen.tight ? 4 : 12
        visible: !screen.controller.empty

        ColumnLayout { // how it goes in
            visible: !scale.alone
            width: parent.width - whole.doing - whole.gap
            anchors.top: parent.top
            anchors.bottom: scale.top
            anchors.bottomMargin: scale.visible ? whole.gap / 4 + 4 : 0
            spacing: 8

            GridLayout {
                columns: screen.tight ? 1 : 3
                Layout.fillWidth: true
                columnSpacing: 8
                rowSpacing: 0
                Label {
                    text: screen.controller.parcel
                    font.bold: true
                    font.pixelSize: screen.tight ? Theme.body : Theme.strong
                }
                Label {
                    text: screen.controller.whose
                    quiet: true
                    font.pixelSize: screen.tight ? Theme.small : Theme.body
                    shortens: screen.tight // the tray stands first
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignBaseline
                }
                Label {
                    visible: !screen.tight
                    text: screen.controller.count
                    quiet: true
                    Layout.alignment: Qt.AlignBaseline
                }
            }
            BenchDrawing {
                controller: screen.controller
                apart: screen.apart
                narrow: screen.narrow
                bare: screen.tight
                Layout.fillWidth: true
                Layout.fillHeight: true
                onApartAsked: screen.apart = !screen.apart
            }
        }

        ColumnLayout { // what to do
            anchors.right: parent.right
            width: whole.doing
            anchors.top: parent.top
            anchors.bottom: scale.top
            anchors.bottomMargin: scale.visible ? whole.gap / 4 + 4 : 0
            spacing: screen.tight ? 4 : 8

            Label {
                visible: scale.alone
                text: [screen.controller.parcel, screen.controller.whose].filter(s => s !== "").join(" · ")
                quiet: true
                shortens: true
                font.pixelSize: Theme.small
                Layout.fillWidth: true
            }
            Label {
                visible: !screen.tight
                text: qsTr("Do this now")
                quiet: true
                font.pixelSize: Theme.small
            }
            Label {
                text: screen.controller.doNow
                font.pixelSize: screen.narrow && !screen.tight ? Theme.now * 0.75 : Theme.now
                font.bold: true
                wrapMode: Text.Wrap
                elide: Text.ElideNone // words that may be elided never ask for a second line
                fontSizeMode: screen.tight ? Text.Fit : Text.FixedSize
                minimumPixelSize: Theme.strong
                maximumLineCount: screen.tight ? 3 : 4
                lineHeight: 1.05
                Layout.fillWidth: true
                Layout.preferredHeight: !screen.tight ? implicitHeight : scale.alone ? 40 : 76
                Accessible.role: Accessible.Heading
            }
            Label {
                visible: text !== "" && !scale.alone
                text: screen.controller.doNowMore
                quiet: true
                wrapMode: Text.Wrap
                maximumLineCount: 2
                Layout.fillWidth: true
            }
            Label {
                visible: text !== "" && !scale.alone
                text: screen.controller.caution ? "! " + screen.controller.caution : ""
                color: Theme.ochreText
                font.bold: true
                wrapMode: Text.Wrap
                maximumLineCount: 2
                Layout.fillWidth: true
            }
            RowLayout {
                visible: screen.controller.wait !== "" && !scale.alone
                spacing: 16
                Layout.fillWidth: true
                Label {
                    text: screen.controller.wait ? "! " + screen.controller.wait : ""
                    color: Theme.ochreText
                    font.bold: true
                    wrapMode: Text.Wrap
                    maximumLineCount: 2
                    Layout.fillWidth: true
                }
                Button {
                    text: qsTr("Hold it")
                    keyHint: "H"
                    onClicked: screen.controller.holdUntilMonday()
                }
            }
            RowLayout {
                visible: note.text !== "" && !scale.alone
                spacing: 16
                Layout.fillWidth: true
                Label {
                    id: note
                    text: screen.controller.note ? "! " + screen.controller.note : ""
                    color: Theme.ochreText
                    font.bold: true
                    wrapMode: Text.Wrap
                    maximumLineCount: 2
                    Layout.fillWidth: true
                }
                Button {
                    visible: screen.controller.orderChanged
                    text: qsTr("It still serves")
                    keyHint: "S"
                    onClicked: screen.controller.changesSeen()
                }
            }
            Item { // whole rows of the list
                id: room
                visible: !scale.alone
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.minimumHeight: screen.tight ? 0 : 2 * steps.row

                BenchSteps {
                    id: steps
                    controller: screen.controller
                    width: parent.width
                    height: Math.floor(room.height / row) * row
                }
                ScrollMark {
                    flickable: steps
                }
            }
            RowLayout {
                Layout.fillWidth: true
                spacing: 8
                Button {
                    primary: true
                    size: Theme.benchTarget
                    text: screen.controller.typesWeight ? qsTr("Weigh") : screen.controller.doneWords
                    keyHint: qsTr("Space")
                    Layout.fillWidth: true
                    onClicked: screen.done()
                }
                Button {
                    visible: scale.alone && scale.doubted
                    size: Theme.benchTarget
                    stacked: true
                    text: scale.overruleWords
                    keyHint: "Y"
                    onClicked: screen.overrule()
                }
                Button {
                    size: Theme.benchTarget
                    stacked: true
                    text: qsTr("Box gone")
                    keyHint: "B"
                    onClicked: screen.controller.boxGone()
                }
                Button {
                    size: Theme.benchTarget
                    stacked: true
                    text: qsTr("Add")
                    keyHint: "A"
                    onClicked: add.open()
                }
            }
            RowLayout {
                visible: !scale.alone
                Layout.fillWidth: true
                spacing: 0
                Button {
                    flat: true
                    stacked: screen.tight
                    size: Theme.target
                    text: qsTr("Back")
                    keyHint: "⌫"
                    onClicked: screen.controller.back()
                }
                Button {
                    flat: true
                    stacked: screen.tight
                    text: qsTr("Later")
                    keyHint: "V"
                    onClicked: screen.controller.later()
                }
                Button {
                    flat: true
                    stacked: screen.tight
                    text: qsTr("Print again")
                    keyHint: "P"
                    onClicked: screen.controller.printAgain()
                }
                Button {
                    flat: true
                    stacked: screen.tight
                    text: qsTr("No label")
                    keyHint: "L"
                    onClicked: screen.controller.labelMissing()
                }
            }
        }

        ScaleStrip {
            id: scale

            readonly property bool alone: screen.tight && screen.controller.weighing

            onOverrule: screen.overrule()

            visible: !screen.tight || alone
            anchors.bottom: parent.bottom
            width: parent.width
            height: visible ? implicitHeight : 0
            controller: screen.controller
            onAway: steps.forceActiveFocus()
        }
    }

    Rectangle { // the printer is out: the address large, to copy by hand
        anchors.fill: parent
        visible: screen.controller.address !== ""
        color: Theme.paper
        z: 5
        Accessible.role: Accessible.Dialog
        Accessible.name: qsTr("Copy this address by hand")
        Column {
            anchors.centerIn: parent
            width: parent.width - 64
            spacing: screen.tight ? 8 : 24
            Label {
                text: qsTr("Copy this address by hand")
                quiet: true
                font.pixelSize: Theme.strong
            }
            Label {
                text: screen.controller.address
                font.pixelSize: screen.tight ? Theme.title : Theme.now
                font.bold: true
                lineHeight: 1.15
                width: parent.width
                wrapMode: Text.Wrap
            }
            Row {
                spacing: 16
                Button {
                    primary: true
                    size: Theme.benchTarget
                    text: qsTr("It stands on the parcel")
                    keyHint: qsTr("Space")
                    onClicked: screen.controller.done()
                }
                Button {
                    flat: true
                    size: Theme.benchTarget
                    text: screen.narrow ? qsTr("Back") : qsTr("Back, it is printed after all")
                    keyHint: qsTr("Esc")
                    onClicked: screen.controller.labelMissing()
                }
            }
        }
    }
    over: [
        OverrulePanel {
            id: why
            excuses: screen.controller.excuses
            onDecided: words => screen.controller.itIsRight(words)
            onClosed: steps.forceActiveFocus()
        },
        AddPanel {
            id: add
            controller: screen.controller
            goods: screen.goods
            onClosed: steps.forceActiveFocus()
        }
    ]
}
