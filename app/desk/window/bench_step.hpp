#pragma once
// Step Bench: the rows of a sheet to fill in, read beside predicted, and the fit that makes a calibration of
// them. What is typed goes into readings.csv in the bench folder beside the plan at once.

#include <QThreadPool>

#include "app/desk/window/agreement_view.hpp"
#include "app/desk/window/choice.hpp"
#include "app/desk/window/reading_table.hpp"
#include "app/desk/window/step_form.hpp"
#include "model/bench/readings_sheet.hpp"

namespace wrapgauge {

class BenchStep : public StepForm {
  Q_OBJECT
 public:
  explicit BenchStep(PlanSession& session, QWidget* parent = nullptr);
  ~BenchStep() override;

  void open_readings(const std::filesystem::path& file);

 signals:
  void planFileWanted();  // the bench lies beside the plan's file: save the plan first

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  bool is_plan_saved();
  void propose();
  void ask_for_readings();
  void look_for_readings(const SessionState& now);
  void take_proposed(const SessionState& now);
  void take_sheet(const Result<ReadingsSheet>& changed);
  void take_typed(std::size_t row, const QString& typed);
  void take_key(const QString& begins, const LineField& field);
  void write_sheet();
  void fit();
  void keep();
  void leave_out();
  void show_sheet();
  void show_kinds();
  void show_agreement();
  void show_fit();
  void enable_buttons();
  void show_calibration(const SessionState& now);
  QString kind_key(const QString& begins) const;
  ReadingKind shown_kind() const;
  std::shared_ptr<const BenchResult> fit_of_these() const;
  const Layout& layout() const { return plan().layout; }

  QLabel *calibration_, *where_, *steps_, *refused_, *fit_words_;
  QPushButton *propose_, *open_, *fit_, *keep_, *leave_;
  Choice* kind_;
  ReadingTable* table_;
  QWidget* of_kind_;  // what belongs to the kind that is shown
  LineField *error_, *instrument_, *date_, *remark_;
  AgreementView* agreement_;
  std::filesystem::path file_, looked_beside_;
  std::optional<ReadingsSheet> sheet_;
  std::shared_ptr<const BenchSheet> proposed_;  // that the file was written from
  QThreadPool writer_;
};

}  // namespace wrapgauge
