// What the drawing items draw: values that controllers make and QML only hands on.
#pragma once

#include <QString> // first: moc cannot read <concepts> before it
#include <QtQml/qqmlregistration.h>

#include "core/papers/chart.h"
#include "core/papers/drawing.h"

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace stow::view {

// The outers of one order on one floor line, smallest first, the chosen one last.
struct OuterRowScene {
    Q_GADGET
    QML_ANONYMOUS
public:
    struct Outer {
        papers::Arrangement arrangement; // of a refused one: empty
        papers::Standing standing = papers::Standing::chosen;
        std::optional<Size> stayed_out;
        QString name, words; // "S2", "0.8 mm short"
        bool good = false;   // the words say something good
    };
    std::vector<Outer> outers;
    QString sentence; // for the screen reader
};

// How one parcel goes together.
struct ParcelScene {
    Q_GADGET
    QML_ANONYMOUS
public:
    std::shared_ptr<const papers::Arrangement> arrangement; // nothing: an empty bench
    QString sentence;
};

// Whatever fills the room it is given.
struct SketchScene {
    Q_GADGET
    QML_ANONYMOUS
public:
    std::function<papers::DisplayList(papers::Extent, const papers::TextMeasure&)> draw; // nothing: nothing is drawn
    QString sentence;
};
SketchScene sketch_of(papers::Chart chart, QString sentence);

// The postage steps along the weight axis, the expected band and what the scale says. Grams.
struct RulerScene {
    Q_GADGET
    QML_ANONYMOUS
public:
    struct Step {
        double up_to = 0;
        QString price;
    };
    std::vector<Step> steps;
    double expected = 0, sigma = 0;
    std::optional<double> reading;
    std::optional<std::size_t> at_risk; // the step whose edge the band crosses
    bool stop = false;                  // the reading is wrong
    QString sentence;
};

} // namespace stow::view
