// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/english_plurals.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QTranslator>

namespace withy::ui {

namespace {

/// English counts by two forms; everything else it leaves to the source text.
class EnglishPlurals : public QTranslator {
public:
    using QTranslator::QTranslator;

    QString translate(const char*, const char* source, const char*, int n) const override {
        return n < 0 ? QString() : counted(QString::fromUtf8(source), n);
    }

    bool isEmpty() const override { return false; }
};

} // namespace

QString counted(QString source, int n) {
    if (!source.contains(QLatin1Char('('))) return source;
    static const QRegularExpression choice(QStringLiteral("\\((\\w[\\w ]*)\\|(\\w[\\w ]*)\\)"),
                                           QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression ending(QStringLiteral("\\((e?s)\\)"));
    source.replace(choice, n == 1 ? QStringLiteral("\\1") : QStringLiteral("\\2"));
    source.replace(ending, n == 1 ? QString() : QStringLiteral("\\1"));
    return source;
}

void installEnglishPlurals() {
    static bool installed = false;
    if (installed || !QCoreApplication::instance()) return;
    installed = true;
    QCoreApplication::installTranslator(new EnglishPlurals(QCoreApplication::instance()));
}

} // namespace withy::ui
