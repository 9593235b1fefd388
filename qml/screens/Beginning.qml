// An empty book: what leads from here to a first parcel, one thing after the other.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Item {
    id: screen

    required property FirstSteps controller

    signal chosen(int step, bool second)

    function choose(step: int, second: bool) {
        if (step === FirstSteps.Supplies && !second) controller.takeStarterRack();
        else chosen(step, second);
    }

    Flickable {
        id: flick
        anchors.fill: parent
        contentHeight: column.height + 32
        clip: contentHeight > height
        boundsBehavior: Flickable.StopAtBounds
        Column {
            id: column
            width: Math.min(flick.width - (flick.clip ? 16 : 0), 880) // beside the bar
            x: (flick.width - width) / 2
            topPadding: 16
            spacing: 0

            RowLayout {
                width: parent.width
                height: 64
                spacing: 8
                Heading {
                    text: screen.controller.headline
                    font.pixelSize: column.width < 720 ? Theme.body : Theme.title
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
                Button {
                    text: qsTr("Look at a demo day")
                    keyHint: "D"
                    onClicked: screen.controller.openDemo()
                }
                Button {
                    flat: true
                    text: qsTr("Put this away")
                    keyHint: "P"
                    onClicked: screen.controller.putAway()
                }
            }
            Repeater {
                model: screen.controller.steps
                Item {
                    id: step
                    required property int index
                    required property string title
                    required property string more
                    required property string first
                    required property string second
                    required property bool done
                    required property bool now
                    width: column.width
                    height: Math.max(72, words.implicitHeight + (buttons.below ? buttons.implicitHeight + 32 : 24))
                    Accessible.role: Accessible.ListItem
                    Accessible.name: title + (done ? qsTr(", done") : now ? qsTr(", now") : "")

                    Rectangle {
                        anchors.fill: parent
                        color: step.now ? Theme.accentTint : "transparent"
                        Rectangle {
                            width: 4
                            height: parent.height
                            color: Theme.accent
                            visible: step.now
                        }
                    }
                    Rule {
                        anchors.bottom: parent.bottom
                        width: parent.width
                    }
                    Rectangle {
                        x: 16
                        y: 20
                        width: 32
                        height: 32
                        radius: 16
                        color: step.done ? Theme.accent : Theme.sheet
                        border.width: step.now ? 2 : 1
                        border.color: step.done || step.now ? Theme.accent : Theme.secondInk
                        Text {
                            anchors.centerIn: parent
                            text: step.done ? "✓" : step.index + 1
                            color: step.done ? Theme.accentInk : Theme.ink
                            font.family: Theme.family
                            font.pixelSize: Theme.body
                            font.bold: true
                        }
                    }
                    ColumnLayout {
                        id: words
                        x: 64
                        y: 12
                        width: step.width - 80 - (buttons.below ? 0 : buttons.width + 16)
                        spacing: 2
                        Label {
                            text: step.title
                            font.bold: true
                            font.pixelSize: Theme.strong
                            quiet: step.done
                            Layout.fillWidth: true
                            Accessible.ignored: true
                        }
                        Label {
                            text: step.more
                            quiet: true
                            font.pixelSize: Theme.small
                            wrapMode: Text.Wrap
                            Layout.fillWidth: true
                        }
                    }
                    Row {
                        id: buttons
                        readonly property bool below: step.width < 720
                        visible: !step.done
                        anchors.right: parent.right
                        anchors.rightMargin: 16
                        y: below ? words.y + words.implicitHeight + 8 : (step.height - height) / 2
                        spacing: 8
                        Button {
                            visible: step.second !== ""
                            flat: true
                            text: step.second
                            keyHint: qsTr("Alt %1").arg(step.index + 1)
                            onClicked: screen.choose(step.index, true)
                        }
                        Button {
                            primary: step.now
                            text: step.first
                            keyHint: (step.index + 1).toString()
                            onClicked: screen.choose(step.index, false)
                        }
                    }
                }
            }
        }
        ScrollMark {
            flickable: flick
        }
    }
}
