#include "app/desk/window/bench_step.hpp"

#include <QFileDialog>
#include <algorithm>
#include <system_error>

#include "app/desk/session/bench_folder.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/window/fine_settings.hpp"
#include "app/desk/window/signed_words.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/bench/fit_report.hpp"
#include "model/core/clean_text.hpp"
#include "model/core/file.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

bool is_benching(const SessionState& state) {
  return state.running &&
         (state.running->kind == RunKind::kBenchSheet || state.running->kind == RunKind::kBenchFit);
}

int count_of(const Readings& readings, ReadingKind kind, bool read_alone) {
  return static_cast<int>(std::count_if(readings.rows.begin(), readings.rows.end(), [&](const Reading& row) {
    return row.kind == kind && (!read_alone || row.is_read());
  }));
}

QString sentences(const std::vector<Phrase>& words) {
  QStringList all;
  for (const Phrase& one : words) all.push_back(text(one));
  return all.join(QChar('\n'));
}

// A row each; none: not fitted.
std::vector<std::optional<double>> fitted_of(const std::shared_ptr<const BenchResult>& fit,
                                             const Readings& readings) {
  std::vector<std::optional<double>> fitted(readings.rows.size());
  if (!fit) return fitted;
  for (const FittedReading& one : fit->fit.readings)
    for (std::size_t row = 0; row < readings.rows.size(); ++row)
      if (readings.rows[row].id == fit->readings.rows[one.row].id) fitted[row] = one.fitted;
  return fitted;
}

bool is_outlier(const std::shared_ptr<const BenchResult>& fit, const std::string& id) {
  if (!fit) return false;
  return std::any_of(fit->fit.readings.begin(), fit->fit.readings.end(), [&](const FittedReading& one) {
    return one.outlier && fit->readings.rows[one.row].id == id;
  });
}

}  // namespace

BenchStep::BenchStep(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      calibration_(words_label({}, this)),
      where_(words_label({}, this)),
      steps_(words_label({}, this)),
      refused_(refused_label(this)),
      fit_words_(words_label({}, this)),
      propose_(action_button(this, tr("Propose readings"), [this] { propose(); })),
      open_(action_button(this, tr("Open readings…"), [this] { ask_for_readings(); })),
      fit_(action_button(this, tr("Fit to the readings"), [this] { fit(); })),
      keep_(action_button(
          this, tr("Use the fit"), [this] { keep(); }, tr("Use the fit as the plan's calibration"))),
      leave_(action_button(
          this, tr("Leave it out"), [this] { leave_out(); }, tr("Take the calibration out of the plan"))),
      kind_(new Choice(tr("Kind of reading"), this)),
      table_(new ReadingTable(this)),
      of_kind_(new QWidget(this)),
      error_(new LineField(tr("Standard error of the instrument in per cent"), of_kind_)),
      instrument_(new LineField(tr("Instrument"), of_kind_)),
      date_(new LineField(tr("Date of the readings"), this)),
      remark_(new LineField(tr("Remark on the readings"), this)),
      agreement_(new AgreementView(this)) {
  writer_.setMaxThreadCount(1);
  fit_words_->setObjectName(QStringLiteral("fit words"));
  calibration_->setObjectName(QStringLiteral("calibration words"));
  propose_->setToolTip(
      tr("Predicts what each reading should be, and writes the sheet to print and the table."));
  instrument_->setPlaceholderText(tr("what it was read with"));
  date_->setPlaceholderText(QStringLiteral("2026-11-29"));
  remark_->setPlaceholderText(tr("invented readings say so here"));
  auto* kind_form = column_form(of_kind_);
  kind_form->addRow(tr("Instrument"), instrument_);
  kind_form->addRow(tr("Error, %"), error_);
  auto* more = new QWidget(this);
  auto* more_form = column_form(more);
  more_form->addRow(tr("Date"), date_);
  more_form->addRow(tr("Remark"), remark_);
  QVBoxLayout* column = plain_column(this);
  column->addWidget(calibration_);
  add_row(*column, {propose_, open_});
  for (QWidget* part : std::initializer_list<QWidget*>{
           where_, kind_, steps_, table_, refused_, of_kind_,
           new FineSettings(more, tr("date and remark"), this, tr("Date and remark")), agreement_, fit_,
           fit_words_})
    column->addWidget(part);
  add_row(*column, {keep_, leave_});
  connect(kind_, &Choice::chosen, this, [this] { show_sheet(); });
  connect(table_, &ReadingTable::typed, this, &BenchStep::take_typed);
  connect(table_, &ReadingTable::confirmed, this, [this](std::size_t row, bool is_confirmed) {
    take_sheet(sheet_->with_confirmed(row, is_confirmed, layout()));
  });
  connect(error_, &QLineEdit::editingFinished, this,
          [this] { take_key(QStringLiteral("error_percent "), *error_); });
  connect(instrument_, &QLineEdit::editingFinished, this,
          [this] { take_key(QStringLiteral("instrument "), *instrument_); });
  connect(date_, &QLineEdit::editingFinished, this, [this] { take_key(QStringLiteral("date"), *date_); });
  connect(remark_, &QLineEdit::editingFinished, this,
          [this] { take_key(QStringLiteral("remark"), *remark_); });
  // How far a run is shows nothing anew elsewhere in a form.
  connect(&session, &PlanSession::changed, this, [this](const SessionState& before) {
    if (isVisible() && is_benching(now()) != is_benching(before)) show_state(now(), before);
  });
}

// What is typed is on its way to the disk.
BenchStep::~BenchStep() {
  writer_.waitForDone();
}

ReadingKind BenchStep::shown_kind() const {
  return static_cast<ReadingKind>(std::max(kind_->currentData().toInt(), 0));
}

QString BenchStep::kind_key(const QString& begins) const {
  if (!begins.endsWith(QChar(' '))) return begins;
  return begins + QString::fromLatin1(kind_name(shown_kind()).data());
}

bool BenchStep::is_plan_saved() {
  const auto is_saved = [this] { return !now().file.empty() && !now().modified; };
  if (!is_saved()) emit planFileWanted();
  return is_saved();
}

void BenchStep::propose() {
  if (!is_plan_saved()) return;
  if (const auto left = leave_readings(bench_folder(now().file)); !left)
    return void(emit problemMet(left.problem()));
  session().propose_readings();
}

void BenchStep::ask_for_readings() {
  const QString file = QFileDialog::getOpenFileName(this, tr("Open readings"),
                                                    QString::fromStdString(now().file.parent_path().string()),
                                                    tr("Readings (*.csv)"));
  if (!file.isEmpty()) open_readings(std::filesystem::absolute(file.toStdString()));
}

void BenchStep::open_readings(const std::filesystem::path& file) {
  writer_.waitForDone();
  const auto bytes = read_file(file);
  if (!bytes) return void(emit problemMet(bytes.problem()));
  auto sheet = ReadingsSheet::of(*bytes, clean_text(file.filename().string()), layout());
  if (!sheet) return void(emit problemMet(sheet.problem()));
  file_ = file;
  sheet_ = std::move(sheet).value();
  show_sheet();
}

// Those that lie beside a plan that was opened.
void BenchStep::look_for_readings(const SessionState& now) {
  if (now.file == looked_beside_) return;
  looked_beside_ = now.file;
  sheet_.reset();
  file_.clear();
  std::error_code error;
  const auto file = bench_folder(now.file) / kReadingsName;
  if (!now.file.empty() && std::filesystem::exists(file, error)) open_readings(file);
  show_sheet();
}

void BenchStep::take_proposed(const SessionState& now) {
  const auto& proposed = now.newest_sheet;
  if (!proposed.sheet || proposed.sheet == proposed_ || proposed.plan != now.plan || !now.check->job) return;
  proposed_ = proposed.sheet;
  const auto folder = bench_folder(now.file);
  if (const auto written = write_bench_sheet(*proposed_, *now.check->job, folder); !written)
    return void(emit problemMet(written.problem()));
  open_readings(folder / kReadingsName);
}

void BenchStep::take_sheet(const Result<ReadingsSheet>& changed) {
  refused_->setVisible(!changed.ok());
  if (changed)
    sheet_ = *changed, write_sheet();
  else
    refused_->setText(text(changed.problem()));
  show_sheet();
}

void BenchStep::take_typed(std::size_t row, const QString& typed) {
  take_sheet(sheet_->with_read(row, typed.toStdString(), layout()));
}

void BenchStep::take_key(const QString& begins, const LineField& field) {
  if (!sheet_) return;
  const std::string key = kind_key(begins).toStdString(), value = field.text().trimmed().toStdString();
  if (sheet_->key_value(key) != value) take_sheet(sheet_->with_key(key, value, layout()));
}

// In the order of typing; a failure is said.
void BenchStep::write_sheet() {
  writer_.start([this, file = file_, bytes = sheet_->bytes()] {
    const auto written = write_file_atomically(file, bytes);
    if (!written) QMetaObject::invokeMethod(this, [this, written] { emit problemMet(written.problem()); });
  });
}

void BenchStep::fit() {
  if (!is_plan_saved() || !sheet_) return;
  session().fit_readings(without_unread(sheet_->readings()));
}

// Null where plan or readings were changed since.
std::shared_ptr<const BenchResult> BenchStep::fit_of_these() const {
  const auto fit = now().fit();
  return fit && sheet_ && fit->readings.hash == sheet_->readings().hash ? fit : nullptr;
}

void BenchStep::keep() {
  const auto fit = fit_of_these();
  if (!fit || !now().check || !now().check->job || !is_plan_saved()) return;
  writer_.waitForDone();
  const auto file = write_bench_fit(*fit, *now().check->job, bench_folder(now().file), file_);
  if (!file) return void(emit problemMet(file.problem()));
  change(tr("Calibration"), {}, [&](Plan& plan) { plan.calibration = *file; });
}

void BenchStep::leave_out() {
  change(tr("Leave the calibration out"), {}, [](Plan& plan) { plan.calibration.reset(); });
}

void BenchStep::show_kinds() {
  const QVariant chosen = kind_->currentData();
  kind_->clear();
  if (sheet_)
    for (int k = 0; k < kReadingKinds; ++k) {
      const auto kind = static_cast<ReadingKind>(k);
      const int all = count_of(sheet_->readings(), kind, false);
      if (all == 0 || kind == ReadingKind::kMap) continue;
      kind_->add(tr("%1: %2 of %3 read")
                     .arg(text(kind_title(kind)))
                     .arg(count_of(sheet_->readings(), kind, true))
                     .arg(all),
                 k);
    }
  kind_->show_value(kind_->findData(chosen) < 0 && kind_->count() > 0 ? kind_->itemData(0) : chosen);
}

void BenchStep::show_sheet() {
  show_kinds();
  const bool there = kind_->count() > 0;
  for (QWidget* part : std::initializer_list<QWidget*>{kind_, steps_, table_, of_kind_, fit_})
    part->setVisible(there);
  where_->setText(sheet_ ? tr("Typed values go to %1 at once.").arg(text(file_.filename().string()))
                         : tr("Off the body first: readings on a person come last, within the limits, under "
                              "the study's rules."));
  if (sheet_ && !sheet_->readings().remark.empty())
    where_->setText(where_->text() + QChar(' ') + text(sheet_->readings().remark));
  where_->setToolTip(text(file_.string()));
  if (!there) return agreement_->hide();
  const ReadingKind kind = shown_kind();
  steps_->setText(text(kind_steps(kind)));
  table_->show_rows(*sheet_, kind, fitted_of(fit_of_these(), sheet_->readings()));
  instrument_->show_text(text(sheet_->key_value(kind_key(QStringLiteral("instrument ")).toStdString())));
  error_->show_text(text(sheet_->key_value(kind_key(QStringLiteral("error_percent ")).toStdString())));
  error_->setPlaceholderText(
      tr("%1 is taken").arg(figures_text(number_text(100.0 * default_error(kind), 3))));
  date_->show_text(text(sheet_->key_value("date")));
  remark_->show_text(text(sheet_->key_value("remark")));
  show_agreement();
  show_fit();
  enable_buttons();
}

void BenchStep::show_agreement() {
  const auto fit = fit_of_these();
  const auto fitted = fitted_of(fit, sheet_->readings());
  std::vector<AgreementMark> marks;
  for (std::size_t row = 0; row < fitted.size(); ++row) {
    const Reading& reading = sheet_->readings().rows[row];
    const auto predicted = fitted[row] ? fitted[row] : reading.predicted;
    if (reading.is_read() && predicted)
      marks.push_back({text(reading.id), static_cast<int>(reading.kind), read_si(reading), *predicted,
                       reading.error, is_outlier(fit, reading.id)});
  }
  agreement_->show_marks(std::move(marks), fit ? tr("fitted") : tr("predicted"));
}

void BenchStep::show_calibration(const SessionState& now) {
  const StepState state = step_state(PlanStep::kBench, now);
  QString words =
      tr("Readings from your own device calibrate the model to it. Without them, predictions are multiplied "
         "by the model's usual factor.");
  if (now.check && now.check->calibration_problem) words = state.findings.join(QChar('\n'));
  if (now.check && now.check->job)
    if (const auto& calibration = now.check->job->resources.limits.calibration)
      words =
          tr("Predictions are multiplied by %1, from %2 readings of this device; the fit's report says why.")
              .arg(figures_text(number_text(calibration->model_factor, 3)))
              .arg(calibration->readings);
  calibration_->setText(words);
  leave_->setVisible(now.plan->calibration.has_value());
}

void BenchStep::show_fit() {
  const auto fit = fit_of_these();
  fit_words_->setVisible(fit || now().newest_fit.fit);
  fit_words_->setText(fit ? sentences(fit_words(*fit))
                          : tr("Plan or readings were changed since the fit: fit again."));
  keep_->setVisible(fit != nullptr);
}

void BenchStep::enable_buttons() {
  const bool may_read = now().check && now().check->can_be_read() && !is_benching(now());
  propose_->setEnabled(may_read);
  open_->setEnabled(has_layout(plan()));
  fit_->setEnabled(may_read && sheet_ && !without_unread(sheet_->readings()).rows.empty());
}

void BenchStep::show_state(const SessionState& now, const SessionState& before) {
  look_for_readings(now);
  take_proposed(now);
  if (sheet_ && before.plan && now.plan->layout != before.plan->layout)
    looked_beside_.clear(), look_for_readings(now);
  enable_buttons();
  show_calibration(now);
  if (now.newest_fit != before.newest_fit || now.plan != before.plan) show_sheet();
  show_fit();
}

}  // namespace wrapgauge
