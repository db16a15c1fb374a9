#pragma once
// The window: plan column, body, flat layout, inflation strip. It only connects them.

#include <QMainWindow>
#include <filesystem>

#include "app/desk/session/plan_session.hpp"
#include "app/desk/views/filling_frames.hpp"
#include "app/desk/window/look.hpp"
#include "app/desk/window/print_page.hpp"
#include "app/desk/window/welcome_page.hpp"

class QLabel;
class QMenu;
class QSplitter;

namespace wrapgauge {

class BenchStep;
class BodyStep;
class DropFrame;
class LayoutStep;
class MessageBar;
class NoteStep;
class PlanColumn;
class StepForm;
class VerdictBar;
class ViewArea;
class WearStep;

class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  QString caution_words() const;  // stands under everything that is shown

  // `data_folder`: of recovery files and demo plans.
  explicit MainWindow(const std::filesystem::path& data_folder, QWidget* parent = nullptr);
  ~MainWindow() override;

  // What was asked for, else work left behind by a session that died, else the last plan, else the demo.
  void start(const std::filesystem::path& plan_file);
  bool open_plan(const std::filesystem::path& file);  // false: not opened, and the window says why
  void open_demo();
  void show_start_page();
  // Through one of the doors of the start page: a new plan, and what is asked for first.
  void begin_with(Door door);
  void open_dropped(const std::filesystem::path& file);  // plan, mesh, drawing or layout, by its ending

  PlanSession& session() { return session_; }
  PlanColumn& column() { return *column_; }
  ViewArea& views() { return *views_; }
  NoteStep& note() { return *note_; }
  BenchStep& bench() { return *bench_; }
  LayoutStep& layout_step() { return *layout_; }
  BodyStep& body_step() { return *body_; }
  PrintedPage page_to_print();  // of what is shown now
  MessageBar& message() { return *message_; }
  VerdictBar& verdict() { return *verdict_; }

 protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void arrange();
  void add_steps();
  void connect_views();
  void add_plan_menu();
  void add_edit_menu();
  void add_estimate_menu();
  void add_view_menu();
  void add_help_menu();
  void add_look_menu(QMenu& menu);
  void add_language_menu(QMenu& menu);
  void fill_recent(QMenu& menu);
  void say(const Problem& problem);
  void say(const Result<std::monostate>& done);
  void show_title();
  void opened_well();
  bool locate_and_open(const std::filesystem::path& file);
  bool save();
  bool save_as(const QString& title = {});
  void save_results();
  using WriteFilling = decltype(&write_filling_frames);
  bool has_filling();
  void write_filling(const QString& to, const QString& title, WriteFilling write, const QString& said);
  void save_filling();
  void save_film();
  void print();
  bool may_leave();  // asks what becomes of unsaved changes
  void remember_plan();
  void start_new();
  void picture_plan();  // for the start page
  void remember_layout();
  void recall_layout();

  std::filesystem::path data_folder_;
  PlanSession session_;
  VerdictBar* verdict_;
  QSplitter* splitter_;
  PlanColumn* column_;
  ViewArea* views_;
  MessageBar* message_;
  DropFrame* drop_;
  QLabel* saved_;  // whether the plan is
  BodyStep* body_;
  LayoutStep* layout_;
  WearStep* wear_;
  NoteStep* note_;
  BenchStep* bench_;
};

}  // namespace wrapgauge
