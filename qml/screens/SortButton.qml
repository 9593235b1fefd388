// How the rows are sorted; a press sorts them another way.
import QtQuick
import Stowbench.App
import Stowbench.Style

Button {
    id: button

    required property RowModel rows
    property bool brief: false // where there is no room for the order's name

    flat: true
    text: brief ? qsTr("Sort") : rows.order
    keyHint: "F7"
    Accessible.name: qsTr("Sorted: %1").arg(rows.order)
    onClicked: rows.nextOrder()

    Shortcut {
        sequence: "F7"
        enabled: button.visible
        onActivated: button.rows.nextOrder()
    }
}
