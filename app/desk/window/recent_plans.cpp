#include "app/desk/window/recent_plans.hpp"

#include <QFileInfo>
#include <QSettings>

namespace wrapgauge {
namespace {

const QString kKey = QStringLiteral("plans/recent");
constexpr int kMost = 8;

}  // namespace

QStringList recent_plans() {
  QStringList there;
  for (const QString& file : QSettings().value(kKey).toStringList())
    if (QFileInfo::exists(file)) there.push_back(file);
  return there;
}

void remember_recent(const QString& plan_file) {
  QStringList files = recent_plans();
  files.removeAll(plan_file);
  files.push_front(plan_file);
  QSettings().setValue(kKey, QStringList(files.mid(0, kMost)));
}

}  // namespace wrapgauge
