// One thing asked of a part of a rate sheet: typed, or ticked where there is nothing to type.
import QtQuick
import Stowbench.Style

Loader {
    id: asked

    property var question // RateQuestion
    property string value: ""
    property string of: "" // what it is asked of
    property bool faulty: false

    signal answered(string typed)

    visible: active
    sourceComponent: question.alone ? ticked : typed

    Component {
        id: typed
        Field {
            width: asked.question.room
            label: asked.question.label
            text: asked.value
            unit: asked.question.unit
            placeholder: asked.question.example
            input.label: asked.of + ": " + label
            input.fault: asked.faulty
            input.onTextEdited: asked.answered(input.text)
        }
    }
    Component {
        id: ticked
        Item { // its box stands beside the boxes to type in, not beside their labels
            implicitWidth: Math.ceil(tick.implicitWidth) // what follows it stands on whole pixels
            implicitHeight: tick.implicitHeight + 20
            CheckBox {
                id: tick
                y: parent.height - height
                text: asked.question.label
                checked: asked.value !== ""
                onToggled: asked.answered(checked ? asked.question.word : "")
            }
        }
    }
}
