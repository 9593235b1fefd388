// Colours, type and space of the whole program, light and dark.
pragma Singleton
import QtQuick

QtObject {
    property bool dark: false

    readonly property color paper: dark ? "#15191E" : "#FAF8F4"
    readonly property color sheet: dark ? "#1C2228" : "#FFFFFF"
    readonly property color ink: dark ? "#ECE7DD" : "#1D2733"
    readonly property color secondInk: dark ? "#A9B2BB" : "#5B6672"
    readonly property color hairline: dark ? "#38414A" : "#D9D4CA"
    readonly property color border: dark ? "#76818B" : "#878D8E" // of things to press: 3:1 on paper
    readonly property color accent: dark ? "#5CC2AE" : "#0E6B5C"
    readonly property color accentPressed: dark ? "#7FD2C1" : "#0A5347"
    readonly property color accentInk: dark ? "#10211D" : "#FFFFFF"
    readonly property color accentTint: dark ? "#1E3A36" : "#E1EEEB"
    readonly property color ochre: dark ? "#D9A13F" : "#B7791F"
    readonly property color ochreText: dark ? "#E3B25C" : "#8A5A12" // 4.5:1, for words
    readonly property color ochreTint: dark ? "#3A2F1B" : "#F8EFDE"
    readonly property color brick: dark ? "#E58473" : "#A63A2B"
    readonly property color brickTint: dark ? "#40241F" : "#F7E4E0"

    readonly property string family: "Stow" // B612 under the name app/painting gives it
    readonly property int small: 13
    readonly property int body: 15
    readonly property int strong: 18
    readonly property int title: 24
    readonly property int now: 40   // what to do now, at the bench
    readonly property int shout: 64 // a full-screen word

    readonly property int unit: 8
    readonly property int page: 32  // left and right of every screen
    readonly property int target: 44
    readonly property int benchTarget: 60
    readonly property int radius: 4
    readonly property int motion: 120
}
