#pragma once
// A starting layout from a few sizes, drawn as they are typed; girths come from the body when there is one.

#include <QDialog>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <map>
#include <set>

#include "app/desk/session/plan_session.hpp"
#include "app/desk/views/layout_picture.hpp"
#include "app/desk/window/choice.hpp"
#include "app/desk/window/number_field.hpp"
#include "app/job/measured_layout.hpp"
#include "model/layout/forms/layout_form.hpp"

namespace wrapgauge {

class LayoutDialog : public QDialog {
  Q_OBJECT
 public:
  explicit LayoutDialog(PlanSession& session, QWidget* parent = nullptr);
  Layout made() const { return layout_; }

 private:
  void arrange();
  void rebuild();
  void measure();
  // Typed by hand, as make_layout takes them.
  std::map<std::string, double> given(const LayoutForm& form) const;
  void show_fitted(const LayoutForm& form, const std::map<std::string, double>& used);
  QString cautions() const;
  void try_out();
  Result<MadeForBody> made_here(const LayoutForm& form, const std::map<std::string, double>& values) const;
  void show_drawn(const std::map<std::string, double>& used);
  // What keeps the field that was typed last from being made; empty: nothing is known to.
  QString refusal(const LayoutForm& form, std::map<std::string, double> values) const;
  void show_chosen(const QWidget* focus);

  PlanSession& session_;
  Layout layout_;
  Choice* form_;
  QFormLayout* fields_;
  std::map<std::string, NumberField*> numbers_;
  std::set<std::string> given_;             // typed by hand
  std::map<std::string, double> measured_;  // on the body
  std::map<std::string, double> good_;      // what could be made last
  std::string edited_;                      // the parameter that was typed last
  double wider_ = 0.0;                      // as drawn, see MadeForBody
  bool unmeasured_ = false;  // there is a body, and its girths cannot be taken where the layout lies
  QWidget* field_box_;
  LayoutPicture* picture_;
  QLabel *about_, *outcome_;
  QPushButton* take_;
};

}  // namespace wrapgauge
