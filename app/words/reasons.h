// The words for every reason core gives: one function a reason, so that screen, paper and command line say the same.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/check.h"
#include "core/intake/problem.h"
#include "core/planning/plan.h"
#include "core/postage/quote.h"
#include "core/shop/orders.h"

#include <QString>

namespace stow::words {

QString reason(const fitting::Refusal& refusal);        // "0.8 mm short", "does not go in: proven"
QString reason(const planning::PassedOver& passed);     // the same, and "none left", "4.10 dearer"
QString violation(const fitting::Violation& violation); // "bottle 2 overlaps jar 1 by 0.1 mm"
QString reason(const postage::Refused& refused);        // "26 mm thick: a letter takes 25"
QString stuck(const planning::StuckOrder& stuck);       // "2 of INK-SEA missing"
QString what_is_wrong(const intake::Problem& problem);  // "“abc” is not a number"
QString what_is_wrong(const intake::Problem& problem); // "“x” is not a number"
QString problem(const intake::Problem& problem);        // "orders.csv, row 4, weight: ... This row was left out."
QString finding(const shop::OrderFinding& finding);     // "the postcode does not look right"
QString fault(const postage::SheetProblem& problem);
QString state(shop::OrderState state);
QString state(shop::ParcelState state);
QString preference(planning::Preference preference); // "smallest box first"

} // namespace stow::words
