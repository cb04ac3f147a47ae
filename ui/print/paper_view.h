// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/paper_setter.h"

#include <QScrollArea>

namespace withy::ui {

/// The sheets of a paper below each other, as they will be printed. While new ones are set the old ones stay,
/// dimmed. Page Up and Page Down go from sheet to sheet.
class PaperView : public QScrollArea {
    Q_OBJECT

public:
    enum class Zoom { page, width, full };

    explicit PaperView(QWidget* parent = nullptr);
    void setPaper(std::shared_ptr<const SetPaper> set);
    void setDimmed(bool dimmed);
    void setZoom(Zoom zoom);

    [[nodiscard]] Zoom zoom() const { return zoom_; }

    [[nodiscard]] bool isDimmed() const;
    [[nodiscard]] int pages() const;
    [[nodiscard]] int page() const; ///< in view, from 1
    void goTo(int page);
    /// The scale at which pictures fit the view and the screen, for a sheet of this size.
    [[nodiscard]] double dotsPerMm(paper::PaperSize size, bool landscape = false) const;

Q_SIGNALS:
    void pageChanged(int page, int pages);
    /// The pictures no longer have the right scale.
    void scaleChanged();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    class Sheets;

    void tell();

    Sheets* sheets_;
    Zoom zoom_ = Zoom::width;
};

} // namespace withy::ui
