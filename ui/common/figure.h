// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/base/working.h"
#include "core/model/edit.h"
#include "ui/logic/wording.h"
#endif

#include <QToolButton>
#include <QWidget>

#include <optional>
#include <vector>

class QPushButton;
class QVBoxLayout;

namespace withy::ui {

/// What a figure came from, and where what it rests on can be changed.
struct FigureFacts {
    QString figure; ///< "53"
    QString means;  ///< for screen readers: "stems of dahlia needed"
    Working working;
    std::optional<model::Ref> leadsTo; ///< the record behind it, if one place can change it
    QString leadWords;                 ///< "Change the spare"
    QStringList words;                 ///< a line each, when their units do not say all (money); else empty
    model::UnitSystem units = model::UnitSystem::metric; ///< of the working's lines
};

/// A computed figure: a small button with a dotted underline that opens its working.
class FigureButton : public QToolButton {
    Q_OBJECT

public:
    explicit FigureButton(QWidget* parent = nullptr);
    void setFacts(const FigureFacts& facts);

    [[nodiscard]] const FigureFacts& facts() const { return facts_; }

    /// Just its words, so that the dots run close below them and figures stand in one column.
    [[nodiscard]] QSize sizeHint() const override;

    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

Q_SIGNALS:
    /// Asked to open or shut: the row shows a WorkingPanel below itself.
    void opened(bool open);

protected:
    /// Enter opens it, as Space does.
    void keyPressEvent(QKeyEvent* event) override;
    /// With its page gone it is shut, so that a page opens as it was made.
    void hideEvent(QHideEvent* event) override;

private:
    FigureFacts facts_;
};

/// The working of one figure, on mist with a stem at its left; opens below the row it is about. Beside a line
/// stands the way to what it rests on. What is not open is not made.
class WorkingPanel : public QWidget {
    Q_OBJECT

public:
    explicit WorkingPanel(QWidget* parent = nullptr);
    void setFacts(const FigureFacts& facts);

    /// The way to what the whole rests on; null when there is none.
    [[nodiscard]] QPushButton* lead();
    /// All ways, in the order of their lines, the whole's last.
    [[nodiscard]] std::vector<QPushButton*> leads();

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void make();
    QPushButton* addLead(const QString& words, const QString& spoken, const model::Ref& place);

    QVBoxLayout* rows_;
    QPushButton* lead_ = nullptr;
    std::vector<QPushButton*> lineLeads_;
    FigureFacts facts_;
    std::vector<WorkingGroup> shown_;
    QString shownLead_;
    bool made_ = false; ///< what it holds is of facts_
};

} // namespace withy::ui
