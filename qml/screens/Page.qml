// What every screen has: where one is, one line about how things work here, content, and a foot with the one thing to do.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

FocusScope {
    id: screen

    property string headline: ""
    property string aside: ""
    property alias headRight: headRight.data
    property alias foot: foot.data
    default property alias content: body.data
    property bool footed: true

    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Math.min(Theme.page, screen.width / 40)
        anchors.rightMargin: anchors.leftMargin
        spacing: 0

        RowLayout {
            Layout.fillWidth: true
            Layout.preferredHeight: 64
            visible: screen.headline !== ""
            spacing: 16
            Heading {
                text: screen.headline
                Layout.fillWidth: true
            }
            Label {
                text: screen.aside
                quiet: true
                visible: text !== ""
            }
            RowLayout {
                id: headRight
                spacing: 8
            }
        }
        Item {
            id: body
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
        Item {
            id: foot
            Layout.fillWidth: true
            Layout.preferredHeight: childrenRect.height
            visible: screen.footed
        }
    }
}
