// A row of a list: hairline beneath, marked when it is the one the keys speak about.
import QtQuick
import Stowbench.Style

Item {
    id: row

    property bool current: false
    property bool ruled: true
    property string sentence: ""
    default property alias content: inner.data

    signal pressed
    signal opened
    signal held // pressed long

    implicitHeight: 56
    width: ListView.view ? ListView.view.width : implicitWidth
    Accessible.role: Accessible.ListItem
    Accessible.name: sentence
    Accessible.selected: current
    Accessible.onPressAction: opened()

    Rectangle {
        anchors.fill: parent
        color: row.current ? Theme.accentTint : "transparent"
        Rectangle { // shape as well as colour
            width: 4
            height: parent.height
            color: Theme.accent
            visible: row.current
        }
    }
    Rule {
        visible: row.ruled
        anchors.bottom: parent.bottom
        width: parent.width
    }
    TapHandler {
        onTapped: row.pressed()
        onDoubleTapped: row.opened()
        onLongPressed: row.held()
    }
    Item {
        id: inner
        anchors.fill: parent
        anchors.leftMargin: 16
        anchors.rightMargin: 16
    }
}
