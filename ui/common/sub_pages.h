// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

#include <functional>
#include <vector>

class QBoxLayout;
class QStackedWidget;

namespace withy::ui {

class AnswerLabel;
class Segments;
class TextLabel;

/// The frame of a place with several pages: its name and the page's buttons, the answer sentence, the
/// pages by segments (a list of their names where the window is too narrow for them).
class SubPages : public QWidget {
    Q_OBJECT

public:
    struct Named {
        const char* id; ///< "patches": stable, for object names and the action finder
        QString words;
        std::function<SubPage*()> make; ///< called once, when the page is first wanted
    };

    /// `place` is the stable word its object names begin with: "garden".
    SubPages(const char* place, const QString& title, const std::vector<Named>& pages,
             QWidget* parent = nullptr);

    /// "page.garden.patches" and so on, and what each page adds.
    void addActions(Actions& actions);
    bool goTo(const model::Ref& ref);
    void enter();
    void show(int page);
    void show(const char* id);
    using QWidget::show;
    [[nodiscard]] int current() const;
    /// Makes one page that nobody has asked for yet; false when all are made.
    bool makeNext();

Q_SIGNALS:
    void refused(const QString& sentence);
    void said(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);
    /// A page was asked for from elsewhere: the place should be shown.
    void wanted();

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    SubPage& at(int index); ///< made by now
    void wire(int index, SubPage& page);
    void turnTo(int page);
    void choose(int page);
    void showAnswer();

    QString place_;
    std::vector<Named> pages_;
    TextLabel* title_;
    QStackedWidget* tools_;
    AnswerLabel* answer_;
    Segments* segments_;
    QStackedWidget* stack_;
    std::vector<SubPage*> made_; ///< by page; null: not yet
    Actions* actions_ = nullptr;
};

} // namespace withy::ui
