// The key that does the same.
import QtQuick

Text {
    property bool onAccent: false

    color: onAccent ? Theme.onAccent : Theme.secondInk
    font.family: Theme.family
    font.pixelSize: Theme.small
    textFormat: Text.PlainText
    verticalAlignment: Text.AlignVCenter
    Accessible.ignored: true
}
