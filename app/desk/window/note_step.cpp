#include "app/desk/window/note_step.hpp"

#include <QAbstractTextDocumentLayout>
#include <QDialog>
#include <QFileDialog>
#include <QScrollBar>
#include <cmath>

#include "app/desk/window/fine_settings.hpp"
#include "app/desk/window/solving_panel.hpp"
#include "app/desk/window/wearers_panel.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/note_files.hpp"
#include "app/picture/note_picture.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

constexpr int kNarrow = 260;  // across the picture in the column, pixels of a plain screen

// By the ending of the file.
Result<std::monostate> write_note_file(const NoteFiles& made, const std::filesystem::path& file) {
  const std::string ending = file.extension().string();
  if (ending == ".pdf") return write_file_atomically(file, made.pdf);
  if (ending != ".html" && ending != ".md")
    return bad_input(Phrase::worded("note '%1' ends neither in .pdf, .html nor .md: choose one.",
                                    {name_of(file.filename().string())}));
  if (auto pictures = write_note_pictures(made, file.parent_path()); !pictures) return pictures.problem();
  return write_file_atomically(file, ending == ".html" ? made.html : made.markdown);
}

// The note is printed on white, and so it is shown.
void show_as_paper(QTextBrowser& browser) {
  browser.setStyleSheet(QStringLiteral("QTextBrowser { background: white; color: black; }"));
}

// On any thread: the picture is painted into memory, as fine as the screen shows it.
MadeNote made_note(const SolvedPlan& solved, double pixels_per_unit) {
  MadeNote made;
  const auto note = study_note(*solved.summary, solved.summary->inputs);
  if (!note) {
    made.problem = text(note.problem());
    return made;
  }
  const NotePictures pictures = note_pictures(*solved.estimate);
  const auto as_wide_as = [&](int width) {
    const int pixels = static_cast<int>(std::lround(width * pixels_per_unit));
    return NotePictures{pictures.place.scaledToWidth(pixels, Qt::SmoothTransformation),
                        pictures.pressure.scaledToWidth(pixels, Qt::SmoothTransformation)};
  };
  made.narrow = as_wide_as(kNarrow);
  made.wide = as_wide_as(kNotePictureWidth);
  made.body = note_body_html(*note);
  return made;
}

}  // namespace

NoteStep::NoteStep(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      name_(plan_rows(column_form(nullptr))),
      words_(words_label({}, this)),
      estimate_(action_button(this, tr("Final estimate"), [this] { this->session().estimate_standard(); })),
      save_(action_button(this, tr("Save the note…"), [this] { ask_where_to_save(); })),
      open_(action_button(this, tr("Read it large"), [this] { show_large(); })),
      preview_(new QTextBrowser(this)) {
  maker_.setMaxThreadCount(1);
  save_->setObjectName(QStringLiteral("save_note"));
  const FieldText name(tr("Plan"), tr("Name of the plan, as reports call it"), {}, "plan name");
  LineField* line = name_.line_by(
      name, [](const Plan& plan) { return std::optional(plan.name); },
      [](Plan& plan, const std::string& words) {
        if (!words.empty()) plan.name = words;
      });
  line->setMaxLength(120);
  set_up_preview();
  QVBoxLayout* column = plain_column(this);
  column->addWidget(words_);
  column->addLayout(&name_.layout());
  column->addWidget(heading_label(tr("Who wears it"), this));
  column->addWidget(new WearersPanel(session, this));
  column->addWidget(new FineSettings(new SolvingPanel(session, this), tr("Mesh and solving"), this));
  column->addWidget(estimate_);
  add_row(*column, {save_, open_});
  column->addWidget(preview_);
}

void NoteStep::set_up_preview() {
  preview_->setAccessibleName(tr("Preview of the study note"));
  preview_->setObjectName(QStringLiteral("note preview"));
  show_as_paper(*preview_);
  preview_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // as tall as the note: the column scrolls
  connect(preview_->document()->documentLayout(), &QAbstractTextDocumentLayout::documentSizeChanged, this,
          [this](const QSizeF& size) {
            // A table that is wider than the column is reached by a bar below the note.
            const bool wide = size.width() > preview_->viewport()->width();
            const int bar = wide ? preview_->horizontalScrollBar()->sizeHint().height() : 0;
            preview_->setFixedHeight(static_cast<int>(std::ceil(size.height())) + bar +
                                     2 * preview_->frameWidth());
          });
  preview_->zoomOut(2);  // the column is narrow; there is a button to read it large
  preview_->setOpenLinks(false);
  preview_->setWordWrapMode(QTextOption::WordWrap);  // a long word in a narrow cell stays whole
}

void NoteStep::show_large() {
  QDialog large(this);
  large.setWindowTitle(tr("Study note"));
  large.resize(800, 640);
  auto* text = new QTextBrowser(&large);
  show_as_paper(*text);
  show_note(*text, made_.wide, kNotePictureWidth);
  (new QVBoxLayout(&large))->addWidget(text);
  large.exec();
}

// What is being made is waited for: its answer would find no one.
NoteStep::~NoteStep() {
  maker_.waitForDone();
}

void NoteStep::show_state(const SessionState& now, const SessionState&) {
  name_.show(*now.plan);
  const bool ready = step_state(PlanStep::kNote, now).kind == StepState::Kind::kReady;
  words_->setText(
      ready ? tr("For the study's reviewers. Empty cells are for the study to fill.")
            : tr("A note is written from the final estimate: a preview is too coarse for it. Esc cancels "
                 "one that takes too long."));
  save_->setEnabled(ready);
  open_->setEnabled(ready && !made_.body.empty());
  preview_->setVisible(ready);
  estimate_->setEnabled(now.can_be_solved());
  if (ready && shown_ != now.solved) show_preview();
}

// The picture takes a third of a second: the window answers meanwhile.
void NoteStep::show_preview() {
  shown_ = now().solved;
  made_ = {};
  open_->setEnabled(false);
  preview_->setPlainText(tr("The note is being made…"));
  maker_.start([this, solved = shown_, pixels = devicePixelRatioF()] {
    auto made = std::make_shared<MadeNote>(made_note(*solved, pixels));
    QMetaObject::invokeMethod(this, [this, solved, made] {
      if (solved != shown_) return;  // another result came meanwhile
      made_ = std::move(*made);
      open_->setEnabled(save_->isEnabled() && !made_.body.empty());
      show_note(*preview_, made_.narrow, kNarrow);
    });
  });
}

void NoteStep::show_note(QTextBrowser& browser, const NotePictures& pictures, int width) const {
  browser.clear();
  if (made_.body.empty()) return browser.setPlainText(made_.problem);
  browser.document()->addResource(QTextDocument::ImageResource, QUrl(kPictureOfPlace), pictures.place);
  browser.document()->addResource(QTextDocument::ImageResource, QUrl(kPictureOfPressure), pictures.pressure);
  browser.setHtml(with_picture_sizes(made_.body, pictures, width));
}

void NoteStep::ask_where_to_save() {
  const auto is_saved = [this] { return !now().file.empty() && !now().modified; };
  if (!is_saved()) emit planFileWanted();
  if (!is_saved()) return;
  const auto beside = now().file.parent_path() / (now().file.stem().string() + "-note.pdf");
  const QString file =
      QFileDialog::getSaveFileName(this, tr("Save the note"), QString::fromStdString(beside.string()),
                                   tr("PDF (*.pdf);;HTML (*.html);;Markdown (*.md)"));
  if (file.isEmpty()) return;
  save_note(file.toStdString());
}

void NoteStep::save_note(const std::filesystem::path& file) {
  const auto inputs = session().note_inputs();
  if (!inputs) return void(emit problemMet(inputs.problem()));
  save_->setEnabled(false);
  maker_.start([this, file, inputs = *inputs, solved = now().solved] {
    const auto made = make_note(*solved->estimate, inputs.summary, inputs.now, inputs.extras);
    const auto written = made ? write_note_file(*made, file) : Result<std::monostate>(made.problem());
    QMetaObject::invokeMethod(this, [this, file, written] {
      save_->setEnabled(session().state(PlanStep::kNote).kind == StepState::Kind::kReady);
      if (!written) return void(emit problemMet(written.problem()));
      emit saved(QString::fromStdString(file.string()));
    });
  });
}

}  // namespace wrapgauge
