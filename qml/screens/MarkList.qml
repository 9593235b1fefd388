// A list whose rows can be marked to be treated together: Space, Shift with the arrows, Ctrl A; Esc lets go.
import QtQuick
import Stowbench.App
import Stowbench.Style

ListView {
    id: list

    required property RowModel rows
    property string piles: "" // the role that names the pile a row lies in, if they lie in any
    property var pileWords: (pile, laid) => pile
    property int laid: 0 // how often the rows were laid anew: as many may lie in a pile no longer
    property int pileHeight: 40
    property var inHand: () => currentIndex // the row that the keys speak about

    property var before: 0 // the row she was at, where sorting and filtering move it
    Connections {
        target: list.rows
        function onModelAboutToBeReset() {
            list.before = list.rows.idAt(list.inHand());
        }
        function onModelReset() {
            list.laid += 1;
        }
        function onOrderChanged() {
            list.follow();
        }
        function onFilterChanged() {
            list.follow();
        }
    }
    function follow() {
        const at = rows.rowOf(before);
        if (at < 0) return;
        currentIndex = at;
        positionViewAtIndex(at, ListView.Contain);
    }

    section.property: rows.sorted ? "" : piles
    // Its words hang on the context's `section`, not on a required property: Qt 6.4 uses these items again and sets only
    // that. For the same reason it stands in a file without bound components.
    section.delegate: Item {
        width: list.width
        height: list.pileHeight
        Label {
            anchors.bottom: parent.bottom
            anchors.bottomMargin: 6
            x: 12
            text: list.pileWords(section, list.laid)
            font.bold: true
            font.pixelSize: Theme.small
            quiet: true
            Accessible.role: Accessible.Heading
        }
    }

    focus: true
    activeFocusOnTab: true
    clip: true
    model: rows
    boundsBehavior: Flickable.StopAtBounds
    keyNavigationEnabled: true
    Accessible.role: Accessible.List

    Label {
        anchors.centerIn: parent
        visible: list.count === 0 && list.rows.filter !== ""
        text: qsTr("No row has these words. Esc in the filter shows all.")
        quiet: true
    }

    Keys.onPressed: event => {
        const down = event.key === Qt.Key_Down;
        event.accepted = true;
        if (event.key === Qt.Key_Space && !event.modifiers) {
            rows.mark(inHand());
        } else if ((down || event.key === Qt.Key_Up) && event.modifiers === Qt.ShiftModifier) {
            const from = inHand();
            currentIndex = from;
            if (down) incrementCurrentIndex();
            else decrementCurrentIndex();
            rows.markFrom(from, currentIndex);
        } else if (event.key === Qt.Key_A && event.modifiers === Qt.ControlModifier) {
            rows.markAll();
        } else if (event.key === Qt.Key_Escape && rows.marked > 0) {
            rows.unmark();
        } else {
            event.accepted = false;
        }
    }
}
