#pragma once
// What mending did or why it failed, each step called as the window calls it.

#include <QString>
#include <QStringList>

#include "app/desk/session/checked_plan.hpp"

namespace wrapgauge {

QString step_title(MendKind kind);

// Of a body that was read: a line for each step of mending, then what else there is to say.
QStringList body_words(const ReadBody& read);

// Why there is no body; `checked` has such a problem.
QString body_problem_words(const CheckedPlan& checked);

}  // namespace wrapgauge
