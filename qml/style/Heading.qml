// The line that says where one is and what waits.
import QtQuick

Label {
    font.pixelSize: Theme.title
    font.bold: true
    Accessible.role: Accessible.Heading
}
