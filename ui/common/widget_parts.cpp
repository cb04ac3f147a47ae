// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/widget_parts.h"

#include <QLayout>
#include <QPushButton>
#include <QScrollArea>

namespace withy::ui {

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
