// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/widget_parts.h"

#include "ui/paint/spacing.h"

#include <QEvent>
#include <QLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QString>
#include <QWidget>

#include <utility>

namespace withy::ui {

namespace {

class Dresser : public QObject {
public:
    Dresser(QWidget* widget, std::function<void()> dress) : QObject(widget), dress_(std::move(dress)) {
        widget->installEventFilter(this);
        dress_();
    }

    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::StyleChange) dress_();
        return false;
    }

private:
    std::function<void()> dress_;
};

} // namespace

void onGrid(QWidget* widget, void (QWidget::*set)(int), double steps) {
    dressAgain(widget, [widget, set, steps] { (widget->*set)(grid(steps)); });
}

void dressAgain(QWidget* widget, std::function<void()> dress) {
    new Dresser(widget, std::move(dress));
}

void markAs(QWidget* widget, const char* property, bool on) {
    if (widget->property(property).toBool() == on) return;
    widget->setProperty(property, on);
    widget->update();
}

void fixedOnGrid(QWidget* widget, double wide, double high) {
    onGrid(widget, &QWidget::setFixedWidth, wide);
    onGrid(widget, &QWidget::setFixedHeight, high);
}

QString asTyped(const QString& words) {
    return QString(words).replace(QLatin1Char('&'), QStringLiteral("&&"));
}

QString withoutMnemonic(const QString& words) {
    QString out;
    for (qsizetype i = 0; i < words.size(); ++i) {
        if (words[i] == QLatin1Char('&') && ++i == words.size()) break;
        out += words[i];
    }
    return out;
}

QPushButton* namedButton(const QString& words, const char* name) {
    auto* button = new QPushButton(words);
    button->setObjectName(QString::fromLatin1(name));
    return button;
}

QPushButton* linkButton(const QString& words, const char* name) {
    auto* button = new QPushButton(words);
    if (name) button->setObjectName(QString::fromLatin1(name));
    button->setProperty("look", QStringLiteral("link"));
    return button;
}

QScrollArea* scrolledPage(QWidget* page) {
    auto* area = new QScrollArea;
    area->setWidget(page);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

void replaceIn(QStackedWidget& stack, int index, QWidget* with) {
    const bool wasCurrent = stack.currentIndex() == index;
    auto* blank = stack.widget(index);
    stack.insertWidget(index, with);
    if (wasCurrent) stack.setCurrentIndex(index);
    delete blank;
}

void clearLayout(QLayout& layout) {
    while (auto* item = layout.takeAt(0)) {
        if (item->widget()) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
}

} // namespace withy::ui
