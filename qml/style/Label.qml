// Words in ink. `quiet` for second ink; `shortens` where they are hers or a buyer's and may end in "…".
import QtQuick

Text {
    property bool quiet: false
    property bool shortens: false

    color: quiet ? Theme.secondInk : Theme.ink
    font.family: Theme.family
    font.pixelSize: Theme.body
    elide: Text.ElideRight
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: text
    Accessible.ignored: text === ""
}
