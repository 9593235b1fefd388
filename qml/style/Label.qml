// Words in ink. `quiet` for second ink.
import QtQuick

Text {
    property bool quiet: false

    color: quiet ? Theme.secondInk : Theme.ink
    font.family: Theme.family
    font.pixelSize: Theme.body
    elide: Text.ElideRight
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: text
    Accessible.ignored: text === ""
}
