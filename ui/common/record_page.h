// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/schema.h"
#endif
#include "ui/common/record_form.h"
#include "ui/common/record_table.h"
#include "ui/common/sub_page.h"

#include <functional>

class QHBoxLayout;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace withy::ui {

class ListAndDetail;
class TextLabel;

/// What a page of one table shows.
struct RecordPageSpec {
    RecordTableSpec table;
    const char* id = "";                ///< begins its object names: "shed.containers"
    QString name = {};                  ///< for screen readers: "Containers"
    QString emptyWords = {};            ///< while there are no rows
    std::vector<FormGroup> groups = {}; ///< the chosen record in full; none: the table alone
    QString findPrompt = {};            ///< a field to find rows by typing; empty: none
    QString newWords = {};              ///< "&New container": the button and its action; empty: none
    std::function<Answer()> answer = nullptr;
};

/// A table of records, and what is chosen of it in full beside it (below, where it is narrow), with the
/// tables of its parts. Where a row cannot be taken out, it says who uses it and the ways on.
class RecordPage : public SubPage {
    Q_OBJECT

public:
    RecordPage(Workbench& bench, RecordPageSpec spec, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    bool goTo(const model::Ref& ref) override;
    void enter() override;
    bool commit() override;
    [[nodiscard]] QWidget* tools() const override;

    [[nodiscard]] RecordTable& table() const { return *table_; }

    [[nodiscard]] RecordForm* form() const { return form_; }

    /// The parts of the chosen record as a table of their own: the reels of a ribbon.
    RecordTable* addPart(const QString& head, RecordTableSpec spec, const QString& emptyWords);
    /// Anything else, above the form (atTop) or below all there is.
    void addToDetail(QWidget* widget, bool atTop = false);
    /// Beside the list whatever is chosen; for pages without a form.
    void addBeside(QWidget* widget);
    void addTool(QWidget* tool);
    void setListShare(int percent);

    [[nodiscard]] std::optional<std::int64_t> chosenId() const { return table_->chosenId(); }

Q_SIGNALS:
    void chosen(std::optional<std::int64_t> id);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void layList();
    void layDetail();
    void makeDetail();
    void showChosen(std::optional<std::int64_t> id);
    void chooseSomething();

    RecordPageSpec spec_;
    RecordTable* table_;
    RecordForm* form_ = nullptr;
    std::optional<std::int64_t> shown_; ///< in the form
    ListAndDetail* both_ = nullptr;
    QWidget* list_;
    QWidget* detail_ = nullptr;
    QWidget* inDetail_ = nullptr; ///< hidden while nothing is chosen
    QVBoxLayout* parts_ = nullptr;
    TextLabel* nothing_ = nullptr;
    QHBoxLayout* above_ = nullptr;
    QLineEdit* find_ = nullptr;
    QWidget* tools_;
    std::vector<RecordTable*> partTables_;
};

} // namespace withy::ui
