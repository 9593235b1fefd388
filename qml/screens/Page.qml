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
    property alias over: over.data // panels, over the whole screen
    default property alias content: body.data
    property bool footed: true
    readonly property bool tight: width < 800 // large letters or a small window: what matters most alone

    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Math.min(Theme.page, screen.width / 40)
        anchors.rightMargin: anchors.leftMargin
        spacing: 0

        RowLayout {
            Layout.fillWidth: true
            Layout.preferredHeight: 64
            visible: screen.headline !== ""
            spacing: 0
            Heading {
                text: screen.headline
                Layout.fillWidth: true
            }
            Label {
                text: screen.aside
                quiet: true
                visible: text !== ""
                Layout.leftMargin: 16
            }
            RowLayout {
                id: headRight
                spacing: 8
                Layout.fillWidth: false
                Layout.leftMargin: implicitWidth > 0 ? 16 : 0
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
    Item {
        id: over
        anchors.fill: parent
    }
}
