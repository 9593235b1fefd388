// What is wrong with what was typed, beside the button that would keep it.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

Label {
    color: Theme.brick
    font.bold: true
    wrapMode: Text.Wrap
    maximumLineCount: 2
    Layout.fillWidth: true
    Accessible.role: Accessible.AlertMessage
}
