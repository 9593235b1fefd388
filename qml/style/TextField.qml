// A line to type in. `unit` stands behind what is typed; `fault` says what is wrong with it.
import QtQuick
import QtQuick.Templates as T

T.TextField {
    id: control

    property string label: ""
    property string unit: ""
    property bool fault: false

    implicitWidth: 200
    implicitHeight: Theme.target
    leftPadding: 12
    rightPadding: unit ? unitText.width + 20 : 12
    verticalAlignment: TextInput.AlignVCenter
    font.family: Theme.family
    font.pixelSize: Theme.body
    color: Theme.ink
    selectionColor: Theme.accent
    selectedTextColor: Theme.accentInk
    placeholderTextColor: Theme.secondInk
    selectByMouse: true

    Accessible.name: label || placeholderText
    // Come to by Tab, what stands there is typed over.
    onActiveFocusChanged: if (activeFocus && (focusReason === Qt.TabFocusReason || focusReason === Qt.BacktabFocusReason)) selectAll()

    background: Rectangle {
        radius: Theme.radius
        color: control.enabled ? Theme.sheet : Theme.paper
        border.width: control.activeFocus || control.fault ? 2 : 1
        border.color: control.fault ? Theme.brick : control.activeFocus ? Theme.accent : Theme.border
    }

    Text {
        x: control.leftPadding
        width: control.width - control.leftPadding - control.rightPadding
        height: control.height
        visible: !control.text && !control.preeditText
        text: control.placeholderText
        font: control.font
        color: control.placeholderTextColor
        elide: Text.ElideRight
        verticalAlignment: Text.AlignVCenter
        textFormat: Text.PlainText
    }
    Text {
        id: unitText
        anchors.right: parent.right
        anchors.rightMargin: 12
        height: control.height
        text: control.unit
        font.family: Theme.family
        font.pixelSize: Theme.body
        color: Theme.secondInk
        verticalAlignment: Text.AlignVCenter
        textFormat: Text.PlainText
    }
}
