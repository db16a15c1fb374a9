#pragma once
// Step Layout: from a drawing, from a file, or made; then changed part by part, with its checks beside.

#include "app/desk/session/drawing_memory.hpp"
#include "app/desk/window/findings_list.hpp"
#include "app/desk/window/part_editor.hpp"
#include "app/desk/window/sheet_fields.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class LayoutStep : public StepForm {
  Q_OBJECT
 public:
  // `memory`: the folder where it is kept what was said of drawings.
  LayoutStep(PlanSession& session, std::filesystem::path memory, QWidget* parent = nullptr);

  void open_layout(const std::filesystem::path& file);  // .svg, .dxf or .json
  void ask_for_layout();
  void make_layout();
  PartEditor& parts() { return *parts_; }

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void take_layout(const QString& words, Layout layout, std::optional<std::filesystem::path> file,
                   std::optional<DrawnLayout> drawing);

  DrawingMemory memory_;
  QLabel *origin_, *parts_heading_;
  PartEditor* parts_;
  QWidget* sheet_box_;
  FieldForm<Layout> sheets_;
  FindingsList* findings_;
};

}  // namespace wrapgauge
