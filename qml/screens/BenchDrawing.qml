// The parcel on the bench as it is packed, with its outer, its layers and its filler in words.
pragma ComponentBehavior: Bound
import QtQuick
import Stowbench.App
import Stowbench.Style

Sheet {
    id: drawing

    required property BenchController controller
    property bool apart: false // its layers lifted
    property bool narrow: false
    property bool bare: false // no words around it: the window is small

    signal apartAsked

    ParcelView {
        anchors.fill: parent
        anchors.margins: drawing.bare ? 8 : 16
        anchors.topMargin: drawing.bare ? 8 : 72
        anchors.bottomMargin: drawing.bare ? 8 : 28 + fillerWords.implicitHeight
        scene: drawing.controller.scene
        upToLayer: drawing.controller.layer
        apart: drawing.apart && drawing.controller.comesApart ? 1 : 0
        Behavior on apart { // where each layer went
            NumberAnimation {
                duration: Theme.motion
            }
        }
        highlight: drawing.controller.highlight
        sheet: Theme.sheet
        paper: Theme.paper
        ink: Theme.ink
        secondInk: Theme.secondInk
        hairline: Theme.hairline
        accent: Theme.accent
        ochre: Theme.ochre
        brick: Theme.brick
        dark: Theme.dark
        family: Theme.family
        Accessible.role: Accessible.Graphic
        Accessible.name: sentence
    }
    Column {
        visible: !drawing.bare
        x: 24
        y: 16
        spacing: 4
        Row {
            spacing: 12
            Label {
                id: outerName
                text: drawing.controller.outer
                font.bold: true
                font.pixelSize: Theme.strong
            }
            Label {
                anchors.baseline: outerName.baseline
                text: drawing.controller.outerSize
                quiet: true
            }
        }
        Label {
            text: drawing.controller.proof
            color: Theme.accent
            font.pixelSize: Theme.small
            visible: text !== ""
        }
    }
    Column {
        anchors.right: parent.right
        anchors.rightMargin: 24
        y: 12
        spacing: -8
        visible: drawing.controller.layers > 1 && !drawing.bare
        Button {
            visible: drawing.controller.comesApart
            anchors.right: parent.right
            flat: true
            text: drawing.apart ? qsTr("Together") : qsTr("Take apart")
            keyHint: "T"
            onClicked: drawing.apartAsked()
        }
        Label {
            visible: !drawing.narrow // the slider says it
            anchors.right: parent.right
            text: drawing.controller.layerWords
            quiet: true
        }
        Slider {
            label: drawing.controller.layerWords
            from: 1
            to: Math.max(1, drawing.controller.layers)
            value: drawing.controller.layer
            onMoved: drawing.controller.layer = value
        }
    }
    Label {
        id: fillerWords
        visible: !drawing.bare
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: 24
        anchors.bottomMargin: 16
        text: drawing.controller.filler
        quiet: true
        wrapMode: Text.Wrap
        maximumLineCount: 2
        verticalAlignment: Text.AlignBottom
    }
}
