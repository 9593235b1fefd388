// An address to fill in.
import QtQuick
import QtQuick.Layouts
import Stowbench.Style

FocusScope {
    id: card

    property string fault: ""

    signal accepted

    function first() { // wherever she was when it was last open
        name.forceActiveFocus();
    }
    function take(address: var) {
        name.text = address.name || "";
        street.text = address.street || "";
        postcode.text = address.postcode || "";
        town.text = address.town || "";
        country.text = address.country || "";
        fault = "";
    }
    function values(): var {
        return {
            name: name.text,
            street: street.text,
            postcode: postcode.text,
            town: town.text,
            country: country.text
        };
    }

    implicitHeight: grid.implicitHeight

    GridLayout {
        id: grid
        width: parent.width
        columns: 3
        columnSpacing: 8
        rowSpacing: 8
        Field {
            id: name
            label: qsTr("Name")
            focus: true
            Layout.columnSpan: 3
            Layout.fillWidth: true
            onAccepted: card.accepted()
        }
        Field {
            id: street
            label: qsTr("House and street")
            Layout.columnSpan: 3
            Layout.fillWidth: true
            onAccepted: card.accepted()
        }
        Field {
            id: postcode
            label: qsTr("Postcode")
            Layout.preferredWidth: 110
            onAccepted: card.accepted()
        }
        Field {
            id: town
            label: qsTr("Town")
            Layout.fillWidth: true
            onAccepted: card.accepted()
        }
        Field {
            id: country
            label: qsTr("Country")
            Layout.preferredWidth: 150
            onAccepted: card.accepted()
        }
        Label {
            Layout.columnSpan: 3
            Layout.fillWidth: true
            visible: card.fault !== ""
            text: "! " + card.fault
            color: Theme.brick
            wrapMode: Text.Wrap
        }
    }
}
