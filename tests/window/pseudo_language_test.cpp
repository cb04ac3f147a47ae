// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/schema.h"
#include "tests/window/page_walk.h"
#include "tests/window/window_fixture.h"
#include "ui/logic/format.h"

#include <QAbstractButton>
#include <QLabel>
#include <QRegularExpression>
#include <QTranslator>

namespace withy::ui {

namespace {

/// Every translatable text between brackets and a third longer, so that what is not translatable and
/// what has no room to grow can be seen.
class PseudoLanguage : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }

    QString translate(const char*, const char* source, const char*, int) const override {
        const QString words = QString::fromUtf8(source);
        return QStringLiteral("[%1%2]").arg(words, QString(words.size() / 3, QChar(u'~')));
    }
};

/// All that the grower has written, which no translator may touch.
QString growersWords(const model::Season& season) {
    QString all;
    for (const auto& table : model::allTables()) {
        model::forEachRecord(season, table.kind, [&](std::int64_t, const void* record) {
            for (const auto& field : table.fields) {
                const auto value = field.get(record);
                if (const auto* words = std::get_if<std::string>(&value))
                    all += text(*words) + QLatin1Char('\n');
            }
        });
    }
    return all;
}

/// Figures, signs, dates and the grower's own words need no translator.
bool needsTranslating(const QString& shown, const QString& own) {
    static const QRegularExpression tags(QStringLiteral("<[^>]*>"));
    static const QRegularExpression word(QStringLiteral("\\p{L}{4,}"));
    static const QRegularExpression dates(
        QStringLiteral("(Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day \\d+ \\p{L}+"));
    auto words = word.globalMatch(QString(shown).remove(tags).remove(dates));
    while (words.hasNext()) {
        if (!own.contains(words.next().captured(), Qt::CaseInsensitive)) return true;
    }
    return false;
}

} // namespace

class PseudoLanguageTest : public WindowTest {};

TEST_F(PseudoLanguageTest, EveryLabelAndButtonIsTranslatable) {
    PseudoLanguage pseudo;
    QCoreApplication::installTranslator(&pseudo);
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    const QString own = growersWords(season());
    int seen = 0;
    eachPage(*window_, [&](const QString& page, QWidget* place) {
        for (const auto* w : place->findChildren<QWidget*>()) {
            if (!w->isVisible()) continue;
            QString shown;
            if (const auto* label = qobject_cast<const QLabel*>(w)) shown = label->text();
            if (const auto* button = qobject_cast<const QAbstractButton*>(w)) shown = button->text();
            if (!needsTranslating(shown, own)) continue;
            ++seen;
            EXPECT_TRUE(shown.contains(QLatin1Char('[')))
                << page.toStdString() << ": " << w->objectName().toStdString() << " “" << shown.toStdString()
                << "”";
        }
    });
    QCoreApplication::removeTranslator(&pseudo);
    EXPECT_GT(seen, 150);
}

} // namespace withy::ui
