#include "app/desk/session/plan_files.hpp"

#include <QCryptographicHash>
#include <nlohmann/json.hpp>
#include <system_error>

#include "model/core/json_object.hpp"
#include "model/plan/plan_from_json.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;

constexpr const char* kKeys[] = {"/body/file", "/layout/file", "/layout/drawing", "/layout/map",
                                 "/limits/file"};

fs::path seen_from(const fs::path& new_folder, const fs::path& old_folder, const fs::path& file) {
  if (file.empty()) return file;
  const fs::path whole = file.is_absolute() ? file : old_folder / file;
  if (!whole.is_absolute()) return file;  // a plan of no folder: nobody knows from where
  std::error_code error;
  const fs::path relative = fs::relative(whole, new_folder, error);
  return error || relative.empty() ? whole : relative;
}

// Of a map that is written out in the plan, or of a place that names no file: null.
const std::string* named_at(const nlohmann::json& plan, const char* key) {
  const nlohmann::json::json_pointer at(key);
  if (!plan.is_object() || !plan.contains(at)) return nullptr;
  return plan.at(at).get_ptr<const std::string*>();
}

}  // namespace

Plan with_files_seen_from(Plan plan, const fs::path& folder) {
  const auto move = [&](fs::path& file) { file = seen_from(folder, plan.folder, file); };
  if (auto* body = std::get_if<BodyFile>(&plan.body)) move(body->file);
  if (plan.limits_file) move(*plan.limits_file);
  if (plan.calibration) move(*plan.calibration);
  if (plan.layout_file) move(*plan.layout_file);
  if (plan.layout_drawing) {
    move(plan.layout_drawing->file);
    if (auto* map = std::get_if<fs::path>(&plan.layout_drawing->map)) move(*map);
  }
  plan.folder = folder;
  return plan;
}

std::vector<MissingFile> missing_files(const fs::path& plan_file) {
  std::vector<MissingFile> missing;
  const auto plan = read_json(plan_file);
  if (!plan) return missing;
  for (const char* key : kKeys) {
    const std::string* named = named_at(*plan, key);
    std::error_code error;
    if (named && !named->empty() && !fs::exists(plan_file.parent_path() / *named, error))
      missing.push_back({key, *named});
  }
  return missing;
}

Result<Plan> read_plan_with(const fs::path& plan_file, const std::map<std::string, fs::path>& found) {
  auto read = read_json(plan_file);
  if (!read) return read.problem();
  nlohmann::json plan = std::move(read).value();
  for (const auto& [key, file] : found)
    if (named_at(plan, key.c_str())) plan.at(nlohmann::json::json_pointer(key)) = file.string();
  return plan_from_json(plan, plan_file.parent_path(), plan_file.filename().string());
}

PlanClaim::PlanClaim(const fs::path& folder, const fs::path& plan_file) {
  std::error_code error;
  fs::create_directories(folder, error);
  const fs::path whole = fs::weakly_canonical(plan_file, error);
  const QByteArray named = QByteArray::fromStdString((error ? plan_file : whole).string());
  const QByteArray name = QCryptographicHash::hash(named, QCryptographicHash::Sha1).toHex();
  lock_ = std::make_unique<QLockFile>(QString::fromStdString((folder / name.toStdString()).string()));
  lock_->setStaleLockTime(0);  // held as long as its window runs
  ours_ = lock_->tryLock(0);
}

}  // namespace wrapgauge
