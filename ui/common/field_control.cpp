// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/field_control.h"

#include "ui/common/colour_control.h"
#include "ui/common/day_control.h"
#include "ui/common/line_control.h"
#include "ui/common/long_text.h"
#include "ui/common/reference_control.h"
#include "ui/logic/fields/field_text.h"

#include <QCheckBox>
#include <QComboBox>

namespace withy::ui {

namespace {

using model::FieldInfo;
using model::FieldKind;

/// One of a few words, or yes and no where neither may be known.
class WordControl : public FieldControl {
public:
    WordControl(const QStringList& words, QWidget* parent) : box_(new QuietCombo(parent)) {
        box_->addItems(words);
        QObject::connect(box_, &QComboBox::activated, box_, [this] {
            if (picked) picked();
        });
    }

    [[nodiscard]] QWidget* widget() const override { return box_; }

    [[nodiscard]] QString text() const override { return box_->currentText(); }

    void setText(const QString& text) override { box_->setCurrentIndex(box_->findText(text)); }

    void setReadOnly() override { box_->setEnabled(false); }

    [[nodiscard]] bool isPopupOpen() const override { return box_->view()->isVisible(); }

    void openPopup() override { box_->showPopup(); }

private:
    QuietCombo* box_;
};

class TickControl : public FieldControl {
public:
    explicit TickControl(QWidget* parent) : box_(new QCheckBox(parent)) {
        QObject::connect(box_, &QCheckBox::clicked, box_, [this] {
            showWord();
            if (picked) picked();
        });
    }

    [[nodiscard]] QWidget* widget() const override { return box_; }

    [[nodiscard]] QString text() const override { return wordText(box_->isChecked() ? "yes" : "no"); }

    void setText(const QString& text) override {
        box_->setChecked(text == wordText("yes"));
        showWord();
    }

    void setReadOnly() override { box_->setEnabled(false); }

private:
    void showWord() { box_->setText(text()); }

    QCheckBox* box_;
};

QStringList wordsOf(const FieldInfo& field) {
    QStringList words;
    if (field.optional) words << QString();
    if (field.kind == FieldKind::yesNo) return words << wordText("yes") << wordText("no");
    for (const auto word : field.words)
        words << wordText(word);
    return words;
}

} // namespace

std::unique_ptr<FieldControl> makeControl(Workbench& bench, const FieldInfo& field, QWidget* parent) {
    switch (field.kind) {
    case FieldKind::word:
        return std::make_unique<WordControl>(wordsOf(field), parent);
    case FieldKind::yesNo:
        if (field.optional) return std::make_unique<WordControl>(wordsOf(field), parent);
        return std::make_unique<TickControl>(parent);
    case FieldKind::reference:
        return std::make_unique<ReferenceControl>(bench, field, parent);
    case FieldKind::day:
    case FieldKind::localTime:
        return std::make_unique<DayControl>(bench, field, parent);
    case FieldKind::colour:
        return std::make_unique<ColourControl>(parent);
    default:
        break;
    }
    if (isLongText(field)) return std::make_unique<LongTextControl>(parent);
    return std::make_unique<LineControl>(parent);
}

} // namespace withy::ui
