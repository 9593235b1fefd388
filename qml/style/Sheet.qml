// A raised sheet of paper.
import QtQuick

Rectangle {
    color: Theme.sheet
    border.color: Theme.hairline
    border.width: 1
    radius: Theme.radius
}
