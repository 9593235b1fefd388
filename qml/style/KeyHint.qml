// The key that does the same.
import QtQuick

Text {
    property bool overAccent: false

    color: overAccent ? Theme.accentInk : Theme.secondInk
    font.family: Theme.family
    font.pixelSize: Theme.small
    textFormat: Text.PlainText
    verticalAlignment: Text.AlignVCenter
    Accessible.ignored: true
}
