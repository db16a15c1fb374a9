#pragma once
// What all areas of the window show: body, layout, the layout as it is put on, and an estimate with the
// contact of each of its recorded states. The window sets it; the views listen.

#include <QObject>
#include <QString>
#include <QThreadPool>
#include <atomic>
#include <memory>
#include <vector>

#include "app/desk/views/selection.hpp"
#include "app/desk/views/state_contact.hpp"
#include "app/picture/map_scene.hpp"
#include "model/geometry/plane_section.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/wrap/laid_rim.hpp"

namespace wrapgauge {

class ShownPlan : public QObject {
  Q_OBJECT
 public:
  // Keeps the selection's state and chamber within what is shown.
  explicit ShownPlan(Selection& selection, QObject* parent = nullptr);
  ~ShownPlan() override;

  // Null takes it away. `sites`: the body's and the plan's. `made`: what was made of a large body elsewhere
  // does not keep the window waiting; what is null is made here.
  struct MadeOfBody {
    std::shared_ptr<const SkinSurface> skin;
    std::shared_ptr<const PlaneSections> sections;
  };
  void show_body(std::shared_ptr<const Body> body, std::vector<BonySite> sites = {},
                 std::vector<SkinRegion> regions = {}, MadeOfBody made = {});
  // Why there is no body, or empty; shown in its place.
  void say_no_body(const QString& words);
  void show_layout(std::shared_ptr<const Layout> layout);
  void show_worn(std::shared_ptr<const Prepared> worn);
  // Of a layout that is not put on, or is being moved; null: none.
  void show_rim(std::shared_ptr<const LaidRim> rim);
  // Its own body and layout are shown when none were. States before the last are read on a thread of their
  // own.
  void show_estimate(std::shared_ptr<const Estimate> estimate);
  // Why the estimate no longer answers the plan; empty: it does.
  void show_stale(const QString& words);
  // That what is shown is not the plan but what it would be with a change; empty: it is the plan.
  void say_would_be(const QString& words);
  // Faces of the body and parts of the layout to mark until the next call.
  void mark(std::vector<ProblemPlace> places);

  const std::shared_ptr<const Body>& body() const { return body_; }
  const QString& no_body() const { return no_body_; }
  const std::shared_ptr<const SkinSurface>& skin() const { return skin_; }            // of body()
  const std::shared_ptr<const PlaneSections>& sections() const { return sections_; }  // of body()
  const std::vector<BonySite>& sites() const { return sites_; }
  const std::vector<SkinRegion>& regions() const { return regions_; }
  const std::shared_ptr<const Layout>& layout() const { return layout_; }
  const std::shared_ptr<const Prepared>& worn() const { return worn_; }
  const std::shared_ptr<const LaidRim>& rim() const { return rim_; }
  const std::shared_ptr<const Estimate>& estimate() const { return estimate_; }
  const MapScene& scale() const { return scale_; }  // of the estimate: one scale for all its states
  int state_count() const { return static_cast<int>(contacts_.size()); }
  std::shared_ptr<const StateContact> contact(int state) const;  // null: being read, or no such state
  const QString& stale() const { return stale_; }
  const QString& would_be() const { return would_be_; }
  const std::vector<ProblemPlace>& marks() const { return marks_; }

 signals:
  void bodyChanged();
  void layoutChanged();
  void wornChanged();
  void rimChanged();
  void estimateChanged();
  void stateRead(int state);
  void staleChanged();
  void marksChanged();
  void wouldBeChanged();

 private:
  std::shared_ptr<const SkinSurface> skin_of(const TriangleMesh& surface) const;
  void read_other_states(std::shared_ptr<const SkinSurface> skin);
  void choose_state(bool was_last, int count_before);

  Selection& selection_;
  std::shared_ptr<const Body> body_;
  QString no_body_;
  std::shared_ptr<const SkinSurface> skin_;
  std::shared_ptr<const PlaneSections> sections_;
  std::vector<BonySite> sites_;
  std::vector<SkinRegion> regions_;
  std::shared_ptr<const Layout> layout_;
  std::shared_ptr<const Prepared> worn_;
  std::shared_ptr<const LaidRim> rim_;
  std::shared_ptr<const Estimate> estimate_;
  MapScene scale_;
  std::vector<std::shared_ptr<const StateContact>> contacts_;  // a state each
  QString stale_, would_be_;
  std::vector<ProblemPlace> marks_;
  std::shared_ptr<std::atomic<bool>> wanted_;  // the reading that goes on is still wanted
  QThreadPool reader_;
};

}  // namespace wrapgauge
