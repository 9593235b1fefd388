// One order: what it says, what is wrong with it, and what can be done.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Stowbench.App
import Stowbench.Style

Sheet {
    id: pane

    required property ArrivalsController controller
    readonly property var order: controller.detail
    readonly property string heading: order.number ? qsTr("Order %1").arg(order.number) : ""
    property bool mending: false
    property int matchingLine: -1
    readonly property bool typing: mending || matchingLine >= 0
    readonly property bool roomy: !typing || height > 300 // for more than what is typed

    signal asideAsked
    signal typed // kept or left: the keys are the list's again

    function mend() {
        mending = true;
        address.take(order);
        address.forceActiveFocus();
    }
    function match(): bool {
        for (let row = 0; row < controller.lines.count; ++row) {
            if (controller.lines.value(row, "unmatched")) {
                matchingLine = controller.lines.value(row, "line");
                search.text = "";
                search.forceActiveFocus();
                return true;
            }
        }
        return false;
    }
    function leave() {
        mending = false;
        matchingLine = -1;
        typed();
    }
    Keys.onEscapePressed: event => {
        if (typing) leave();
        else event.accepted = false;
    }
    function keepAddress() {
        const fault = controller.mendAddress(controller.current, address.values());
        address.fault = fault;
        if (fault === "") mending = false;
    }

    Connections {
        target: pane.controller
        function onCurrentChanged() {
            const typing = pane.mending || pane.matchingLine >= 0;
            pane.mending = false;
            pane.matchingLine = -1;
            if (typing) pane.typed();
        }
    }

    Label {
        anchors.centerIn: parent
        visible: !pane.order.number
        text: qsTr("Choose an order")
        quiet: true
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: pane.roomy ? 24 : 12
        anchors.topMargin: pane.roomy ? 20 : 8
        spacing: 12
        visible: pane.order.number !== undefined

        ColumnLayout {
            visible: pane.roomy
            spacing: 2
            Layout.fillWidth: true
            Heading {
                text: pane.heading
                Layout.fillWidth: true
            }
            Label {
                text: [pane.order.shop, pane.order.date, pane.order.state].filter(words => !!words).join(" · ")
                quiet: true
                font.pixelSize: Theme.small
                Layout.fillWidth: true
            }
        }
        Repeater {
            model: pane.order.problems || []
            Label {
                required property string modelData
                visible: pane.roomy
                text: modelData
                color: modelData.startsWith("×") ? Theme.brick : Theme.ochreText
                font.bold: true
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
        }

        Flickable {
            id: flick
            Layout.fillWidth: true
            Layout.fillHeight: true
            contentHeight: body.implicitHeight
            clip: true
            boundsBehavior: Flickable.StopAtBounds

            ColumnLayout {
                id: body
                width: flick.width
                spacing: 12

                Label {
                    visible: !pane.mending
                    text: pane.order.address || ""
                    wrapMode: Text.Wrap
                    lineHeight: 1.25
                    Layout.fillWidth: true
                }
                AddressCard {
                    id: address
                    visible: pane.mending
                    Layout.fillWidth: true
                    onAccepted: pane.keepAddress()
                }
                RowLayout {
                    visible: pane.mending
                    spacing: 8
                    Button {
                        text: qsTr("Keep address")
                        keyHint: qsTr("Enter")
                        primary: true
                        onClicked: pane.keepAddress()
                    }
                    Button {
                        text: qsTr("Leave it")
                        keyHint: qsTr("Esc")
                        onClicked: pane.leave()
                    }
                }
                Rule {
                    Layout.fillWidth: true
                }
                Repeater {
                    model: pane.controller.lines
                    ColumnLayout {
                        id: line
                        required property int index
                        required property int count
                        required property string title
                        required property string good
                        required property string personal
                        required property bool unmatched
                        spacing: 2
                        Layout.fillWidth: true
                        RowLayout {
                            spacing: 8
                            Layout.fillWidth: true
                            Label {
                                text: line.count + " ×"
                                font.bold: true
                                Layout.preferredWidth: 36
                                horizontalAlignment: Text.AlignRight
                            }
                            Label {
                                text: line.title
                                wrapMode: Text.Wrap
                                Layout.fillWidth: true
                            }
                        }
                        Label {
                            Layout.leftMargin: 44
                            Layout.fillWidth: true
                            text: line.unmatched ? qsTr("× which good is this?") : line.good
                            color: line.unmatched ? Theme.brick : Theme.secondInk
                            font.pixelSize: Theme.small
                            font.bold: line.unmatched
                        }
                        Label {
                            Layout.leftMargin: 44
                            Layout.fillWidth: true
                            visible: text !== ""
                            text: line.personal ? qsTr("“%1”").arg(line.personal) : ""
                            font.italic: true
                            font.pixelSize: Theme.small
                        }
                    }
                }
                Button {
                    visible: pane.order.unmatched === true && pane.matchingLine < 0
                    text: qsTr("Say which good it is")
                    keyHint: "M"
                    onClicked: pane.match()
                }
                TextField {
                    id: search
                    visible: pane.matchingLine >= 0
                    Layout.fillWidth: true
                    placeholderText: qsTr("Type code or name")
                    label: qsTr("Which good is this?")
                    onTextChanged: pane.controller.goods.filter = text
                    onAccepted: pane.controller.matchLine(pane.matchingLine, pane.controller.goods.value(matches.currentIndex, "code"))
                    Keys.onDownPressed: matches.incrementCurrentIndex()
                    Keys.onUpPressed: matches.decrementCurrentIndex()
                }
                ListView {
                    id: matches
                    visible: pane.matchingLine >= 0
                    Layout.fillWidth: true
                    implicitHeight: Math.min(contentHeight, 5 * Theme.target)
                    clip: true
                    model: pane.controller.goods
                    onCountChanged: if (currentIndex < 0 && count > 0) currentIndex = 0
                    delegate: TableRow {
                        id: choice
                        required property int index
                        required property string code
                        required property string name
                        implicitHeight: Theme.target
                        current: matches.currentIndex === index
                        sentence: name
                        onPressed: pane.controller.matchLine(pane.matchingLine, code)
                        Label {
                            anchors.verticalCenter: parent.verticalCenter
                            width: parent.width
                            text: choice.code + "   " + choice.name
                        }
                    }
                }
                Rule {
                    visible: noteText.visible || giftText.visible
                    Layout.fillWidth: true
                }
                Label {
                    id: noteText
                    visible: text !== ""
                    text: pane.order.note ? qsTr("Note: %1").arg(pane.order.note) : ""
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
                Label {
                    id: giftText
                    visible: text !== ""
                    text: pane.order.gift || ""
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
            }
        }

        Flow {
            visible: !pane.mending
            Layout.fillWidth: true
            spacing: 8
            Button {
                visible: pane.order.canCheck === true
                text: qsTr("Ready")
                keyHint: qsTr("Enter")
                onClicked: pane.controller.check(pane.controller.current)
            }
            Button {
                visible: pane.order.unpaid === true
                text: qsTr("It is paid")
                keyHint: "P"
                onClicked: pane.controller.isPaid(pane.controller.current)
            }
            Button {
                visible: pane.order.canTakeBack === true
                text: qsTr("Take back")
                keyHint: "B"
                onClicked: pane.controller.takeBack(pane.controller.current)
            }
            Button {
                visible: pane.order.joinWords !== undefined && pane.order.joinWords !== ""
                text: pane.order.joinWords || ""
                keyHint: "J"
                onClicked: pane.controller.join(pane.controller.current)
            }
            Button {
                text: qsTr("Mend address")
                keyHint: "E"
                visible: !pane.mending
                onClicked: pane.mend()
            }
            Button {
                visible: pane.order.canTakeBack !== true
                text: qsTr("Set aside")
                keyHint: "S"
                onClicked: pane.asideAsked()
            }
            Button {
                visible: pane.order.canTakeBack !== true
                text: qsTr("Call off")
                keyHint: "X"
                onClicked: pane.controller.callOff(pane.controller.current)
            }
        }
    }
}
