#pragma once
#include <QStringList>

namespace wrapgauge {

QStringList recent_plans();                      // newest first, those that still exist
void remember_recent(const QString& plan_file);  // at most eight

}  // namespace wrapgauge
