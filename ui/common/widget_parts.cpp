// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/widget_parts.h"

#include "ui/paint/spacing.h"

#include <QEvent>
#include <QLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QString>
#include <QWidget>

namespace withy::ui {

namespace {

class GridSize : public QObject {
public:
    GridSize(QWidget* widget, void (QWidget::*set)(int), double steps)
        : QObject(widget), widget_(widget), set_(set), steps_(steps) {
        widget->installEventFilter(this);
        (widget->*set)(grid(steps));
    }

    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::StyleChange) (widget_->*set_)(grid(steps_));
        return false;
    }

private:
    QWidget* widget_;
    void (QWidget::*set_)(int);
    double steps_;
};

} // namespace

void onGrid(QWidget* widget, void (QWidget::*set)(int), double steps) {
    new GridSize(widget, set, steps);
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
    page->setProperty("page", true);
    area->setWidget(page);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
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
