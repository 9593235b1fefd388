// Typing here leaves only the rows with these words. F6 comes here from anywhere on the screen.
import QtQuick
import Stowbench.App
import Stowbench.Style

TextField {
    id: field

    required property RowModel rows
    property Item list: null // gets the keys back
    property bool roomy: true
    property bool asked: false // for, by its key, where there is no room for it

    visible: roomy || asked || text !== ""
    onActiveFocusChanged: if (!activeFocus) asked = false
    implicitWidth: roomy ? 180 : 140
    placeholderText: activeFocus ? "" : qsTr("Filter · F6")
    Accessible.description: "F6"
    onTextChanged: rows.filter = text
    Keys.onDownPressed: if (list) list.forceActiveFocus()
    Keys.onEscapePressed: {
        text = "";
        if (list) list.forceActiveFocus();
    }

    Shortcut {
        sequence: "F6"
        enabled: field.parent.visible
        onActivated: {
            field.asked = true;
            field.forceActiveFocus();
        }
    }
}
