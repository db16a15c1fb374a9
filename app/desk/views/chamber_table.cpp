#include "app/desk/views/chamber_table.hpp"

#include <QHeaderView>
#include <QPainter>
#include <QSignalBlocker>
#include <algorithm>
#include <utility>

#include "app/desk/views/pressure_words.hpp"
#include "app/desk/views/save_views.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/core/beside_limit.hpp"
#include "model/core/pressure_figures.hpp"
#include "model/io/writers/csv_writer.hpp"
#include "model/note/verdict.hpp"

namespace wrapgauge {
namespace {

QString severity_words(Severity severity) {
  if (severity == Severity::kStop) return ChamberTableModel::tr("stop");
  return severity == Severity::kAboveLimit ? ChamberTableModel::tr("above limit")
                                           : ChamberTableModel::tr("warning");
}

// How bad it is comes first: the end of a long sentence may be cut off.
QString finding_words(const Finding& finding) {
  const QString sentence = text(finding.sentence);
  if (finding.severity == Severity::kNote) return sentence;
  return severity_words(finding.severity) + ": " + sentence;
}

QString short_words(const Finding* finding) {
  if (!finding || finding->severity == Severity::kNote) return QStringLiteral("–");
  return severity_words(finding->severity);
}

// Width of a name that may be broken between two of its words.
int width_on_two_lines(const QString& name, const QFontMetrics& metrics) {
  int least = metrics.horizontalAdvance(name);
  for (qsizetype at = name.indexOf(' '); at >= 0; at = name.indexOf(' ', at + 1))
    least = std::min(least, std::max(metrics.horizontalAdvance(name.left(at)),
                                     metrics.horizontalAdvance(name.mid(at + 1))));
  return least;
}

// Both units one below the other; the head of the column says which.
QString pressure_lines(Pressure pressure, PressureUnit first) {
  const QString kilopascal = figures_text(kpa_figure(pressure)),
                millimetres = figures_text(mmhg_figure(pressure));
  return first == PressureUnit::kKilopascal ? kilopascal + "\n(" + millimetres + ")"
                                            : millimetres + "\n(" + kilopascal + ")";
}

}  // namespace

ChamberTableModel::ChamberTableModel(const ShownPlan& shown, const Selection& selection, QObject* parent)
    : QAbstractTableModel(parent), shown_(shown), selection_(selection) {
  connect(&shown_, &ShownPlan::estimateChanged, this, &ChamberTableModel::reload);
  connect(&shown_, &ShownPlan::staleChanged, this, &ChamberTableModel::reload);
  connect(&shown_, &ShownPlan::stateRead, this, &ChamberTableModel::reload);
  connect(&selection_, &Selection::stateChanged, this, &ChamberTableModel::reload);
  connect(&selection_, &Selection::unitChanged, this, [this] {
    reload();
    emit headerDataChanged(Qt::Horizontal, 0, kColumnCount - 1);
  });
  reload();
}

// Rows stay when only their figures change, so that the selected one stays selected.
void ChamberTableModel::reload() {
  const int before = rowCount();
  const auto contact = shown_.contact(selection_.state());
  const int after = contact ? static_cast<int>(contact->figures.chambers.size()) : 0;
  if (before != after) beginResetModel();
  contact_ = contact;
  if (before != after)
    endResetModel();
  else if (after > 0)
    emit dataChanged(index(0, 0), index(after - 1, kColumnCount - 1));
}

int ChamberTableModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !contact_ ? 0 : static_cast<int>(contact_->figures.chambers.size());
}

int ChamberTableModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumnCount;
}

ChamberTableModel::Cell ChamberTableModel::cell(const ChamberFigures& figures, int column) const {
  const Finding* finding = finding_of(*contact_, figures.chamber);
  const auto alone = [](const QString& words) { return Cell{words, words}; };
  const auto with_unit = [](const QString& figure, const char* unit) { return Cell{figure, figure + unit}; };
  const auto pressure = [this](Pressure value) {
    return Cell{pressure_lines(value, selection_.unit()), pressure_words(value, selection_.unit())};
  };
  switch (column) {
    case kChamber:
      return alone(QString::fromStdString(figures.chamber));
    case kGauge:
      return pressure(figures.gauge);
    case kVolume:
      return with_unit(fixed_words(figures.volume / mL, 1), " mL");
    case kMean:
      return pressure(figures.mean);
    case kPeak:
      return pressure(figures.peak);
    case kContactArea:
      return with_unit(fixed_words(figures.contact_area / cm2, 1), " cm²");
    case kForce:
      return with_unit(fixed_words(figures.force / newton, 1), " N");
    case kShareOfLimit:
      if (!finding || finding->share_of_limit <= 0.0) return alone(QStringLiteral("–"));
      return with_unit(wrapgauge::text(percent_beside(said_share(*finding))).chopped(2), " %");
    default:
      const QString sentence = finding ? finding_words(*finding) : tr("no finding");
      return {short_findings_ ? short_words(finding) : sentence, sentence};
  }
}

void ChamberTableModel::show_findings_short(bool is_short) {
  if (std::exchange(short_findings_, is_short) != is_short) reload();
}

QVariant ChamberTableModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || !contact_) return {};
  const ChamberFigures& figures = contact_->figures.chambers[static_cast<std::size_t>(index.row())];
  if (role == Qt::DisplayRole) return cell(figures, index.column()).shown;
  if (role == Qt::AccessibleTextRole) return cell(figures, index.column()).whole;
  if (role == Qt::ToolTipRole && index.column() == kFinding) return cell(figures, kFinding).whole;
  if (role == Qt::TextAlignmentRole && index.column() > kChamber && index.column() < kFinding)
    return QVariant(Qt::AlignRight | Qt::AlignVCenter);
  const Finding* finding = finding_of(*contact_, figures.chamber);
  const bool sentence = index.column() == kFinding && !short_findings_;  // bold it would not fit
  if (role == Qt::FontRole && finding && finding->severity >= Severity::kAboveLimit && !sentence) {
    QFont bold;
    bold.setBold(true);
    return bold;
  }
  return {};
}

// In the heads each unit stands below the name; copied and read aloud, each cell says its own.
QVariant ChamberTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole) {
    const QStringList names{tr("Chamber"), tr("Gauge pressure"),  tr("Volume"),
                            tr("Mean"),    tr("Peak over 1 cm²"), tr("Contact area"),
                            tr("Force"),   tr("Share of limit"),  tr("Finding")};
    return names[section];
  }
  if (role != Qt::DisplayRole) return {};
  const QString pressure = selection_.unit() == PressureUnit::kKilopascal ? "\nkPa\n(mmHg)" : "\nmmHg\n(kPa)";
  const QStringList heads{tr("Chamber"),         tr("Gauge") + pressure, tr("Vol.") + "\nmL",
                          tr("Mean") + pressure, tr("Peak") + pressure,  tr("Area") + "\ncm²",
                          tr("Force") + "\nN",   tr("Limit") + "\n%",    tr("Finding")};
  return heads[section];
}

QString ChamberTableModel::text() const {
  QString lines;
  for (int r = -1; r < rowCount(); ++r) {  // the heads first
    QStringList row;
    for (int c = 0; c < kColumnCount; ++c)
      row += (r < 0 ? headerData(c, Qt::Horizontal, Qt::AccessibleTextRole)
                    : data(index(r, c), Qt::AccessibleTextRole))
                 .toString();
    lines += row.join('\t') + '\n';
  }
  return lines;
}

QString ChamberTableModel::csv() const {
  const auto& estimate = shown_.estimate();
  if (!contact_ || !estimate) return {};
  return QString::fromStdString(chambers_csv(contact_->figures, not_the_programs_own(estimate->summary)));
}

ChamberTable::ChamberTable(const ShownPlan& shown, Selection& selection, QWidget* parent)
    : QTableView(parent), model_(shown, selection), selection_(selection) {
  setModel(&model_);
  setAccessibleName(tr("Chambers at the shown state"));
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setTabKeyNavigation(false);
  setWordWrap(true);
  setAlternatingRowColors(true);
  setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  horizontalHeader()->setMinimumSectionSize(10);
  horizontalHeader()->setHighlightSections(false);  // bold words would not fit
  horizontalHeader()->setSectionResizeMode(ChamberTableModel::kFinding, QHeaderView::Stretch);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  offer_table(
      this, tr("chambers"), [this] { return model_.text(); }, [this] { return model_.csv(); });
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& row) {
    if (row.isValid()) selection_.select_chamber(ChamberId(row.row()));
  });
  connect(&selection_, &Selection::chamberChanged, this, &ChamberTable::take_selection);
  connect(&model_, &QAbstractItemModel::modelReset, this, &ChamberTable::take_selection);
  connect(&shown, &ShownPlan::estimateChanged, this, &ChamberTable::fit_cells);
  connect(&selection, &Selection::unitChanged, this, &ChamberTable::fit_cells);
  fit_cells();
}

// As wide as the longest line of its head and cells, in the bold of a chamber above a limit.
int ChamberTable::wanted_width(int column) const {
  constexpr int kBeside = 7, kBesideName = 10;
  QFont bold = font();
  bold.setBold(true);
  const QFontMetrics wide(bold), plain(font());
  int width = plain.size(0, model_.headerData(column, Qt::Horizontal).toString()).width();
  for (int row = 0; row < model_.rowCount(); ++row) {
    const QString words = model_.data(model_.index(row, column)).toString();
    width = std::max(width, column == ChamberTableModel::kChamber ? width_on_two_lines(words, wide)
                                                                  : wide.size(0, words).width());
  }
  return width + (column == ChamberTableModel::kChamber ? kBesideName : kBeside);
}

// Once an estimate, not once a state: measuring words costs more than drawing them. The findings take what
// room is left.
void ChamberTable::fit_cells() {
  for (int c = ChamberTableModel::kChamber; c < ChamberTableModel::kFinding; ++c)
    setColumnWidth(c, wanted_width(c));
  fit_findings();
}

void ChamberTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  fit_findings();
}

// Where there is no room for even a word of them the findings are left out: they stand in the step Limits.
void ChamberTable::fit_findings() {
  constexpr int kSentenceLetters = 18, kLeastLetters = 9;
  int left = viewport()->width();
  for (int c = ChamberTableModel::kChamber; c < ChamberTableModel::kFinding; ++c) left -= columnWidth(c);
  setColumnHidden(ChamberTableModel::kFinding, left < kLeastLetters * fontMetrics().averageCharWidth());
  const int room = columnWidth(ChamberTableModel::kFinding);
  model_.show_findings_short(room < kSentenceLetters * fontMetrics().averageCharWidth());
  fit_rows();
}

// Two lines a row, then a line more for each row in turn whose sentence goes on, as long as all rows find
// room.
void ChamberTable::fit_rows() {
  constexpr int kLeastLines = 2, kRim = 6;
  const int line = fontMetrics().lineSpacing(), least = kLeastLines * line + kRim;
  std::vector<int> wanted, height(static_cast<std::size_t>(model_.rowCount()), least);
  for (int row = 0; row < model_.rowCount(); ++row) wanted.push_back(finding_lines(row) * line + kRim);
  int spare = viewport()->height() - model_.rowCount() * least;
  for (bool given = true; std::exchange(given, false);)
    for (std::size_t row = 0; row < height.size(); ++row) {
      if (height[row] >= wanted[row] || spare < line) continue;
      height[row] += line;
      spare -= line;
      given = true;
    }
  verticalHeader()->setDefaultSectionSize(least);
  for (std::size_t row = 0; row < height.size(); ++row) setRowHeight(static_cast<int>(row), height[row]);
}

int ChamberTable::finding_lines(int row) const {
  constexpr int kBeside = 8;
  const QModelIndex cell = model_.index(row, ChamberTableModel::kFinding);
  const QVariant drawn = model_.data(cell, Qt::FontRole);
  const QFontMetrics metrics(drawn.isValid() ? drawn.value<QFont>().resolve(font()) : font());
  const QRect room(0, 0, columnWidth(ChamberTableModel::kFinding) - kBeside, 100 * metrics.lineSpacing());
  return metrics.boundingRect(room, Qt::TextWordWrap, model_.data(cell).toString()).height() /
         metrics.lineSpacing();
}

void ChamberTable::take_selection() {
  const QSignalBlocker quiet(selectionModel());
  const auto chamber = selection_.chamber();
  const int row = chamber ? static_cast<int>(index_of(*chamber)) : -1;
  if (row >= 0 && row < model_.rowCount())
    selectRow(row);
  else
    clearSelection();
  viewport()->update();
}

void ChamberTable::paintEvent(QPaintEvent* event) {
  QTableView::paintEvent(event);
  if (model_.rowCount() > 0) return;
  QPainter painter(viewport());
  painter.setPen(palette().color(QPalette::PlaceholderText));
  painter.drawText(viewport()->rect().adjusted(12, 0, -12, 0), Qt::AlignCenter | Qt::TextWordWrap,
                   tr("The figures of each chamber come with the first estimate."));
}

}  // namespace wrapgauge
