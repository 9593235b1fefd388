#include "app/view/taken_words.h"

#include "app/view/text.h"
#include "app/words/reasons.h"

#include <QCoreApplication>

namespace stow::view {

namespace {
struct Say {
    Q_DECLARE_TR_FUNCTIONS(View)
};
} // namespace

QString taken_words(const TakenIn& taken)
{
    const QString counts =
        joined({Say::tr("%n new", nullptr, taken.fresh), Say::tr("%n changed", nullptr, taken.changed),
                Say::tr("%n known already", nullptr, taken.unchanged)},
               QStringLiteral(", "));
    QString said = taken.refused ? Say::tr("Nothing was taken in") : counts;
    if (!taken.problems.empty()) {
        said += QStringLiteral(" · ") + words::problem(taken.problems.front());
        const auto more = static_cast<int>(taken.problems.size()) - 1;
        if (more > 0) said += QStringLiteral(" · ") + Say::tr("%n more", nullptr, more);
    }
    return said;
}

} // namespace stow::view
