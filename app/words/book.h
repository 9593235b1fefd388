// Words for what the shop book answers.
#pragma once

#include "core/book/backup.h"
#include "core/book/book.h"
#include "core/book/steps.h"
#include "core/book/verify.h"

#include <QString>

namespace stow::words {

QString problem(const book::OpenProblem& problem);
QString problem(const book::BackupProblem& problem);
QString copy_refused(const book::OpenProblem& problem); // of a copy that was to be restored or looked into
QString failure(const book::BookFailure& failure);      // the step under way was not kept
QString refused(const book::Refused& refused);          // "parcel 2611-017 is packed already"
QString step(const book::Step& step);                   // "order 1042 called off"
QString finding(const book::Finding& finding);
QString may_still_show(const std::filesystem::path& copy); // of a copy in which nobody could be erased

} // namespace stow::words
