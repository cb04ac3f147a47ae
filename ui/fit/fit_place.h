// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

#ifndef Q_MOC_RUN
#include "ui/logic/fit_runner.h"
#endif

class QBoxLayout;

namespace withy::ui {

class FitQuestions;
class FitReply;

/// "Can I take it?": asked and answered on one page, reached from anywhere by one key. It changes nothing
/// until it is made an enquiry or held.
class FitPlace : public Place {
    Q_OBJECT

public:
    FitPlace(Workbench& bench, QWidget* parent);

    void addActions(Actions& actions) override;

    bool goTo(const model::Ref&) override { return false; }

    [[nodiscard]] QString helpPage() const override { return QStringLiteral("fit-check"); }

    void enter() override;
    /// For tests: until the newest question is answered and shown.
    void waitForAnswer();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void ask();
    void showAnswer();
    void keep(bool hold);
    void fold();

    FitRunner runner_;
    std::shared_ptr<const FitRunner::Run> shown_;
    bool waiting_ = false; ///< a question is open; what is shown is older
    QWidget* page_;
    QBoxLayout* sides_;
    FitQuestions* questions_;
    FitReply* reply_;
};

} // namespace withy::ui
