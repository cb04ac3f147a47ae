// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/share_rows.h"

#include <QWidget>

namespace withy::ui {

/// Equal pieces at the bench: how many, one of them from above, its stems in their colours, and in words with
/// what differs in bold. Round collar: as most are; square collar: the odd ones.
class ShareGroupView : public QWidget {
public:
    explicit ShareGroupView(ShareGroup group, QWidget* parent = nullptr);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }

    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Word {
        QRectF at;
        QString words;
        bool strong = false;
    };

    [[nodiscard]] std::vector<Word> wordsFor(int width, double& bottom) const;
    void paintPlan(QPainter& p, const QRectF& box) const;

    ShareGroup group_;
};

} // namespace withy::ui
