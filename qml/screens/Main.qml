// The window: the day line, the screen of the place she is at, and what lies over all of them.
import QtQuick
import QtQuick.Window
import Stowbench.App
import Stowbench.Style

Window {
    id: window

    required property Desk desk
    readonly property Item here: places.count > 0 ? places.itemAt(desk.place).item : null // the screen of the place
    readonly property bool free: desk.stopWord === "" && desk.failure === "" // a word over everything waits for its own key

    width: 1280
    height: 800
    minimumWidth: 640
    minimumHeight: 400
    visible: true
    color: Theme.paper
    title: qsTr("Stowbench")

    Component.onCompleted: {
        Theme.dark = Qt.binding(() => window.desk.dark);
        tabs.window = window; // before the catcher, which hears every key first
        catcher.window = window;
    }

    TabKeeper {
        id: tabs
    }
    ScanCatcher {
        id: catcher
        intoFields: window.desk.place !== Desk.Pick && window.desk.place !== Desk.Bench
        onScanned: code => window.desk.scan(code)
    }
    Connections {
        target: window.desk
        function onFindAsked(code) {
            find.lookFor(code);
        }
    }

    Shortcut {
        enabled: window.free
        sequence: "F1"
        onActivated: window.go(Desk.Arrivals)
    }
    Shortcut {
        enabled: window.free
        sequence: "F2"
        onActivated: window.go(Desk.Plan)
    }
    Shortcut {
        enabled: window.free
        sequence: "F3"
        onActivated: window.go(Desk.Pick)
    }
    Shortcut {
        enabled: window.free
        sequence: "F4"
        onActivated: window.go(Desk.Bench)
    }
    Shortcut {
        enabled: window.free
        sequence: "F5"
        onActivated: window.go(Desk.HandOver)
    }
    Shortcut {
        enabled: window.free && !window.desk.preview.open
        sequence: "F8"
        onActivated: window.desk.lookAtPapers()
    }
    Shortcut {
        enabled: window.free
        sequence: "F9"
        onActivated: window.go(Desk.Cupboard)
    }
    Shortcut {
        enabled: window.free
        sequence: "Ctrl+F"
        onActivated: find.open()
    }
    Shortcut {
        enabled: window.free
        sequence: "Ctrl+Z"
        onActivated: window.desk.undo()
    }
    Shortcut {
        enabled: window.free
        sequences: ["Ctrl+Y", "Ctrl+Shift+Z"]
        onActivated: window.desk.redo()
    }
    Shortcut {
        enabled: window.free
        sequence: "Ctrl+P"
        onActivated: window.desk.mendPrinting()
    }
    Shortcut {
        sequence: "Ctrl+D"
        onActivated: window.desk.dark = !window.desk.dark
    }
    Shortcut {
        sequence: "Ctrl+Q"
        onActivated: window.close()
    }

    // What is being typed is kept before its place is left.
    function go(place: int) {
        if (place === desk.place) return;
        dayLine.forceActiveFocus();
        desk.place = place;
    }

    DayLine {
        id: dayLine
        Keys.forwardTo: window.here ? [window.here] : []
        Keys.onEscapePressed: stage.forceActiveFocus()
        width: parent.width
        line: window.desk.dayLine
        place: window.desk.place
        onWent: place => window.go(place)
        onFindAsked: find.open()
    }

    FocusScope {
        id: stage
        anchors.top: dayLine.bottom
        anchors.bottom: notice.top
        width: parent.width
        focus: true

        Repeater {
            id: places
            // In the order of Desk's places.
            model: [arrivals, plan, pick, bench, handOver, cupboard]
            Stay {
                required property int index
                required property var modelData
                anchors.fill: parent
                current: window.desk.place === index
                sourceComponent: modelData
            }
        }
    }

    NoticeLine {
        id: notice
        Keys.forwardTo: window.here ? [window.here] : []
        Keys.onEscapePressed: stage.forceActiveFocus()
        anchors.bottom: parent.bottom
        width: parent.width
        notice: window.desk.notice
        standing: dayLine.timed ? "" : window.desk.dayLine.left
        pressing: window.desk.dayLine.pressing
        undoWords: window.desk.undoWords
        redoWords: window.desk.redoWords
        trouble: window.desk.printTrouble
        remedy: window.desk.printRemedy
        onUndo: window.desk.undo()
        onRedo: window.desk.redo()
        onMend: window.desk.mendPrinting()
        papers: window.desk.hasPapers
        onPapersAsked: window.desk.lookAtPapers()
    }

    Component {
        id: arrivals
        Arrivals {
            controller: window.desk.arrivals
            firstSteps: window.desk.firstSteps
            onGoPlan: window.desk.place = Desk.Plan
            onBegan: (step, file) => {
                window.desk.place = Desk.Cupboard;
                window.here.begin(step, file);
            }
        }
    }
    Component {
        id: plan
        Plan {
            controller: window.desk.plan
            onGoArrivals: window.desk.place = Desk.Arrivals
        }
    }
    Component {
        id: pick
        Pick {
            controller: window.desk.pick
            onGoPlan: window.desk.place = Desk.Plan
            onGoBench: window.desk.place = Desk.Bench
        }
    }
    Component {
        id: bench
        Bench {
            controller: window.desk.bench
            goods: window.desk.arrivals.goods
            onGoPick: window.desk.place = Desk.Pick
            onGoHandOver: window.desk.place = Desk.HandOver
        }
    }
    Component {
        id: handOver
        HandOver {
            controller: window.desk.handOver
            onGoBench: window.desk.place = Desk.Bench
        }
    }
    Component {
        id: cupboard
        Cupboard {
            controller: window.desk.cupboard
        }
    }

    PreviewPanel {
        anchors.fill: parent
        controller: window.desk.preview
    }
    FindPanel {
        id: find
        anchors.fill: parent
        controller: window.desk.find
        onParcelChosen: parcel => window.desk.openParcel(parcel)
        onClosed: stage.forceActiveFocus()
    }

    WaitWord {
        anchors.fill: parent
        words: window.desk.waitsFor
    }
    StopWord {
        anchors.fill: parent
        word: window.desk.failure === "" ? window.desk.stopWord : ""
        more: window.desk.stopMore
        onGoOn: {
            window.desk.goOn();
            stage.forceActiveFocus();
        }
    }
    FailureWord {
        anchors.fill: parent
        failure: window.desk.failure
        safe: window.desk.failureSafe
        remedy: window.desk.failureRemedy
        onTriedAgain: window.desk.tryAgain()
        onCloseAsked: window.close()
        onMended: stage.forceActiveFocus()
    }
}
