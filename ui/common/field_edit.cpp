// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/field_edit.h"

#include "ui/common/field_control.h"
#include "ui/common/record_table.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/paint/spacing.h"

#include <QApplication>
#include <QFocusEvent>
#include <QKeyEvent>
#include <QTimer>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

/// A sentence comes when the hand rests, not at every key of a half-written date.
constexpr int restMilliseconds = 250;

} // namespace

FieldEdit::FieldEdit(Workbench& bench, model::TableKind kind, const char* field, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , kind_(kind)
    , field_(model::tableInfo(kind).field(field))
    , sentence_(new TextLabel(TypeRole::caption, {}, Ink::osier, this))
    , rest_(new QTimer(this)) {
    Q_ASSERT_X(field_, "FieldEdit", field);
    const auto& table = model::tableInfo(kind).name;
    setObjectName(QString::fromLatin1(table.data(), static_cast<qsizetype>(table.size())) + QLatin1Char('.') +
                  QString::fromLatin1(field));
    control_ = makeControl(bench, *field_, this);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    box->addWidget(control_->widget());
    box->addWidget(sentence_);
    sentence_->setWordWrap(true);
    sentence_->setContentsMargins(grid(2), 0, 0, grid(1));
    sentence_->hide();
    setFocusProxy(control_->widget());
    control_->widget()->setProperty("look", QStringLiteral("field"));
    control_->widget()->setAccessibleName(label());
    control_->widget()->installEventFilter(this);
    control_->setPrompt(fieldPrompt(kind_, *field_));
    control_->edited = [this] { typing(); };
    control_->picked = [this] { commit(); };
    control_->makeAsked = [this](const QString& name) { makeNamed(name); };
    rest_->setSingleShot(true);
    rest_->setInterval(restMilliseconds);
    connect(rest_, &QTimer::timeout, this, [this] { judge(); });
    connect(&bench_, &Workbench::changed, this, [this] {
        if (!isDirty()) refill();
    });
    refill();
}

FieldEdit::~FieldEdit() = default;

QString FieldEdit::label() const {
    return fieldLabel(kind_, *field_);
}

QString FieldEdit::typed() const {
    return control_->text();
}

QString FieldEdit::sentence() const {
    return sentence_->isHidden() ? QString() : sentence_->text();
}

QWidget* FieldEdit::control() const {
    return control_->widget();
}

void FieldEdit::setPrompt(const QString& prompt) {
    control_->setPrompt(prompt);
}

void FieldEdit::setCaption(const QString& words, const QString& tip) {
    if (!caption_) {
        if (words.isEmpty()) return;
        caption_ = new TextLabel(TypeRole::caption, {}, Ink::caption, this);
        caption_->setWordWrap(true);
        caption_->setContentsMargins(grid(2), 0, 0, grid(1));
        layout()->addWidget(caption_);
    }
    caption_->setText(words);
    caption_->setToolTip(tip);
    caption_->setVisible(!words.isEmpty());
    control_->widget()->setToolTip(tip.isEmpty() ? words : tip);
}

void FieldEdit::setBoxed(bool on) {
    control_->widget()->setProperty("look", on ? QVariant() : QVariant(QStringLiteral("field")));
    control_->widget()->updateGeometry(); // the room about the words is another
    control_->widget()->update();
}

void FieldEdit::setTyped(const QString& text) {
    control_->setText(text);
    typing();
}

void FieldEdit::show(std::optional<std::int64_t> id) {
    if (id_ != id) {
        commit(); // what was typed belongs to the record it was typed for
        id_ = id;
    } else if (isDirty()) {
        return;
    }
    refill();
}

bool FieldEdit::isDirty() const {
    return id_ && control_->text() != shown_;
}

void FieldEdit::refill() {
    rest_->stop();
    const bool there = id_ && model::hasRecord(bench_.season(), kind_, *id_);
    const QString text = there ? textOf(bench_.season(), {kind_, *id_}, field_->name) : QString();
    if (!there) id_.reset();
    if (control_->text() != text || shown_ != text) control_->setText(text);
    shown_ = control_->text();
    control_->widget()->setEnabled(there);
    if (!bench_.canWrite()) control_->setReadOnly(); // after it: a choice can only be disabled
    say({});
}

void FieldEdit::typing() {
    markAs(control_->widget(), "blank", control_->text().isEmpty());
    rest_->start();
}

void FieldEdit::say(const QString& sentence) {
    if (sentence_->text() != sentence) { // every field is asked at every edit, and has mostly nothing to say
        sentence_->setText(sentence);
        sentence_->setVisible(!sentence.isEmpty());
        control_->widget()->setAccessibleDescription(sentence);
        markAs(control_->widget(), "wrong", !sentence.isEmpty());
    }
    markAs(control_->widget(), "blank", control_->text().isEmpty());
}

std::optional<model::Value> FieldEdit::read() {
    const auto& season = bench_.season();
    const model::Ref ref{kind_, *id_};
    const auto reading =
        readField(season, kind_, *field_, control_->text(), valueOf(season, ref, field_->name));
    mayMake_ = reading.mayMake;
    say(mayMake_       ? offerToMake(*field_, control_->text())
        : reading.ok() ? judgeField(season, ref, field_->name, *reading.value)
                       : reading.sentence);
    return sentence().isEmpty() ? reading.value : std::nullopt;
}

void FieldEdit::judge() {
    if (isDirty())
        static_cast<void>(read());
    else
        say({});
}

bool FieldEdit::commit() {
    rest_->stop();
    if (!isDirty()) {
        say({});
        return true;
    }
    const auto value = read();
    if (!value) {
        Q_EMIT refused(sentence_->text());
        return false;
    }
    return keep(edits::setField(bench_.season(), {kind_, *id_}, field_->name, *value));
}

bool FieldEdit::keep(const model::Edit& edit) {
    const QString typedText = control_->text();
    shown_ = typedText; // so that the notice of the change fills the field anew
    const QString said = bench_.apply(edit);
    if (said.isEmpty()) {
        refill();
        return true;
    }
    shown_ = id_ ? textOf(bench_.season(), {kind_, *id_}, field_->name) : QString();
    control_->setText(typedText);
    say(said);
    Q_EMIT refused(said);
    return false;
}

void FieldEdit::makeNamed(const QString& name) {
    if (!id_ || name.trimmed().isEmpty()) return;
    std::int64_t made = 0;
    const auto& season = bench_.season();
    const auto record = edits::addNamed(season, field_->refersTo, name, made);
    auto edit = edits::setField(season, {kind_, *id_}, field_->name, made);
    edits::join(edit, record);
    keep(edit);
}

void FieldEdit::putBack() {
    control_->setText(shown_);
    refill();
}

bool FieldEdit::handleKey(const QKeyEvent& key) {
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    if (enter && key.modifiers().testFlag(Qt::ControlModifier) && isDirty() && !read() && mayMake_) {
        makeNamed(control_->text());
        return true;
    }
    if (enter && (!control_->takesEnter() || key.modifiers().testFlag(Qt::ControlModifier))) {
        commit();
        return true;
    }
    if (key.key() == Qt::Key_Escape && (isDirty() || !sentence().isEmpty())) {
        putBack();
        return true;
    }
    if (key.key() == Qt::Key_Down && key.modifiers().testFlag(Qt::AltModifier)) {
        control_->openPopup();
        return true;
    }
    return false;
}

bool FieldEdit::eventFilter(QObject* watched, QEvent* event) {
    if (watched != control_->widget()) return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::KeyPress && handleKey(*static_cast<QKeyEvent*>(event))) return true;
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::MenuBarFocusReason && !control_->isPopupOpen())
            commit();
    }
    return QWidget::eventFilter(watched, event);
}

bool commitFocusedField(QWidget* window) {
    // A plain line keeps what was typed when it is left; a window that closes does not leave it.
    if (auto* line = qobject_cast<QLineEdit*>(window->focusWidget())) Q_EMIT line->editingFinished();
    bool all = true;
    for (auto* table : window->findChildren<RecordTable*>())
        all = table->commitEditor() && all;
    for (auto* field : window->findChildren<FieldEdit*>()) {
        if (!field->commit() && all) {
            field->control()->setFocus();
            all = false;
        }
    }
    return all;
}

} // namespace withy::ui
