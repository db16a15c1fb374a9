#include "app/desk/window/drawing_outcome.hpp"

#include <algorithm>

#include "app/desk/session/text.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/layout/air_groups.hpp"

namespace wrapgauge {
namespace {

constexpr int kShapeRole = Qt::UserRole;

QString sentence_of(const Drawing& drawing, const DrawnFault& fault) {
  QString words = text(fault.words);
  if (fault.shape) {
    const DrawnShape& shape = drawing.shapes[*fault.shape];
    QString name = text(shape.kind);
    if (!shape.name.empty()) name = DrawingOutcome::tr("%1 “%2”").arg(name, text(shown_name(shape.name)));
    words = DrawingOutcome::tr("%1 (line %2) %3").arg(name).arg(shape.line).arg(words);
  }
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  const QString remedy = text(fault.remedy);
  return remedy.isEmpty() ? words + u'.' : DrawingOutcome::tr("%1; %2.").arg(words, remedy);
}

QString doubts(const DrawingMarks& marks) {
  const auto guessed =
      std::count_if(marks.parts.begin(), marks.parts.end(), [](const DrawnAs& as) { return as.guessed; });
  const auto unsaid =
      std::count_if(marks.parts.begin(), marks.parts.end(), [](const DrawnAs& as) { return !as.part; });
  QString words;
  if (guessed > 0) words += u' ' + DrawingOutcome::tr("Guessed, please check: %1.").arg(guessed);
  if (unsaid > 0)
    words += u' ' + DrawingOutcome::tr("Left out, since nothing says what they are: %1.").arg(unsaid);
  return words;
}

// Its lines are for scissors: nothing is said of them.
bool carries_it(const Drawing& drawing, const DrawingMarks& marks) {
  return drawing.layout && std::none_of(marks.parts.begin(), marks.parts.end(),
                                        [](const DrawnAs& as) { return as.part.has_value(); });
}

std::optional<std::size_t> chamber_of(const Problem& problem) {
  for (const ProblemPlace& place : problem.places)
    if (place.kind == ProblemPlace::Kind::kChamber) return static_cast<std::size_t>(place.index);
  return std::nullopt;
}

}  // namespace

DrawingOutcome::DrawingOutcome(QWidget* parent)
    : QWidget(parent),
      verdict_(words_label({}, this)),
      problems_(new QListWidget(this)),
      join_(action_button(this, {}, [this] {
        if (join_to_) emit joinAsked(*join_to_);
      })) {
  verdict_->setObjectName(QStringLiteral("drawing_verdict"));
  problems_->setAccessibleName(tr("What keeps the drawing from being used"));
  problems_->setWordWrap(true);
  problems_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  QVBoxLayout* column = plain_column(this);
  column->addWidget(verdict_);
  column->addWidget(problems_);
  auto* row = new QHBoxLayout;
  row->addWidget(join_);
  row->addStretch();
  column->addLayout(row);
  const auto go = [this](const QListWidgetItem* item) {
    if (const QVariant shape = item->data(kShapeRole); shape.isValid())
      emit shapeAsked(static_cast<std::size_t>(shape.toULongLong()));
  };
  connect(problems_, &QListWidget::itemClicked, this, go);
  connect(problems_, &QListWidget::itemActivated, this, go);
}

void DrawingOutcome::say_unreadable(const Problem& problem) {
  problems_->clear();
  join_to_.reset();
  verdict_->setText(text(problem));
  fit();
}

void DrawingOutcome::show_faults(const Drawing& drawing, const std::vector<DrawnFault>& faults) {
  problems_->clear();
  join_to_.reset();
  verdict_->setText(tr("No layout yet. To correct: %1.").arg(faults.size()));
  for (const DrawnFault& fault : faults) {
    add(sentence_of(drawing, fault), fault.shape);
    if (fault.join && (!join_to_ || *join_to_ < *fault.join)) join_to_ = fault.join;
  }
  fit();
}

void DrawingOutcome::show_layout(const Drawing& drawing, const DrawingMarks& marks, const Layout& layout,
                                 const std::vector<Problem>& problems,
                                 const std::vector<std::size_t>& chamber_shapes) {
  problems_->clear();
  join_to_.reset();
  const Bounds2 box = bounds(layout.outline_m);
  const Vec2 size_mm = 1e3 * (box.high - box.low);
  verdict_->setText(tr("Becomes a layout of %1 × %2 mm. Chambers: %3, channels: %4, inlets: %5, straps: %6.")
                        .arg(fixed_words(size_mm.x(), 1), fixed_words(size_mm.y(), 1))
                        .arg(layout.chambers.size())
                        .arg(layout.channels.size())
                        .arg(layout.inlets.size())
                        .arg(layout.straps.size()) +
                    (carries_it(drawing, marks)
                         ? u' ' + tr("A template: the layout that it carries is used, not its lines.")
                         : doubts(marks)));
  int others = 0;
  for (const Problem& problem : problems) {
    const auto chamber = chamber_of(problem);
    if (!says_unreached(problem) || !chamber) {
      ++others;
      continue;
    }
    const auto shape =
        *chamber < chamber_shapes.size() ? std::optional(chamber_shapes[*chamber]) : std::nullopt;
    add(tr("Chamber “%1” has no inlet: add one in it, or a channel from a chamber that has one.")
            .arg(text(layout.chambers[*chamber].name)),
        shape);
  }
  if (others > 0)
    add(tr("Other things to correct: %1. The step Layout lists them once the drawing is used.").arg(others),
        {});
  fit();
}

void DrawingOutcome::add(const QString& words, std::optional<std::size_t> shape) {
  problems_->addItem(words);
  if (shape) problems_->item(problems_->count() - 1)->setData(kShapeRole, static_cast<qulonglong>(*shape));
}

// Four lines at most; more are scrolled to.
void DrawingOutcome::fit() {
  constexpr int kMostLines = 4;
  problems_->setVisible(problems_->count() > 0);
  const int lines = std::min(kMostLines, problems_->count() + 1);
  problems_->setFixedHeight(lines * (fontMetrics().lineSpacing() + 4) + 2 * problems_->frameWidth());
  join_->setVisible(join_to_.has_value());
  if (join_to_) join_->setText(tr("Join line ends up to %1 mm apart").arg(fixed_words(*join_to_ / mm, 1)));
}

}  // namespace wrapgauge
