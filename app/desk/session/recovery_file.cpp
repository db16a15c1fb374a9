#include "app/desk/session/recovery_file.hpp"

#include <QDir>
#include <QFileInfo>
#include <QUuid>
#include <nlohmann/json.hpp>
#include <system_error>

#include "app/desk/session/checked_plan.hpp"
#include "model/core/file.hpp"
#include "model/plan/plan_from_json.hpp"
#include "model/plan/plan_to_json.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr const char* kEnding = ".recovery.json";

// Plan files always have a body and a layout: these stand where there is none yet, and are taken out again.
Plan with_stand_ins(Plan plan) {
  if (!has_body(plan)) plan.body = BodyForm{"cylinder", {}, {}};
  if (plan.name.empty()) plan.name = "plan";
  if (plan.layout.name.empty()) plan.layout.name = "layout";
  if (!has_layout(plan)) {
    plan.layout.outline_m = {{0.0, 0.0}, {0.1, 0.0}, {0.1, 0.1}, {0.0, 0.1}};
    plan.layout.skin_sheet = plan.layout.outer_sheet = {"00-30", 2.0 * mm, 1.0};
  }
  return plan;
}

QString lock_name(const std::filesystem::path& file) {
  return QString::fromStdString(file.string() + ".lock");
}

}  // namespace

std::string recovery_text(const RecoveredPlan& recovered) {
  ordered_json out{{"wrapgauge-recovery", 1},
                   {"file", recovered.file.string()},
                   {"folder", recovered.plan.folder.string()},
                   {"has_body", has_body(recovered.plan)},
                   {"has_layout", has_layout(recovered.plan)},
                   {"plan", plan_to_json(with_stand_ins(recovered.plan))}};
  return out.dump(1, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

Result<RecoveredPlan> recovered_from_text(const std::string& text) {
  const json value = json::parse(text, nullptr, false);
  if (!value.is_object() || value.value("wrapgauge-recovery", 0) != 1 || !value.contains("plan"))
    return bad_input(Phrase::worded("the recovery file is not one that this version of the program wrote."));
  auto plan = plan_from_json(value["plan"], value.value("folder", ""), "recovery file");
  if (!plan) return plan.problem();
  RecoveredPlan recovered{std::move(plan).value(), value.value("file", "")};
  if (!value.value("has_body", true)) recovered.plan.body = BodyFile{};
  if (!value.value("has_layout", true)) recovered.plan.layout = Layout{};
  return recovered;
}

RecoveryFile::RecoveryFile(std::filesystem::path folder) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  file_ = folder / (QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString() + kEnding);
  lock_ = std::make_unique<QLockFile>(lock_name(file_));
  lock_->setStaleLockTime(0);  // held as long as the process lives, however long that is
  lock_->tryLock(0);
}

RecoveryFile::~RecoveryFile() {
  remove();
}

void RecoveryFile::remove() const {
  std::error_code error;
  std::filesystem::remove(file_, error);
}

std::optional<RecoveredPlan> RecoveryFile::take_left_behind(const std::filesystem::path& folder) {
  const QDir dir(QString::fromStdString(folder.string()));
  const QFileInfoList files =
      dir.entryInfoList({QStringLiteral("*") + QString::fromLatin1(kEnding)}, QDir::Files, QDir::Time);
  for (const QFileInfo& info : files) {
    const std::filesystem::path file = info.absoluteFilePath().toStdString();
    QLockFile lock(lock_name(file));
    lock.setStaleLockTime(0);
    if (!lock.tryLock(0)) continue;  // its session is still running
    const auto text = read_file(file);
    if (!text) continue;
    auto recovered = recovered_from_text(*text);
    if (!recovered) continue;  // left where it is: nothing that someone made is thrown away unread
    std::error_code error;
    std::filesystem::remove(file, error);
    return std::move(recovered).value();
  }
  return std::nullopt;
}

}  // namespace wrapgauge
