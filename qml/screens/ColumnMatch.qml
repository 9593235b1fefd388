// A new shop's file: each heading with an example from the file, and what it is taken for.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Item {
    id: match

    required property ArrivalsController controller

    ColumnLayout {
        anchors.fill: parent
        spacing: 8
        RowLayout {
            spacing: 16
            Layout.fillWidth: true
            Field {
                label: qsTr("Shop")
                text: match.controller.shop
                Layout.preferredWidth: 280
                input.onTextEdited: match.controller.shop = text
            }
            Label {
                text: match.controller.fileName
                quiet: true
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBottom
                bottomPadding: 14
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            spacing: 24
            ListView {
                id: list
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 3
                Layout.maximumWidth: 720
                clip: true
                model: match.controller.columns
                boundsBehavior: Flickable.StopAtBounds
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Columns of the file")
                delegate: TableRow {
                    id: column
                    required property int index
                    required property string heading
                    required property string example
                    required property int field
                    required property bool missing
                    implicitHeight: 60
                    sentence: heading
                    RowLayout {
                        anchors.fill: parent
                        spacing: 16
                        ColumnLayout {
                            spacing: 2
                            Layout.fillWidth: true
                            Label {
                                text: column.heading
                                font.bold: true
                                Layout.fillWidth: true
                            }
                            Label {
                                text: column.example
                                quiet: true
                                font.pixelSize: Theme.small
                                Layout.fillWidth: true
                            }
                        }
                        Label {
                            text: "→"
                            quiet: true
                        }
                        Choice {
                            label: column.heading
                            model: match.controller.fields
                            currentIndex: column.field
                            onActivated: index => match.controller.setField(column.index, index)
                        }
                    }
                }
            }
            ColumnLayout {
                Layout.fillHeight: true
                Layout.fillWidth: true
                Layout.preferredWidth: 2
                spacing: 8
                visible: match.controller.problems.count > 0
                Label {
                    text: qsTr("What is wrong in the file")
                    font.bold: true
                }
                ListView {
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    clip: true
                    model: match.controller.problems
                    spacing: 8
                    delegate: Column {
                        id: problem
                        required property string where
                        required property string what
                        required property bool leftOut
                        width: ListView.view.width
                        Label {
                            width: parent.width
                            text: problem.where
                            quiet: true
                            font.pixelSize: Theme.small
                        }
                        Label {
                            width: parent.width
                            text: (problem.leftOut ? "× " : "! ") + problem.what
                            color: problem.leftOut ? Theme.brick : Theme.ochreText
                            wrapMode: Text.Wrap
                        }
                    }
                }
            }
        }
    }
}
