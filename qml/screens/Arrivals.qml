// Arrivals: what came in, problems first, each mended where it stands.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property ArrivalsController controller
    required property FirstSteps firstSteps
    drafting: hand.laid
    readonly property bool beginning: firstSteps.needed && controller.empty && !controller.matching

    signal goPlan
    signal began(int step, bool file)

    function begin(step: int, file: bool) {
        if (step === FirstSteps.Order && file) askFile();
        else if (step === FirstSteps.Order) hand.open();
        else if (step === FirstSteps.Plan) goPlan();
        else began(step, file);
    }

    readonly property bool wide: width > 1000
    readonly property int marked: controller.matching ? 0 : controller.orders.marked

    readonly property bool typingAlone: tight && detail.typing // what is typed has the small window to itself

    headline: typingAlone ? "" : controller.matching ? qsTr("Which column is what?") : controller.headline
    aside: controller.matching ? controller.fileFacts : ""
    footed: (!controller.empty || controller.matching) && !typingAlone

    function lookAt(row: int) {
        list.currentIndex = row;
        const order = screen.controller.orders.value(row, "order");
        if (order !== undefined) screen.controller.look(order);
    }
    function askAside() {
        if (controller.current) aside.ask(controller.current, marked > 1 ? qsTr("%1 orders").arg(marked) : detail.heading);
    }
    function askFile() {
        files.open();
    }

    Keys.onPressed: event => {
        const step = event.key - Qt.Key_1;
        if (beginning && step >= 0 && step < firstSteps.steps.count && !(event.modifiers & Qt.ControlModifier)) {
            event.accepted = true;
            first.choose(step, (event.modifiers & Qt.AltModifier) !== 0);
            return;
        }
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier) || controller.matching) return;
        event.accepted = true;
        switch (event.key) {
        case Qt.Key_O:
            screen.askFile();
            break;
        case Qt.Key_N:
            hand.open();
            break;
        case Qt.Key_D:
            if (beginning) firstSteps.openDemo();
            break;
        case Qt.Key_P:
            if (beginning) firstSteps.putAway();
            else if (controller.current) controller.isPaid(controller.current);
            break;
        case Qt.Key_R:
            if (controller.arrivedReady > 0) controller.checkAll();
            break;
        case Qt.Key_Return:
        case Qt.Key_Enter:
            if (controller.current) controller.check(controller.current);
            break;
        case Qt.Key_S:
            askAside();
            break;
        case Qt.Key_X:
            if (controller.current) controller.callOff(controller.current);
            break;
        case Qt.Key_J:
            if (controller.current) controller.join(controller.current);
            break;
        case Qt.Key_B:
            if (controller.current) controller.takeBack(controller.current);
            break;
        case Qt.Key_M:
            if (!detail.match()) event.accepted = false;
            break;
        case Qt.Key_E:
            if (controller.current) detail.mend();
            break;
        default:
            event.accepted = false;
        }
    }

    headRight: [
        SortButton {
            visible: screen.controller.orders.total > 1 && !screen.controller.matching && screen.wide
            rows: screen.controller.orders
        },
        FilterField {
            label: qsTr("Filter the orders")
            rows: screen.controller.orders
            list: list
            roomy: screen.controller.orders.total > 1 && !screen.controller.matching && screen.wide
        },
        Button {
            visible: !screen.controller.empty && !screen.controller.matching
            text: qsTr("Enter by hand")
            keyHint: "N"
            onClicked: hand.open()
        },
        Button {
            visible: !screen.controller.empty && !screen.controller.matching
            text: qsTr("Take in a file")
            keyHint: "O"
            onClicked: screen.askFile()
        }
    ]

    Empty {
        visible: screen.controller.empty && !screen.controller.matching && !screen.beginning
        title: qsTr("No orders have arrived yet")
        words: qsTr("Save the orders from your shop as a file (CSV) and take it in here, or drop it on this window. Orders by mail or from a fair are entered by hand.")
        Button {
            primary: true
            text: qsTr("Take in a file")
            keyHint: "O"
            onClicked: screen.askFile()
        }
        Button {
            text: qsTr("Enter by hand")
            keyHint: "N"
            onClicked: hand.open()
        }
    }

    Beginning {
        id: first
        anchors.fill: parent
        visible: screen.beginning
        controller: screen.firstSteps
        onChosen: (step, second) => screen.begin(step, second)
    }

    RowLayout {
        anchors.fill: parent
        visible: !screen.controller.empty && !screen.controller.matching
        spacing: 24

        MarkList {
            id: list
            visible: !screen.typingAlone
            Layout.fillHeight: true
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            rows: screen.controller.orders
            inHand: () => rows.rowOf(screen.controller.current)
            Accessible.name: qsTr("Orders")
            piles: "pile"
            pileWords: pile => screen.controller.pileWords(Number(pile))
            pileHeight: screen.tight ? 28 : 40
            onCurrentIndexChanged: if (activeFocus) screen.lookAt(currentIndex)
            onCountChanged: if (count > 0 && !screen.controller.current) screen.lookAt(0)
            Component.onCompleted: if (count > 0 && !screen.controller.current) screen.lookAt(0)

            delegate: TableRow {
                id: row

                required property int index
                required property var order
                required property string number
                required property string shop
                required property string buyer
                required property string place
                required property string contents
                required property string problem
                required property string promised
                required property bool blocks
                required property bool isAside
                required property bool ready
                required property bool planned
                required property bool isMarked

                implicitHeight: problem ? 84 : 64
                current: screen.controller.current === order
                sentence: [isMarked ? qsTr("marked") : "", number, buyer, place, contents, problem].filter(words => words !== "").join(", ")
                onPressed: {
                    list.forceActiveFocus();
                    screen.lookAt(index);
                }
                onHeld: screen.controller.orders.mark(index)

                MarkBox {
                    id: box
                    visible: screen.wide || row.isMarked
                    anchors.verticalCenter: parent.verticalCenter
                    marked: row.isMarked
                    Accessible.name: qsTr("Mark %1").arg(row.number)
                    onClicked: screen.controller.orders.mark(row.index)
                }
                Column {
                    anchors.verticalCenter: parent.verticalCenter
                    x: box.visible ? 40 : 0
                    width: parent.width - x - 220
                    spacing: 2
                    Row {
                        width: parent.width
                        spacing: 8
                        Label {
                            id: numberText
                            text: row.number
                            font.bold: true
                            font.pixelSize: Theme.strong
                        }
                        Label {
                            anchors.baseline: numberText.baseline
                            width: parent.width - numberText.width - 8
                            text: row.place ? row.buyer + ", " + row.place : row.buyer
                            shortens: true // the order beside it says it whole
                        }
                    }
                    Label {
                        width: parent.width
                        text: row.contents
                        shortens: true
                        quiet: true
                        font.pixelSize: Theme.small
                    }
                    Label {
                        width: parent.width
                        visible: text !== ""
                        text: row.problem ? (row.blocks ? "× " : "! ") + row.problem : ""
                        color: row.blocks ? Theme.brick : Theme.ochreText
                        font.bold: true
                        font.pixelSize: Theme.small
                    }
                }
                Column {
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    spacing: 2
                    Row {
                        anchors.right: parent.right
                        spacing: 12
                        Label {
                            text: row.planned ? qsTr("✓ planned") : row.ready ? qsTr("✓ ready") : row.isAside ? qsTr("set aside") : ""
                            color: row.ready ? Theme.accent : Theme.secondInk
                            font.pixelSize: Theme.small
                            font.bold: row.ready
                        }
                        Label {
                            text: row.promised
                            quiet: true
                            font.pixelSize: Theme.small
                        }
                    }
                    Label {
                        anchors.right: parent.right
                        text: row.shop
                        quiet: true
                        font.pixelSize: Theme.small
                    }
                }
            }
            ScrollMark {
                flickable: list
            }
        }
        OrderDetail {
            id: detail
            visible: !screen.tight || typing
            Layout.fillHeight: true
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Layout.minimumWidth: 300
            Layout.maximumWidth: 520
            Layout.bottomMargin: 16
            controller: screen.controller
            onAsideAsked: screen.askAside()
            onTyped: list.forceActiveFocus()
        }
    }

    ColumnMatch {
        anchors.fill: parent
        visible: screen.controller.matching
        controller: screen.controller
    }

    foot: Foot {
        strong: screen.marked > 0 ? qsTr("%1 marked").arg(screen.marked) : screen.controller.matching ? screen.controller.stillMissing || qsTr("All that is needed is there") : screen.controller.summary
        quiet: screen.marked > 0 ? qsTr("Enter checks them, S sets them aside, X calls them off, B takes them back, Esc unmarks them.") : screen.controller.matching ? qsTr("Remembered for this shop: next time its files go straight in.") : screen.controller.outcome
        Button {
            visible: screen.controller.matching
            text: qsTr("Leave the file")
            keyHint: qsTr("Esc")
            onClicked: screen.controller.leaveFile()
        }
        Button {
            visible: screen.controller.matching
            primary: true
            enabled: screen.controller.stillMissing === ""
            text: qsTr("Take it in")
            keyHint: qsTr("Ctrl Enter")
            onClicked: screen.controller.takeIn()
        }
        Button {
            visible: screen.marked > 0
            primary: true
            text: qsTr("Check the marked")
            keyHint: qsTr("Enter")
            onClicked: screen.controller.check(screen.controller.current)
        }
        Button {
            visible: !screen.controller.matching && screen.marked === 0 && screen.controller.arrivedReady > 0
            primary: true
            text: qsTr("%n are fine: check them", "", screen.controller.arrivedReady)
            keyHint: "R"
            onClicked: screen.controller.checkAll()
        }
        Button {
            visible: !screen.controller.matching && screen.marked === 0 && screen.controller.arrivedReady === 0
            primary: true
            text: screen.controller.ready > 0 ? qsTr("Plan %n orders", "", screen.controller.ready) : qsTr("To the plan")
            keyHint: "F2"
            onClicked: screen.goPlan()
        }
    }

    DropArea {
        anchors.fill: parent
        onDropped: drop => {
            if (drop.hasUrls) screen.controller.openFile(drop.urls[0]);
        }
    }
    FileDialog {
        id: files
        title: qsTr("Orders to take in")
        nameFilters: [qsTr("Tables (*.csv *.txt *.tsv)"), qsTr("All files (*)")]
        onAccepted: screen.controller.openFile(selectedFile)
    }
    Shortcut {
        enabled: screen.visible && screen.controller.matching
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        onActivated: if (screen.controller.stillMissing === "") screen.controller.takeIn()
    }
    Shortcut {
        enabled: screen.visible && screen.controller.matching
        sequence: "Escape"
        onActivated: screen.controller.leaveFile()
    }
    over: [
        AsidePanel {
            id: aside
            keeps: (order, reason, until) => screen.controller.setAside(order, reason, until)
            onClosed: list.forceActiveFocus()
        },
        HandOrder {
            id: hand
            controller: screen.controller
            onClosed: list.forceActiveFocus()
        }
    ]
}
