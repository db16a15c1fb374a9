#include <QHBoxLayout>
#include <QSignalBlocker>

#include "app/desk/window/inflation_step.hpp"

namespace wrapgauge {
namespace {

enum By { kByPressure, kByVolume, kByPushedAir, kByNothing };

By by_of(const InflationTarget& target) {
  return static_cast<By>(target.index());
}

}  // namespace

InletFields::InletFields(const std::string& inlet, QWidget* parent)
    : QWidget(parent), inlet_(inlet), by_(nullptr), amounts_(new QStackedWidget(this)) {
  const QString name = QString::fromStdString(inlet);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 6);
  column->addWidget(heading_label(tr("Inlet %1").arg(name), this));
  by_ = new Choice(tr("Inlet %1 is filled by").arg(name), this);
  by_->add({{tr("to a gauge pressure"), kByPressure},
            {tr("to a volume between the sheets"), kByVolume},
            {tr("with air pushed in and closed off"), kByPushedAir}});
  column->addWidget(by_);
  column->addWidget(amounts_);
  make_amounts();
  make_steps();
  connect(by_, &Choice::chosen, this, [this](const QVariant& value) {
    amounts_->setCurrentIndex(value.toInt());
    emit edited({});
  });
}

void InletFields::make_amounts() {
  const QString name = QString::fromStdString(inlet_);
  pressure_ = new PressureField(tr("Pressure of inlet %1").arg(name), 100.0 * kPa, this);
  pressure_->kpa().setObjectName(QStringLiteral("pressure of ") + name);
  const QString ml = QStringLiteral("mL");
  volume_ = new NumberField(tr("Volume of inlet %1").arg(name), ml, {0.0, 20000.0, 1, 1.0}, this);
  auto* air = new QWidget(this);
  auto* row = new QHBoxLayout(air);
  row->setContentsMargins(0, 0, 0, 0);
  pushed_ = new NumberField(tr("Air pushed into inlet %1").arg(name), ml, {0.0, 20000.0, 1, 1.0}, this);
  dead_ = new NumberField(tr("Dead volume of inlet %1").arg(name), ml, {0.01, 20000.0, 2, 1.0}, this);
  dead_->say_source(tr("What tubing, fitting and the syringe's end hold; they do not stretch."));
  row->addWidget(pushed_, 1);
  row->addWidget(dead_, 1);
  amounts_->addWidget(pressure_);
  amounts_->addWidget(volume_);
  amounts_->addWidget(air);
  const QString merge = QStringLiteral("inlet.") + name;
  connect(pressure_, &PressureField::edited, this, [this, merge] { emit edited(merge); });
  for (NumberField* field : {volume_, pushed_, dead_})
    connect(field, &NumberField::edited, this, [this, merge] { emit edited(merge); });
}

void InletFields::make_steps() {
  const QString name = QString::fromStdString(inlet_);
  table_ = words_table(this, tr("Programme of inlet %1 over time").arg(name),
                       {tr("Level %"), tr("Ramp s"), tr("Hold s")});
  QPushButton* add = action_button(this, tr("Add a step"), [this] {
    steps_.push_back({steps_.size() % 2 == 0 ? 1.0 : 0.0, 3.0 * second, 30.0 * second});
    emit edited({});
  });
  remove_ = action_button(this, tr("Remove step"), [this] {
    const int at = table_->currentRow();
    const auto last = static_cast<std::ptrdiff_t>(steps_.size()) - 1;
    steps_.erase(steps_.begin() + (at < 0 ? last : std::min<std::ptrdiff_t>(at, last)));
    emit edited({});
  });
  add->setToolTip(
      tr("Without steps the inlet follows the session. Steps are repeated until the session ends; a "
         "level of 100 % is the amount above."));
  auto* column = static_cast<QVBoxLayout*>(layout());
  column->addWidget(table_);
  add_row(*column, {add, remove_});
  connect(table_, &QTableWidget::itemChanged, this, [this] {
    read_steps();
    emit edited(QStringLiteral("inlet.steps.") + QString::fromStdString(inlet_));
  });
}

void InletFields::show_steps() {
  const QSignalBlocker quiet(table_);
  table_->setRowCount(static_cast<int>(steps_.size()));
  for (int i = 0; i < table_->rowCount(); ++i) {
    const ProgrammeStep& step = steps_[static_cast<std::size_t>(i)];
    const double values[] = {100.0 * step.level, step.ramp / second, step.hold / second};
    for (int column = 0; column < 3; ++column) {
      auto* item = new QTableWidgetItem;
      item->setData(Qt::EditRole, values[column]);
      table_->setItem(i, column, item);
    }
  }
  table_->setVisible(!steps_.empty());
  remove_->setEnabled(!steps_.empty());
  fit_height(*table_, table_->rowCount());
}

void InletFields::read_steps() {
  for (int i = 0; i < table_->rowCount(); ++i) {
    const auto number = [&](int column) {
      const QTableWidgetItem* item = table_->item(i, column);
      return item ? std::max(0.0, item->data(Qt::EditRole).toDouble()) : 0.0;
    };
    steps_[static_cast<std::size_t>(i)] = {std::min(1.0, 0.01 * number(0)), number(1) * second,
                                           number(2) * second};
  }
}

void InletFields::show_program(const InletProgram* program) {
  steps_ = program ? program->steps : std::vector<ProgrammeStep>{};
  show_steps();
  by_->show_value(program ? by_of(program->target) : kByPressure);
  amounts_->setCurrentIndex(by_->currentData().toInt());
  if (!program) return pressure_->show_value(Pressure());
  if (const auto* pressure = std::get_if<Pressure>(&program->target)) pressure_->show_value(*pressure);
  if (const auto* volume = std::get_if<Volume>(&program->target)) volume_->show_value(*volume / mL);
  if (const auto* air = std::get_if<TrappedAir>(&program->target)) {
    pushed_->show_value(air->pushed / mL);
    dead_->show_value(air->dead / mL);
  }
}

InletProgram InletFields::program() const {
  InletProgram program{inlet_, {}, steps_};
  switch (by_->currentData().toInt()) {
    case kByVolume:
      program.target = volume_->value() * mL;
      break;
    case kByPushedAir:
      program.target = TrappedAir{pushed_->value() * mL, dead_->value() * mL};
      break;
    default:
      program.target = pressure_->value();
  }
  return program;
}

}  // namespace wrapgauge
