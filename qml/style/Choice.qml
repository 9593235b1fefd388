// One of a short list of words.
import QtQuick
import QtQuick.Templates as T

T.ComboBox {
    id: control

    property string label: ""
    property string title: "" // over it, as over a Field

    readonly property real head: title ? heading.height + 4 : 0
    topInset: head
    topPadding: head
    implicitWidth: 220
    implicitHeight: Theme.target + head
    leftPadding: 12
    rightPadding: 36
    font.family: Theme.family
    font.pixelSize: Theme.body

    Accessible.name: label ? label + ": " + displayText : displayText

    Label {
        id: heading
        width: parent.width
        visible: text !== ""
        text: control.title
        quiet: true
        font.pixelSize: Theme.small
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Theme.radius
        color: control.enabled ? Theme.sheet : Theme.paper
        border.width: control.activeFocus ? 2 : 1
        border.color: control.activeFocus ? Theme.accent : Theme.border
    }
    contentItem: Text {
        text: control.displayText
        font: control.font
        color: Theme.ink
        elide: Text.ElideRight
        verticalAlignment: Text.AlignVCenter
        textFormat: Text.PlainText
    }
    indicator: Text {
        x: control.width - width - 12
        y: control.head
        height: control.height - y
        text: "▾"
        color: Theme.secondInk
        font.pixelSize: Theme.body
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    delegate: T.ItemDelegate {
        id: row

        required property int index
        required property string modelData

        width: ListView.view ? ListView.view.width : implicitWidth
        implicitHeight: Theme.target
        implicitWidth: 200
        highlighted: control.highlightedIndex === index
        Accessible.name: modelData
        background: Rectangle {
            color: row.highlighted ? Theme.accentTint : "transparent"
        }
        contentItem: Text {
            leftPadding: 12
            text: row.modelData
            font.family: Theme.family
            font.pixelSize: Theme.body
            font.bold: control.currentIndex === row.index
            color: Theme.ink
            elide: Text.ElideRight
            verticalAlignment: Text.AlignVCenter
            textFormat: Text.PlainText
        }
    }
    popup: T.Popup {
        y: control.height + 4
        width: control.width
        implicitHeight: Math.min(contentItem.implicitHeight + 2, 8 * Theme.target)
        padding: 1
        contentItem: ListView {
            clip: true
            implicitHeight: contentHeight
            model: control.delegateModel
            currentIndex: control.highlightedIndex
            boundsBehavior: Flickable.StopAtBounds
            T.ScrollBar.vertical: ScrollBar {}
        }
        background: Sheet {
            border.color: Theme.border
        }
    }
}
