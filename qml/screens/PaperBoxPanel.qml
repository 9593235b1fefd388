// A box or envelope folded from her own paper: sheet, cuts, scores, template; kept, it is one of her outers.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property PaperBoxesController controller

    title: qsTr("Fold it from paper")
    sheetWidth: 880
    gap: 12
    onOpened: {
        controller.open = true;
        lengthField.forceActiveFocus();
    }
    onClosed: controller.open = false
    Component.onDestruction: if (controller) controller.open = false

    function lay() {
        lengthField.fault = panel.controller.lay(kind.currentIndex, paper.currentIndex, lengthField.text, wide.text, high.text, around.checked);
    }
    function keep() {
        code.fault = panel.controller.keep(code.text, named.text, minutes.text);
    }

    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Choice {
            id: kind
            label: qsTr("Kind")
            title: label
            model: panel.controller.kinds
            Layout.fillWidth: true
            onActivated: if (panel.controller.laid) panel.lay()
        }
        Choice {
            id: paper
            label: qsTr("Paper")
            title: label
            model: panel.controller.papers
            Layout.fillWidth: true
            onActivated: if (panel.controller.laid) panel.lay()
        }
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Field {
            id: lengthField
            label: qsTr("Length")
            unit: qsTr("mm")
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.lay()
        }
        Field {
            id: wide
            label: qsTr("Width")
            unit: qsTr("mm")
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.lay()
        }
        Field {
            id: high
            label: qsTr("Height (pillow: its bulge)")
            unit: qsTr("mm")
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.lay()
        }
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        CheckBox {
            id: around
            text: qsTr("These are of what must go in")
            Layout.fillWidth: true
        }
        Button {
            primary: !panel.controller.laid
            text: qsTr("Lay it out")
            keyHint: qsTr("Enter")
            onClicked: panel.lay()
        }
    }
    RowLayout {
        visible: panel.controller.laid
        Layout.fillWidth: true
        spacing: 24
        Sketch {
            scene: panel.controller.net
            dark: Theme.dark
            family: Theme.family
            Accessible.role: Accessible.Graphic
            Accessible.name: sentence
            Layout.preferredWidth: 300
            Layout.preferredHeight: 300
            Layout.alignment: Qt.AlignTop
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            spacing: 8
            Repeater {
                model: panel.controller.facts
                ColumnLayout {
                    id: fact
                    required property string name
                    required property string value
                    Layout.fillWidth: true
                    spacing: 0
                    Label {
                        text: fact.name
                        quiet: true
                        font.pixelSize: Theme.small
                        Layout.fillWidth: true
                    }
                    Label {
                        text: fact.value
                        font.bold: true
                        Layout.fillWidth: true
                    }
                }
            }
            Label {
                text: qsTr("Score before you cut. A knife with a fresh blade, a steel rule, and the other hand behind the blade.")
                quiet: true
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
        }
    }
    RowLayout {
        visible: panel.controller.fromPaper
        Layout.fillWidth: true
        spacing: 8
        Field {
            id: code
            label: qsTr("Keep it as an outer: code")
            placeholder: "BOX-S"
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.keep()
        }
        Field {
            id: named
            label: qsTr("Name")
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.keep()
        }
        Field {
            id: minutes
            label: qsTr("Minutes to make one")
            Layout.preferredWidth: 152
            Layout.alignment: Qt.AlignTop
            onAccepted: panel.keep()
        }
    }
    buttons: [
        Button {
            primary: true
            enabled: panel.controller.laid
            text: qsTr("Print the template")
            onClicked: panel.controller.printTemplate()
        },
        Button {
            enabled: panel.controller.laid
            text: qsTr("Look at it")
            keyHint: "F8"
            onClicked: panel.controller.lookAtTemplate()
        },
        Button {
            enabled: panel.controller.fromPaper
            text: qsTr("Keep it as an outer")
            onClicked: panel.keep()
        }
    ]
}
