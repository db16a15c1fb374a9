#include "app/desk/words/phrase_text.hpp"

#include <QCoreApplication>
#include <QLocale>

#include "model/core/number_text.hpp"

namespace wrapgauge {

QString figures_text(const std::string& figures) {
  return QString::fromStdString(figures).replace(QChar('.'), QLocale().decimalPoint());
}

QString fixed_words(double value, int decimals) {
  return figures_text(fixed_text(value, decimals));
}

QString text(const Phrase& phrase) {
  const auto translated = [](const std::string& pattern) {
    return QCoreApplication::translate("wrapgauge::Phrase", pattern.c_str()).toStdString();
  };
  const auto figures = [](const std::string& words) { return figures_text(words).toStdString(); };
  return QString::fromStdString(said(phrase, {translated, figures}));
}

QString text(const Problem& problem) {
  return text(phrase_of(problem));
}

}  // namespace wrapgauge
