// What every screen has: where one is, one line about how things work here, content, and a foot with the one thing to do.
import QtQuick
import QtQuick.Layouts
import QtQuick.Window
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
    property int least: 0 // height the content needs; in a lower window it scrolls
    readonly property Item held: Window.activeFocusItem
    readonly property bool tight: width < 800 // large letters or a small window: what matters most alone
    readonly property real margin: Math.min(Theme.page, width / 40)
    readonly property real inner: width - 2 * margin
    property bool drafting: false // something half typed lies open: the screen stays when it is left (Stay)
    property bool named: true // false: where one is stands above already, and the headline may give way

    property bool begun: false // what has the keys as the screen is come to leaves it at its top
    onHeldChanged: begun ? Qt.callLater(reveal) : Qt.callLater(() => begun = true)
    function reveal() { // what has the keys is in sight
        if (!held || !room.clip || held.height > room.height / 2) return;
        const y = held.mapToItem(body, 0, 0).y;
        if (y < room.contentY) room.contentY = Math.max(0, y);
        else if (y < body.height && y + held.height > room.contentY + room.height) room.contentY = Math.max(0, Math.min(y, body.height - room.height));
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: screen.margin
        anchors.rightMargin: screen.margin
        spacing: 0

        RowLayout {
            Layout.fillWidth: true
            Layout.preferredHeight: Math.max(screen.tight ? 48 : 64, headRight.implicitHeight + 4)
            Layout.maximumHeight: Layout.preferredHeight
            visible: screen.headline !== ""
            spacing: 0
            Heading {
                text: screen.headline
                visible: screen.named || !screen.tight
                font.pixelSize: screen.tight ? Theme.body : Theme.title
                wrapMode: screen.tight ? Text.Wrap : Text.NoWrap
                maximumLineCount: 2
                lineHeight: screen.tight ? 0.95 : 1
                Layout.fillWidth: true
            }
            Label {
                text: screen.aside
                quiet: true
                visible: text !== "" && !screen.tight
                wrapMode: Text.Wrap
                maximumLineCount: 2
                Layout.fillWidth: true
                Layout.preferredWidth: Math.ceil(implicitWidth) // a part of a pixel less would wrap it
                Layout.maximumWidth: Layout.preferredWidth
                Layout.leftMargin: 16
            }
            Flow { // wraps where the window is small
                id: headRight
                readonly property real wanted: {
                    let sum = -spacing;
                    for (let i = 0; i < children.length; ++i) if (children[i].visible) sum += children[i].width + spacing;
                    return Math.max(0, sum);
                }
                spacing: 8
                Layout.fillWidth: false
                Layout.preferredWidth: Math.min(wanted, screen.inner - (screen.tight && screen.named ? 200 : 0))
                Layout.leftMargin: wanted > 0 && (screen.named || !screen.tight) ? 16 : 0
            }
        }
        Flickable {
            id: room
            Layout.fillWidth: true
            Layout.fillHeight: true
            contentHeight: Math.max(height, screen.least)
            clip: contentHeight > height
            interactive: clip
            boundsBehavior: Flickable.StopAtBounds

            Item {
                id: body
                width: room.width
                height: room.contentHeight
            }
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
