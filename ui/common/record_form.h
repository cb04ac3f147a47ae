// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/field_edit.h"

#include <vector>

class QGridLayout;

namespace withy::ui {

/// A head with a rule under it, and the fields below.
struct FormGroup {
    QString head;
    std::vector<const char*> fields;
};

/// The fields of one record in groups; one column, or two where there is room.
class RecordForm : public QWidget {
    Q_OBJECT

public:
    RecordForm(Workbench& bench, model::TableKind kind, const std::vector<FormGroup>& groups,
               QWidget* parent = nullptr);

    void show(std::optional<std::int64_t> id);
    using QWidget::show;

    /// Null when the form has no such field.
    [[nodiscard]] FieldEdit* field(const char* name) const;
    /// Keeps what is being typed; false when it was refused.
    bool commit();
    /// At most this many columns; two otherwise.
    void setMostColumns(int n);

Q_SIGNALS:
    void refused(const QString& sentence);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeGroup(Workbench& bench, model::TableKind kind, const FormGroup& group);
    void arrange(int columns);
    [[nodiscard]] int columnsFor(int width) const;

    std::vector<QWidget*> groups_;
    std::vector<QWidget*> labels_;
    std::vector<FieldEdit*> fields_;
    QGridLayout* grid_ = nullptr;
    int columns_ = 0;
    int mostColumns_ = 2;
};

} // namespace withy::ui
