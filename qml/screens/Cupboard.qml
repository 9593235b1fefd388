// The cupboard: what she sells, what she packs with, what postage costs, what was, and how this house works.
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

FocusScope {
    id: screen

    required property CupboardController controller
    property int shelf: 0
    property bool drafting: false
    readonly property Item here: pages.count > 0 ? pages.itemAt(shelf) : null

    function countDrafts() {
        let any = false;
        for (let i = 0; i < pages.count; ++i) any = any || pages.itemAt(i).drafting;
        drafting = any;
    }
    function begin(step: int, file: bool) { // one of the first steps: a new one there, or from a file
        turnTo([4, 0, 1, 2][step]); // workshop, goods, supplies, rates
        here.item.begin(file && step !== 2); // supplies of her own are typed
    }
    onShelfChanged: controller.shelf = shelf
    Component.onCompleted: controller.shelf = shelf

    function turnTo(which: int) {
        shelf = which;
        here.item.forceActiveFocus();
    }

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) return;
        if (event.key >= Qt.Key_1 && event.key <= Qt.Key_7) {
            event.accepted = true;
            screen.turnTo(event.key - Qt.Key_1);
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        Chapters {
            Layout.leftMargin: Math.min(Theme.page, screen.width / 40) - 8
            Layout.topMargin: tight ? 0 : 8
            tight: screen.width < 800
            names: [qsTr("Goods"), qsTr("Supplies"), qsTr("Rate sheets"), qsTr("Records"), qsTr("House"), qsTr("Sending"), qsTr("Before the sale")]
            current: screen.shelf
            onChosen: index => screen.turnTo(index)
        }
        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Repeater {
                id: pages
                model: [goods, supplies, rates, records, house, sending, beforeSale]
                Stay {
                    required property int index
                    required property var modelData
                    anchors.fill: parent
                    current: screen.shelf === index
                    sourceComponent: modelData
                    onDraftingChanged: screen.countDrafts()
                }
            }
        }
    }

    Component {
        id: goods
        Goods {
            controller: screen.controller.goods
        }
    }
    Component {
        id: supplies
        Supplies {
            controller: screen.controller.supplies
            sizes: screen.controller.sizes
            card: screen.controller.supplyCard
            paperBoxes: screen.controller.paperBoxes
        }
    }
    Component {
        id: rates
        Rates {
            controller: screen.controller.rates
        }
    }
    Component {
        id: records
        Records {
            controller: screen.controller.records
        }
    }
    Component {
        id: house
        House {
            controller: screen.controller.house
        }
    }
    Component {
        id: sending
        Sending {
            controller: screen.controller.sending
        }
    }
    Component {
        id: beforeSale
        BeforeSale {
            controller: screen.controller.beforeSale
        }
    }
}
