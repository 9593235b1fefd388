// A button with its key. `primary`: the one thing to do here. `flat`: words alone.
import QtQuick
import QtQuick.Templates as T

T.Button {
    id: control

    property string keyHint: ""
    property bool primary: false
    property bool warning: false
    property bool stacked: false // key under the words, for narrow buttons
    property bool shortens: false // its words name something of hers and may end in "…"
    property int size: Theme.target

    readonly property color words: !enabled ? Theme.secondInk : primary ? Theme.accentInk : warning ? Theme.brick : Theme.ink

    implicitWidth: Math.max(implicitContentWidth + leftPadding + rightPadding, size)
    implicitHeight: Math.max(implicitContentHeight + topPadding + bottomPadding, size)
    leftPadding: flat ? 8 : 16
    rightPadding: flat ? 8 : 16
    topPadding: 4
    bottomPadding: 4
    font.family: Theme.family
    font.pixelSize: primary && size > Theme.target ? Theme.strong : Theme.body
    font.bold: primary
    hoverEnabled: true
    focusPolicy: Qt.TabFocus // a press leaves the keys where they are

    Accessible.name: text
    Accessible.description: keyHint

    background: Rectangle {
        radius: Theme.radius
        color: control.primary && control.enabled ? (control.down ? Theme.accentPressed : Theme.accent)
                                                  : control.down ? Theme.accentTint
                                                                 : control.hovered ? Theme.paper
                                                                                   : control.flat ? "transparent" : Theme.sheet
        border.width: control.flat || (control.primary && control.enabled) ? 0 : 1
        border.color: control.enabled ? Theme.border : Theme.hairline
        FocusRing {
            shown: control.visualFocus
        }
    }

    contentItem: Item {
        implicitWidth: control.stacked ? Math.max(label.implicitWidth, hint.implicitWidth)
                                       : label.implicitWidth + (hint.text ? hint.implicitWidth + (control.flat ? 8 : 24) : 0)
        implicitHeight: control.stacked ? label.implicitHeight + hint.implicitHeight + 2 : Math.max(label.implicitHeight, 24)

        Text {
            id: label
            readonly property bool shortens: control.shortens
            text: control.text
            font: control.font
            color: control.words
            elide: Text.ElideRight
            textFormat: Text.PlainText
            y: control.stacked ? (parent.height - height - hint.height - 2) / 2 : (parent.height - height) / 2
            width: Math.min(implicitWidth, parent.width - (hint.text && !control.stacked ? hint.width + 8 : 0))
        }
        KeyHint {
            id: hint
            text: control.keyHint
            overAccent: control.primary && control.enabled
            x: control.stacked ? 0 : parent.width - width
            y: control.stacked ? label.y + label.height + 2 : (parent.height - height) / 2
        }
    }
}
