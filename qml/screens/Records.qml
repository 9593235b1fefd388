// Records: what parcels really cost, how full they were, what packaging left the house.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Page {
    id: screen

    required property RecordsController controller

    headline: qsTr("Records")
    aside: controller.covers
    footed: false

    Empty {
        visible: screen.controller.rows.total === 0
        title: qsTr("Nothing to record yet")
        words: qsTr("Every parcel that is packed is counted here: cost, air, weights and packaging by material.")
    }
    ListView {
        id: list
        anchors.fill: parent
        focus: true
        activeFocusOnTab: true
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Records")
        clip: true
        model: screen.controller.rows
        boundsBehavior: Flickable.StopAtBounds
        delegate: TableRow {
            id: row
            required property int index
            required property string name
            required property string value
            required property string more
            required property string chapter
            required property bool first
            implicitHeight: first ? 96 : 44
            sentence: name + ": " + value
            Label {
                visible: row.first
                y: 20
                text: row.chapter
                font.bold: true
                font.pixelSize: Theme.strong
                Accessible.role: Accessible.Heading
            }
            RowLayout {
                anchors.bottom: parent.bottom
                width: parent.width
                height: 44
                spacing: 16
                Label {
                    text: row.name
                    Layout.preferredWidth: 320
                }
                Label {
                    text: row.value
                    font.bold: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 160
                }
                Label {
                    text: row.more
                    quiet: true
                    font.pixelSize: Theme.small
                    wrapMode: Text.Wrap
                    maximumLineCount: 2
                    Layout.fillWidth: true
                }
            }
        }
    }
    ScrollMark {
        flickable: list
    }
}
