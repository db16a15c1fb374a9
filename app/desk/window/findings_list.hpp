#pragma once
// What to act on, a card each, worst first; the whole sentence on hover; choosing one jumps to its place.

#include "app/desk/session/plan_session.hpp"
#include "app/desk/window/card_list.hpp"

namespace wrapgauge {

struct ListedFinding {
  Severity severity = Severity::kNote;
  QString label;     // "Above limit", "To correct"
  QString sentence;  // the whole of it
  std::optional<int> chamber;
  std::optional<Vec3> place_m;
  bool names_model_factor = false;
  bool aside = false;  // asks for nothing, and nothing else rests on it: counted, and shown when asked for
  std::optional<FindingCard> card{};  // none: only the sentence is known
};

// Of a solved plan: findings and hazards with the chamber or place they are about.
std::vector<ListedFinding> listed_findings(const Estimate& estimate);
// Of a drawing: what has to be mended, then what may go wrong in casting.
std::vector<ListedFinding> listed_findings(const CheckedPlan& checked);

// What the words in these sentences mean that are not a caster's own; empty where none is used.
QString plain_words(const std::vector<ListedFinding>& findings);

// What of them is acted on, and what stands aside; each in the order it had.
struct ListedApart {
  std::vector<ListedFinding> to_act_on, aside;
};
ListedApart listed_apart(const std::vector<ListedFinding>& findings);

class FindingsList : public CardList {
  Q_OBJECT
 public:
  explicit FindingsList(const QString& name, QWidget* parent = nullptr);
  void show_findings(std::vector<ListedFinding> findings);

 signals:
  void chamberAsked(int chamber);
  void placeAsked(const Vec3& point_m);

 private:
  std::vector<ListedFinding> findings_;
};

}  // namespace wrapgauge
