// One good, to read and to change.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Panel {
    id: panel

    required property GoodsController controller

    sheetWidth: 640

    readonly property var shapes: ["block", "cylinder", "sheet", "soft"]
    readonly property var turnRules: ["any", "upright", "flat", "fixed"]

    function fill(good: var) {
        code.text = good.code || "";
        code.readOnly = !!good.code;
        name.text = good.name || "";
        shape.currentIndex = Math.max(0, shapes.indexOf(good.shape || "block"));
        first.text = good.first || "";
        second.text = good.second || "";
        third.text = good.third || "";
        weight.text = good.weight || "";
        spread.text = good.spread || "";
        turns.currentIndex = Math.max(0, turnRules.indexOf(good.turns || "any"));
        cushion.text = good.cushion || "";
        fragile.checked = good.fragile === true;
        liquid.checked = good.liquid === true;
        shelf.text = good.shelf || "";
        pieces.text = good.pieces || "";
        lowest.text = good.lowest || "";
        gtin.text = good.gtin || "";
        price.text = good.price || "";
        customs.text = good.customsWords || "";
        hs.text = good.hsCode || "";
        origin.text = good.origin || "";
        wrapping.text = good.wrapping || "";
        fault.text = "";
    }
    function begin() {
        title = qsTr("New good");
        fill({});
        open();
        code.forceActiveFocus();
    }
    function show(row: int) {
        if (row < 0) return;
        const good = controller.good(row);
        title = good.name;
        fill(good);
        open();
        name.forceActiveFocus();
    }
    function keep() {
        fault.text = controller.keep({
            code: code.text,
            fresh: !code.readOnly,
            name: name.text,
            shape: shapes[shape.currentIndex],
            first: first.text,
            second: second.text,
            third: third.text,
            weight: weight.text,
            spread: spread.text,
            turns: turnRules[turns.currentIndex],
            cushion: cushion.text,
            fragile: fragile.checked,
            liquid: liquid.checked,
            shelf: shelf.text,
            pieces: pieces.text,
            lowest: lowest.text,
            gtin: gtin.text,
            price: price.text,
            customsWords: customs.text,
            hsCode: hs.text,
            origin: origin.text,
            wrapping: wrapping.text
        });
        if (fault.text === "") close();
    }

    Shortcut {
        enabled: panel.visible
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        onActivated: panel.keep()
    }

    GridLayout {
        columns: 6
        columnSpacing: 8
        rowSpacing: 12
        Layout.fillWidth: true
        Layout.topMargin: -12

        Repeater { // all six are equally wide
            model: 6
            Item {
                Layout.fillWidth: true
                Layout.preferredWidth: 64
            }
        }

        Field {
            id: code
            label: qsTr("Code")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: name
            label: qsTr("Name")
            Layout.columnSpan: 4
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Choice {
            id: shape
            label: qsTr("Shape")
            title: qsTr("Shape, of the largest piece")
            model: [qsTr("block"), qsTr("round, standing"), qsTr("sheet"), qsTr("soft")]
            Layout.columnSpan: 3
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Choice {
            id: turns
            label: qsTr("May be turned")
            title: qsTr("May be turned")
            model: [qsTr("any way"), qsTr("this way up"), qsTr("lying flat"), qsTr("not at all")]
            Layout.columnSpan: 3
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: first
            label: [qsTr("Length"), qsTr("Diameter"), qsTr("Length"), qsTr("Volume")][shape.currentIndex]
            unit: shape.currentIndex === 3 ? qsTr("L") : qsTr("mm")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: second
            label: [qsTr("Width"), qsTr("Height"), qsTr("Width"), qsTr("Never thinner than")][shape.currentIndex]
            unit: qsTr("mm")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: third
            visible: shape.currentIndex === 0 || shape.currentIndex === 2
            label: shape.currentIndex === 2 ? qsTr("Thickness") : qsTr("Height")
            unit: qsTr("mm")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: weight
            label: qsTr("Weight of one")
            unit: qsTr("g")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: spread
            label: qsTr("Give or take")
            unit: qsTr("g")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: cushion
            label: qsTr("Cushion all round")
            unit: qsTr("mm")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        CheckBox {
            id: fragile
            text: qsTr("fragile")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        CheckBox {
            id: liquid
            text: qsTr("liquid")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: wrapping
            label: qsTr("Wrapping")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: shelf
            label: qsTr("Shelf place")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: pieces
            label: qsTr("Pieces there")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: lowest
            label: qsTr("Make more below")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: price
            label: qsTr("Price")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: gtin
            label: qsTr("GTIN")
            Layout.columnSpan: 4
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: customs
            label: qsTr("Customs words")
            Layout.columnSpan: 3
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: hs
            label: qsTr("HS code")
            Layout.columnSpan: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
        Field {
            id: origin
            label: qsTr("Origin")
            Layout.fillWidth: true
            Layout.preferredWidth: 64
        }
    }
    buttons: [
        Button {
            primary: true
            text: qsTr("Keep")
            keyHint: qsTr("Ctrl Enter")
            onClicked: panel.keep()
        },
        FaultWord {
            id: fault
        }
    ]
}
