// Which sizes to buy: a supplier's list in, the best few out, with what one more size is worth.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property SizesController controller

    title: qsTr("Which sizes to buy")
    sheetWidth: 880
    onOpened: litre.forceActiveFocus()

    function takeIn(file: url) {
        litre.fault = panel.controller.choose(file, litre.text);
    }

    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Field {
            id: litre
            label: qsTr("A litre of parcel costs in postage, may stay empty")
            placeholder: Number(0.1).toLocaleString(Qt.locale(), "f", 2)
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            onAccepted: files.open()
        }
        Button {
            primary: true
            text: qsTr("Take in the list")
            keyHint: qsTr("Enter")
            enabled: !panel.controller.running
            Layout.alignment: Qt.AlignTop
            Layout.topMargin: litre.input.y
            onClicked: files.open()
        }
    }
    Label {
        text: panel.controller.words
        quiet: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    RowLayout {
        visible: panel.controller.running
        spacing: 16
        Layout.fillWidth: true
        Bar {
            share: panel.controller.progress
            Layout.fillWidth: true
        }
        Button {
            text: qsTr("Stop")
            onClicked: panel.controller.stop()
        }
    }
    Sketch {
        visible: panel.controller.rows.total > 1
        scene: panel.controller.curve
        dark: Theme.dark
        family: Theme.family
        Accessible.role: Accessible.Graphic
        Accessible.name: sentence
        Layout.fillWidth: true
        Layout.preferredHeight: 176
    }
    Repeater {
        model: panel.controller.rows
        ColumnLayout {
            id: choice
            required property string sizes
            required property string cost
            required property string names
            required property string more
            Layout.fillWidth: true
            spacing: 2
            RowLayout {
                Layout.fillWidth: true
                spacing: 16
                Label {
                    text: choice.sizes
                    font.bold: true
                    Layout.preferredWidth: 88
                }
                Label {
                    text: choice.cost
                    font.bold: true
                    horizontalAlignment: Text.AlignRight
                    Layout.preferredWidth: 104
                }
                Label {
                    text: choice.names
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
            }
            Label {
                text: choice.more
                quiet: true
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Rule {
                Layout.fillWidth: true
            }
        }
    }
    FileDialog {
        id: files
        title: qsTr("Cartons a supplier offers")
        nameFilters: [qsTr("Tables (*.csv *.txt *.tsv)"), qsTr("All files (*)")]
        onAccepted: panel.takeIn(selectedFile)
    }
}
