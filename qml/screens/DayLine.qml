// The day from left to right: its steps with what waits at each, how much is done, who comes next and when.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Window
import Stowbench.App
import Stowbench.Style

Rectangle {
    id: bar

    required property var line
    required property int place

    signal went(int place)
    signal findAsked

    readonly property bool narrow: width < 1120
    readonly property bool timed: width > 900 // room for who comes next and when
    readonly property bool low: Window.height < 520
    readonly property int first: low ? 7 : 15 // where its two lines stand
    readonly property int second: low ? 27 : 37

    implicitHeight: low ? 56 : 72
    color: Theme.sheet
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("The day")

    Rule {
        anchors.bottom: parent.bottom
        width: parent.width
    }

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: bar.narrow ? 8 : Theme.page - 12
        anchors.rightMargin: bar.narrow ? 8 : Theme.page - 12
        spacing: bar.narrow ? 0 : 8

        Repeater {
            model: bar.line.steps

            Item {
                id: step

                required property string name
                required property string key
                required property int waiting
                required property int place
                required property int index

                readonly property bool current: bar.place === place
                readonly property int pad: bar.narrow ? 8 : 12
                readonly property int lead: index === 0 ? 0 : bar.narrow ? 14 : 20 // for the mark between

                Layout.fillHeight: true
                implicitWidth: Math.max(words.implicitWidth, count.implicitWidth + 36) + lead + 2 * pad
                activeFocusOnTab: true
                Accessible.role: Accessible.PageTab
                Accessible.name: qsTr("%1, %2 waiting").arg(name).arg(waiting)
                Accessible.description: key
                Accessible.selected: current
                Accessible.onPressAction: bar.went(place)
                Keys.onReturnPressed: bar.went(place)
                Keys.onSpacePressed: bar.went(place)

                Text {
                    visible: step.index > 0
                    x: 0
                    anchors.verticalCenter: parent.verticalCenter
                    text: "›"
                    font.pixelSize: Theme.title
                    color: Theme.border
                    Accessible.ignored: true
                }
                Item {
                    id: face
                    x: step.lead
                    width: step.width - x
                    height: parent.height
                    Label {
                        id: words
                        x: step.pad
                        y: bar.first
                        text: step.name
                        font.bold: step.current
                        quiet: !step.current
                        Accessible.ignored: true
                    }
                    Label {
                        id: count
                        x: step.pad
                        y: bar.second
                        text: step.waiting
                        font.pixelSize: Theme.strong
                        font.bold: step.current
                        color: step.current ? Theme.accent : Theme.ink
                        Accessible.ignored: true
                    }
                    KeyHint {
                        x: count.x + count.width + 8
                        anchors.baseline: count.baseline
                        text: step.key
                    }
                    Rectangle {
                        x: step.pad
                        width: parent.width - 2 * step.pad
                        height: 4
                        anchors.bottom: parent.bottom
                        color: Theme.accent
                        visible: step.current
                    }
                    FocusRing {
                        anchors.margins: 2
                        shown: step.activeFocus
                    }
                }
                TapHandler {
                    onTapped: bar.went(step.place)
                }
            }
        }

        Item {
            Layout.fillWidth: true
        }

        Item {
            visible: !bar.narrow
            Layout.fillHeight: true
            implicitWidth: 230
            Label {
                y: bar.first + 2
                width: parent.width
                text: bar.line.progress
                quiet: true
            }
            Bar {
                y: bar.second + 13
                width: parent.width
                share: bar.line.emptied
                Accessible.ignored: true
            }
        }
        Item {
            Layout.fillHeight: true
            implicitWidth: Math.max(collection.implicitWidth, left.implicitWidth) + 24
            visible: bar.line.collection !== "" && bar.timed
            Label {
                id: collection
                y: bar.first
                anchors.right: parent.right
                text: bar.line.collection
                quiet: true
            }
            Label {
                id: left
                y: bar.second
                anchors.right: parent.right
                text: bar.line.left
                font.pixelSize: Theme.strong
                font.bold: true
                color: bar.line.pressing ? Theme.ochreText : Theme.ink
            }
        }
        Item {
            implicitWidth: bar.narrow ? 0 : 8
        }
        Button {
            flat: true
            stacked: true
            text: qsTr("Find")
            keyHint: qsTr("Ctrl F")
            onClicked: bar.findAsked()
        }
        Button {
            flat: true
            stacked: true
            text: qsTr("Cupboard")
            keyHint: "F9"
            font.bold: bar.place === Desk.Cupboard
            Accessible.role: Accessible.PageTab
            onClicked: bar.went(Desk.Cupboard)
            Rectangle {
                width: parent.width
                height: 4
                y: bar.height - parent.y - height
                color: Theme.accent
                visible: bar.place === Desk.Cupboard
            }
        }
    }
}
