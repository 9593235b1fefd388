// The scale: what it says, whether that is right, and where it stands between the postage steps.
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Item {
    id: scale

    required property BenchController controller

    signal away
    signal overrule

    readonly property color verdictColour: controller.verdictKind === 3 ? Theme.brick : controller.verdictKind === 2 ? Theme.ochreText : Theme.accent

    function takeFocus() {
        entry.forceActiveFocus();
        entry.selectAll();
    }
    function begin(digit: string) {
        entry.text = digit;
        entry.forceActiveFocus();
    }
    function take() {
        const typed = entry.text;
        entry.text = "";
        scale.away(); // before the verdict, which may need the keys
        const fault = controller.weigh(typed);
        entry.fault = fault !== "";
        faultText.text = fault;
        if (fault === "") return;
        entry.text = typed;
        takeFocus();
    }

    readonly property bool narrow: width < 700
    readonly property bool doubted: controller.verdictKind >= 2 // it may be right all the same: where it is narrow, a button of the bench says so
    readonly property string overruleWords: qsTr("It is right all the same")

    implicitHeight: 152

    Rule {
        width: parent.width
    }
    GridLayout {
        anchors.fill: parent
        anchors.topMargin: 12
        columns: 2
        columnSpacing: scale.narrow ? 16 : 32
        rowSpacing: 8

        ColumnLayout {
            Layout.preferredWidth: scale.narrow ? 280 : 304
            Layout.minimumWidth: Layout.preferredWidth
            Layout.maximumWidth: Layout.preferredWidth
            Layout.alignment: Qt.AlignTop
            spacing: 2
            RowLayout {
                Layout.fillWidth: true
                Layout.fillHeight: false
                Label {
                    text: scale.controller.reading || "– " + scale.controller.weightUnit
                    quiet: scale.controller.reading === ""
                    font.pixelSize: Theme.now
                    font.bold: true
                    Layout.fillWidth: true
                    Accessible.name: qsTr("Weight %1").arg(text)
                }
                TextField {
                    id: entry
                    implicitWidth: 120
                    implicitHeight: Theme.target
                    unit: scale.controller.weightUnit
                    label: qsTr("Weight from the scale")
                    placeholderText: qsTr("scale, W")
                    inputMethodHints: Qt.ImhFormattedNumbersOnly
                    onAccepted: scale.take()
                    Keys.onEscapePressed: scale.away()
                }
            }
            Label {
                visible: text !== ""
                text: (scale.controller.verdictKind >= 2 ? "! " : scale.controller.verdictKind === 1 ? "✓ " : "") + scale.controller.verdict
                color: scale.controller.verdictKind === 0 ? Theme.secondInk : scale.verdictColour
                font.bold: scale.controller.verdictKind > 0
                wrapMode: Text.Wrap
                maximumLineCount: 2
                lineHeight: 0.95
                Layout.fillWidth: true
            }
            Label {
                visible: scale.controller.scale !== ""
                text: (scale.controller.scaleStops ? "! " : "") + scale.controller.scale
                color: scale.controller.scaleStops ? Theme.brick : Theme.secondInk
                font.pixelSize: Theme.small
                Layout.fillWidth: true
                Accessible.name: text
            }
            Label {
                id: faultText
                visible: text !== ""
                color: Theme.brick
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Label {
                visible: text !== "" && !faultText.visible
                text: scale.controller.verdictMore
                quiet: true
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
                maximumLineCount: 2
                Layout.fillWidth: true
            }
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            spacing: 4
            GridLayout {
                columns: scale.narrow ? 1 : 3
                Layout.fillWidth: true
                Layout.fillHeight: false
                columnSpacing: 16
                rowSpacing: 0
                Label {
                    text: [scale.controller.service, scale.controller.verdictKind >= 2 ? "" : scale.controller.saving].filter(s => s !== "").join(" · ")
                    quiet: true
                    wrapMode: Text.Wrap
                    maximumLineCount: scale.narrow ? 2 : 3
                    shortens: scale.narrow // the closed size, said at the shelf already
                    verticalAlignment: Text.AlignVCenter
                    Layout.minimumHeight: scale.narrow ? 0 : 40 // room for the second line, also while it is not there
                    font.pixelSize: scale.controller.verdictKind >= 2 || scale.width < 1000 ? Theme.small : Theme.body
                    Layout.fillWidth: true
                }
                Label {
                    text: (scale.controller.edgeAtRisk ? "! " : "") + scale.controller.edge
                    color: scale.controller.edgeAtRisk ? Theme.ochreText : Theme.secondInk
                    font.bold: scale.controller.edgeAtRisk
                }
                Button {
                    visible: scale.doubted && !scale.narrow
                    text: scale.overruleWords
                    keyHint: "Y"
                    onClicked: scale.overrule()
                }
            }
            PostageRuler {
                Layout.fillWidth: true
                scene: scale.controller.ruler
                sheet: Theme.sheet
                ink: Theme.ink
                secondInk: Theme.secondInk
                hairline: Theme.hairline
                accent: Theme.accent
                ochre: Theme.ochreText
                brick: Theme.brick
                family: Theme.family
                Accessible.role: Accessible.Graphic
                Accessible.name: sentence
            }
        }
    }
}
