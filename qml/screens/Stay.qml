// A screen that is made when it is come to and goes when it is left, unless something half typed lies open in it.
import QtQuick

Loader {
    id: stay

    required property bool current
    property bool drafting: false // said by the screen

    active: current || drafting
    visible: current
    focus: current
    onLoaded: if (current) item.forceActiveFocus()
    onCurrentChanged: if (current && item) item.forceActiveFocus()

    Connections {
        target: stay.item
        ignoreUnknownSignals: true
        function onDraftingChanged() {
            stay.drafting = stay.item.drafting;
        }
    }
}
