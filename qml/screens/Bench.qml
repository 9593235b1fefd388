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
    least: tight && controller.weighing && !controller.empty ? 420 : 0

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

    GridLayout {
        anchors.fill: parent
        anchors.topMargin: screen.tight ? 4 : 12
        visible: !screen.controller.empty
        columns: 2
        columnSpacing: 32
        rowSpacing: 12

        ColumnLayout { // how it goes in
            visible: !screen.tight
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 3
            spacing: 8

            RowLayout {
                Layout.fillWidth: true
                spacing: 8
                Label {
                    text: screen.controller.parcel
                    font.bold: true
                    font.pixelSize: Theme.strong
                }
                Label {
                    text: screen.controller.whose
                    quiet: true
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignBaseline
                }
                Label {
                    text: screen.controller.count
                    quiet: true
                    Layout.alignment: Qt.AlignBaseline
                }
            }
            Sheet {
                Layout.fillWidth: true
                Layout.fillHeight: true

                ParcelView {
                    anchors.fill: parent
                    anchors.margins: 16
                    anchors.topMargin: 72
                    anchors.bottomMargin: 28 + fillerWords.implicitHeight
                    scene: screen.controller.scene
                    upToLayer: screen.controller.layer
                    apart: screen.apart && screen.controller.comesApart ? 1 : 0
                    Behavior on apart { // where each layer went
                        NumberAnimation {
                            duration: Theme.motion
                        }
                    }
                    highlight: screen.controller.highlight
                    sheet: Theme.sheet
                    paper: Theme.paper
                    ink: Theme.ink
                    secondInk: Theme.secondInk
                    hairline: Theme.hairline
                    accent: Theme.accent
                    ochre: Theme.ochre
                    brick: Theme.brick
                    dark: Theme.dark
                    family: Theme.family
                    Accessible.role: Accessible.Graphic
                    Accessible.name: sentence
                }
                Column {
                    x: 24
                    y: 16
                    spacing: 4
                    Row {
                        spacing: 12
                        Label {
                            id: outerName
                            text: screen.controller.outer
                            font.bold: true
                            font.pixelSize: Theme.strong
                        }
                        Label {
                            anchors.baseline: outerName.baseline
                            text: screen.controller.outerSize
                            quiet: true
                        }
                    }
                    Label {
                        text: screen.controller.proof
                        color: Theme.accent
                        font.pixelSize: Theme.small
                        visible: text !== ""
                    }
                }
                Column {
                    anchors.right: parent.right
                    anchors.rightMargin: 24
                    y: 12
                    spacing: -8
                    visible: screen.controller.layers > 1
                    Button {
                        visible: screen.controller.comesApart
                        anchors.right: parent.right
                        flat: true
                        text: screen.apart ? qsTr("Together") : qsTr("Take apart")
                        keyHint: "T"
                        onClicked: screen.apart = !screen.apart
                    }
                    Label {
                        visible: !screen.narrow // the slider says it
                        anchors.right: parent.right
                        text: screen.controller.layerWords
                        quiet: true
                    }
                    Slider {
                        label: screen.controller.layerWords
                        from: 1
                        to: Math.max(1, screen.controller.layers)
                        value: screen.controller.layer
                        onMoved: screen.controller.layer = value
                    }
                }
                Label {
                    id: fillerWords
                    anchors.left: parent.left
                    anchors.right: parent.right
                    anchors.bottom: parent.bottom
                    anchors.margins: 24
                    anchors.bottomMargin: 16
                    text: screen.controller.filler
                    quiet: true
                    wrapMode: Text.Wrap
                    maximumLineCount: 2
                    verticalAlignment: Text.AlignBottom
                }
            }
        }

        ColumnLayout { // what to do
            Layout.fillHeight: true
            Layout.preferredWidth: 2
            Layout.fillWidth: true
            Layout.minimumWidth: 300
            Layout.maximumWidth: screen.tight ? screen.width : 480
            spacing: 8

            Label {
                visible: !screen.tight
                text: qsTr("Do this now")
                quiet: true
                font.pixelSize: Theme.small
            }
            Label {
                text: screen.controller.doNow
                font.pixelSize: Theme.now
                font.bold: true
                wrapMode: Text.Wrap
                fontSizeMode: Text.Fit
                minimumPixelSize: screen.tight ? 20 : screen.narrow ? Theme.title : Theme.now
                maximumLineCount: screen.tight ? 2 : 3
                Layout.maximumHeight: screen.tight ? 76 : -1
                lineHeight: 1.05
                Layout.fillWidth: true
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
            ListView {
                id: steps
                visible: !scale.alone
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.minimumHeight: screen.tight ? 44 : 88

                function keepInView() { // the step in hand whole, and the next one
                    positionViewAtIndex(Math.max(0, currentIndex - 1), ListView.Contain);
                    positionViewAtIndex(Math.min(count - 1, currentIndex + 1), ListView.Contain);
                    positionViewAtIndex(currentIndex, ListView.Contain);
                }
                onCurrentIndexChanged: Qt.callLater(keepInView)
                onHeightChanged: Qt.callLater(keepInView)
                onCountChanged: Qt.callLater(keepInView)

                clip: true
                model: screen.controller.steps
                boundsBehavior: Flickable.StopAtBounds
                currentIndex: screen.controller.currentStep
                highlightFollowsCurrentItem: false
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Steps")
                delegate: Rectangle {
                    id: step
                    required property int index
                    required property string mark
                    required property string words
                    required property bool done
                    required property bool current
                    width: steps.width
                    height: 44
                    radius: Theme.radius
                    color: current ? Theme.accentTint : "transparent"
                    Accessible.role: Accessible.ListItem
                    Accessible.name: words + (done ? qsTr(", done") : current ? qsTr(", now") : "")

                    Rectangle {
                        x: 8
                        anchors.verticalCenter: parent.verticalCenter
                        width: Math.max(24, number.implicitWidth + 10)
                        height: 24
                        radius: 12
                        color: step.done ? Theme.accent : Theme.sheet
                        border.width: step.current ? 2 : 1
                        border.color: step.done || step.current ? Theme.accent : Theme.secondInk
                        Text {
                            id: number
                            anchors.centerIn: parent
                            text: step.done ? "✓" : step.mark === "·" ? "" : step.mark
                            color: step.done ? Theme.accentInk : Theme.ink
                            font.family: Theme.family
                            font.pixelSize: Theme.small
                            font.bold: true
                        }
                    }
                    Label {
                        anchors.verticalCenter: parent.verticalCenter
                        x: 48
                        width: parent.width - 56
                        text: step.words
                        wrapMode: Text.Wrap
                        maximumLineCount: 2
                        lineHeight: 0.95
                        font.bold: step.current
                        quiet: step.done
                        Accessible.ignored: true
                    }
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
                    size: Theme.target
                    text: qsTr("Back")
                    keyHint: "⌫"
                    onClicked: screen.controller.back()
                }
                Button {
                    flat: true
                    text: qsTr("Later")
                    keyHint: "V"
                    onClicked: screen.controller.later()
                }
                Button {
                    flat: true
                    text: qsTr("Print again")
                    keyHint: "P"
                    onClicked: screen.controller.printAgain()
                }
                Button {
                    flat: true
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
            Layout.columnSpan: 2
            Layout.fillWidth: true
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
