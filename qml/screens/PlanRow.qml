// One parcel of the plan: whose, in what and why, what it weighs and costs.
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Sheet {
    id: row

    required property int index
    required property string number
    required property string buyer
    required property string place
    required property string contents
    required property string warning
    required property string part
    required property var outers
    required property string filler
    required property string weight
    required property string price
    required property string service
    required property double stepShare
    required property string edge
    required property bool edgeAtRisk
    required property string cheaper
    required property bool locked
    required property string sentence
    required property bool isMarked

    property bool current: false
    readonly property bool tight: width < 800

    signal pressed
    signal opened
    signal lockAsked
    signal markAsked

    implicitHeight: 128
    border.color: current ? Theme.accent : Theme.hairline
    border.width: current ? 2 : 1
    Accessible.role: Accessible.ListItem
    Accessible.name: isMarked ? qsTr("marked, %1").arg(sentence) : sentence
    Accessible.onPressAction: opened()

    TapHandler {
        onTapped: row.pressed()
        onDoubleTapped: row.opened()
        onLongPressed: row.markAsked()
    }

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: row.tight ? 12 : 20
        anchors.rightMargin: row.tight ? 12 : 20
        anchors.topMargin: 8
        anchors.bottomMargin: 8
        spacing: 16

        ColumnLayout {
            Layout.preferredWidth: row.tight ? 170 : 250
            Layout.maximumWidth: Layout.preferredWidth
            Layout.alignment: Qt.AlignTop
            spacing: 4
            RowLayout {
                spacing: 8
                Layout.fillWidth: true
                MarkBox {
                    marked: row.isMarked
                    implicitHeight: 24
                    Accessible.name: qsTr("Mark %1").arg(row.number)
                    onClicked: row.markAsked()
                }
                Label {
                    text: row.number
                    font.bold: true
                    font.pixelSize: Theme.strong
                }
                Label {
                    visible: !row.tight
                    text: row.buyer
                    shortens: true
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignBaseline
                }
            }
            Label {
                text: [row.tight ? row.buyer : "", row.place, row.part].filter(words => words !== "").join(" · ")
                shortens: row.tight
                quiet: true
                font.pixelSize: Theme.small
                Layout.fillWidth: true
            }
            Label {
                text: row.contents
                shortens: true
                wrapMode: Text.Wrap
                maximumLineCount: row.warning ? 1 : 2
                Layout.fillWidth: true
            }
            Label {
                visible: text !== ""
                text: row.warning ? "! " + row.warning : ""
                color: Theme.ochreText
                font.bold: true
                font.pixelSize: Theme.small
                Layout.fillWidth: true
            }
        }

        OuterRow {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumWidth: row.tight ? 100 : 220
            scene: row.outers
            sheet: Theme.sheet
            ink: Theme.ink
            secondInk: Theme.secondInk
            hairline: Theme.border
            accent: Theme.accent
            ochre: Theme.ochreText
            brick: Theme.brick
            dark: Theme.dark
            family: Theme.family
            Accessible.role: Accessible.Graphic
            Accessible.name: sentence
        }

        GridLayout {
            columns: row.tight ? 2 : 3
            columnSpacing: 16
            rowSpacing: 3
            Layout.preferredWidth: row.tight ? 216 : 390
            Layout.maximumWidth: Layout.preferredWidth
            Layout.alignment: Qt.AlignTop

            Label {
                visible: !row.tight
                text: qsTr("filler")
                quiet: true
                font.pixelSize: Theme.small
                Layout.preferredWidth: 80
            }
            Label {
                text: qsTr("weight")
                quiet: true
                font.pixelSize: Theme.small
                Layout.preferredWidth: row.tight ? 104 : 110
            }
            Label {
                text: row.price
                font.bold: true
                font.pixelSize: row.tight ? Theme.strong : Theme.title
                Layout.fillWidth: true
                Layout.minimumWidth: implicitWidth
                Layout.rowSpan: 2
                horizontalAlignment: Text.AlignRight
            }
            Label {
                visible: !row.tight
                text: row.filler
                Layout.preferredWidth: 80
            }
            Label {
                text: row.weight
                Layout.preferredWidth: row.tight ? 104 : 110
            }
            Label {
                text: row.cheaper
                color: Theme.accent
                font.pixelSize: Theme.small
                visible: !row.tight || text !== ""
                Layout.columnSpan: 2
                Layout.fillWidth: true
            }
            Label {
                text: row.service
                Layout.columnSpan: row.tight ? 2 : 1
                shortens: row.tight
                quiet: true
                font.pixelSize: Theme.small
                horizontalAlignment: row.tight ? Text.AlignLeft : Text.AlignRight
                Layout.fillWidth: true
            }
            Bar {
                share: row.stepShare
                colour: row.edgeAtRisk ? Theme.ochre : Theme.accent
                implicitHeight: 6
                Layout.columnSpan: row.tight ? 2 : 3
                Layout.fillWidth: true
                Layout.topMargin: 2
            }
            Label {
                text: row.edgeAtRisk ? "! " + row.edge : row.edge
                color: row.edgeAtRisk ? Theme.ochreText : Theme.secondInk
                font.bold: row.edgeAtRisk
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
                maximumLineCount: 2
                Layout.columnSpan: row.locked || row.tight ? 2 : 3
                Layout.fillWidth: true
            }
            Label {
                visible: row.locked
                text: qsTr("kept (L lets go)")
                quiet: true
                font.pixelSize: Theme.small
                horizontalAlignment: Text.AlignRight
                Layout.fillWidth: true
                TapHandler {
                    onTapped: row.lockAsked()
                }
            }
        }
    }
}
