// How parcels leave: files, texts, stamps and customs, each in a few lines of plain words.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property SendingController controller

    headline: qsTr("Sending")
    aside: qsTr("kept when you leave a field")
    footed: false
    named: false

    Item { // has the keys when no field does
        id: rest
        focus: true
    }
    Flickable {
        id: flick
        anchors.fill: parent
        contentHeight: column.height + 16
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        Column {
            id: column
            width: Math.min(flick.width, 880)
            spacing: 16
            Repeater {
                model: screen.controller.rows
                Column {
                    id: setting
                    required property int index
                    required property string key
                    required property string title
                    required property string help
                    required property string words
                    property string fault: ""
                    width: column.width
                    spacing: 4

                    Label {
                        text: setting.title
                        font.bold: true
                    }
                    Label {
                        visible: text !== ""
                        text: setting.help
                        quiet: true
                        font.pixelSize: Theme.small
                        width: parent.width
                        wrapMode: Text.Wrap
                    }
                    Rectangle {
                        width: parent.width
                        height: Math.max(Theme.target, entry.implicitHeight + 20)
                        radius: Theme.radius
                        color: Theme.sheet
                        border.width: entry.activeFocus || setting.fault !== "" ? 2 : 1
                        border.color: setting.fault !== "" ? Theme.brick : entry.activeFocus ? Theme.accent : Theme.border
                        TextEdit {
                            id: entry
                            anchors.fill: parent
                            anchors.margins: 10
                            text: setting.words
                            activeFocusOnTab: true
                            font.family: Theme.family
                            font.pixelSize: Theme.body
                            color: Theme.ink
                            selectionColor: Theme.accent
                            selectedTextColor: Theme.accentInk
                            selectByMouse: true
                            wrapMode: TextEdit.Wrap
                            textFormat: TextEdit.PlainText
                            Accessible.role: Accessible.EditableText
                            Accessible.name: setting.title
                            Keys.onPressed: event => {
                                event.accepted = event.key === Qt.Key_Tab || event.key === Qt.Key_Backtab || event.key === Qt.Key_Escape;
                                if (event.key === Qt.Key_Escape) rest.forceActiveFocus();
                                else if (event.accepted) nextItemInFocusChain(event.key === Qt.Key_Tab).forceActiveFocus();
                            }
                            onActiveFocusChanged: {
                                if (activeFocus) {
                                    const y = mapToItem(column, 0, 0).y;
                                    if (y - 48 < flick.contentY || y + height > flick.contentY + flick.height) flick.contentY = Math.max(0, Math.min(y - 48, flick.contentHeight - flick.height));
                                } else if (text !== setting.words || setting.fault !== "") {
                                    setting.fault = screen.controller.set(setting.key, text);
                                }
                            }
                        }
                    }
                    Label {
                        visible: setting.fault !== ""
                        text: "! " + setting.fault
                        color: Theme.brick
                        font.pixelSize: Theme.small
                        width: parent.width
                        wrapMode: Text.Wrap
                    }
                }
            }
        }
    }
    ScrollMark {
        flickable: flick
    }
}
