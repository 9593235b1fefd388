// What is asked of each part of a rate sheet, in words: the chapters of the panel, and of each word that a part may say
// (intake::part_words) its label, an example and its room.
#pragma once

#include "core/intake/rate_parts.h"

#include <QStringList>
#include <QVariantList>

#include <vector>

namespace stow::view {

struct RateChapter {
    const char* record;
    QString title;
    QString one; // what a part of it is called
    bool named = true;
    QString amount; // what its amount is; empty: it has none
    QString example;
};
std::vector<RateChapter> rate_chapters();

struct RateQuestion {
    Q_GADGET
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString example MEMBER example)
    Q_PROPERTY(QString unit MEMBER unit)
    Q_PROPERTY(int room MEMBER room)
    Q_PROPERTY(bool alone MEMBER alone)
    Q_PROPERTY(QString word MEMBER word)
    Q_PROPERTY(bool seldom MEMBER seldom)
public:
    QString label, example, unit;
    int room = 128;      // px
    bool alone = false;  // said or not; nothing is typed
    QString word;        // that stands for it being said
    bool seldom = false; // asked when she wants to see all
};
QVariantList rate_questions(const QString& record); // of RateQuestion, in the order of intake::part_words

// The values of a part as she reads and types them, in the same order: the days of the week are hers.
QString local_weekdays(const QString& text);
QStringList values_shown(const intake::TypedPart& part);
std::string details_typed(const std::string& record, const QStringList& typed);

} // namespace stow::view
