#pragma once
// The German words of the window, read from the list itself, so that no compiled one is needed.

#include <QFile>
#include <QHash>
#include <QTranslator>
#include <QXmlStreamReader>
#include <vector>

namespace wrapgauge::test {

struct Message {
  QString context, source, translation;
  bool finished = true;
};

inline QString german_file() {
  return QStringLiteral(WRAPGAUGE_SOURCE_DIR "/resources/translations/wrapgauge-desk_de.ts");
}

inline std::vector<Message> messages_of(const QString& ts_file) {
  std::vector<Message> messages;
  QFile file(ts_file);
  if (!file.open(QIODevice::ReadOnly)) return messages;
  QXmlStreamReader xml(&file);
  QString context;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QStringLiteral("name")) context = xml.readElementText();
    if (xml.name() == QStringLiteral("source"))
      messages.push_back({context, xml.readElementText(), {}, true});
    if (xml.name() != QStringLiteral("translation") || messages.empty()) continue;
    messages.back().finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
    messages.back().translation = xml.readElementText();
  }
  return messages;
}

class German : public QTranslator {
 public:
  German() {
    for (const Message& message : messages_of(german_file()))
      words_[message.context + QChar(0) + message.source] = message.translation;
  }
  QString translate(const char* context, const char* source, const char*, int) const override {
    return words_.value(QString::fromUtf8(context) + QChar(0) + QString::fromUtf8(source));
  }
  bool isEmpty() const override { return words_.isEmpty(); }

 private:
  QHash<QString, QString> words_;
};

}  // namespace wrapgauge::test
