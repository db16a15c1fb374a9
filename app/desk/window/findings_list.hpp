#pragma once
// Sentences to act on, worst first; choosing one jumps to its place.

#include <QListWidget>

#include "app/desk/session/plan_session.hpp"

namespace wrapgauge {

struct ListedFinding {
  Severity severity = Severity::kNote;
  QString label;  // "Above limit", "To mend"
  QString sentence;
  std::optional<int> chamber;
  std::optional<Vec3> place_m;
  bool names_model_factor = false;
};

// Of a solved plan: findings and hazards with the chamber or place they are about.
std::vector<ListedFinding> listed_findings(const Estimate& estimate);
// Of a drawing: what has to be mended, then what may go wrong in casting.
std::vector<ListedFinding> listed_findings(const CheckedPlan& checked);

// What the words in these sentences mean that are not a caster's own; empty where none is used.
QString plain_words(const std::vector<ListedFinding>& findings);

class FindingsList : public QListWidget {
  Q_OBJECT
 public:
  explicit FindingsList(const QString& name, QWidget* parent = nullptr);
  void show_findings(std::vector<ListedFinding> findings);

 signals:
  void chamberAsked(int chamber);
  void placeAsked(const Vec3& point_m);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fit();
  std::vector<ListedFinding> findings_;
};

}  // namespace wrapgauge
