// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style.h"

#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QApplication>
#include <QDialog>
#include <QEvent>
#include <QFile>
#include <QMainWindow>
#include <QPalette>
#include <QPointer>
#include <QStyle>
#include <QStyleFactory>
#include <QWidget>

#include <array>
#include <utility>

namespace withy::ui {

namespace {

Palette& current() {
    static Palette palette;
    return palette;
}

QPalette qtPalette(const Palette& p) {
    QPalette q;
    q.setColor(QPalette::Window, p.of(Role::paper));
    q.setColor(QPalette::Base, p.of(Role::sheet));
    q.setColor(QPalette::AlternateBase, p.of(Role::mist));
    q.setColor(QPalette::Button, p.of(Role::sheet));
    q.setColor(QPalette::ToolTipBase, p.of(Role::mist));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText,
                            QPalette::BrightText})
        q.setColor(role, p.of(Role::ink));
    q.setColor(QPalette::PlaceholderText, p.of(Role::ink3));
    q.setColor(QPalette::Highlight, p.of(Role::wash));
    q.setColor(QPalette::HighlightedText, p.of(Role::ink));
    q.setColor(QPalette::Link, p.of(Role::green));
    q.setColor(QPalette::LinkVisited, p.of(Role::green));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        q.setColor(QPalette::Disabled, role, p.of(Role::ink3));
    q.setColor(QPalette::Light, p.of(Role::sheet));
    q.setColor(QPalette::Midlight, p.of(Role::line));
    q.setColor(QPalette::Mid, p.of(Role::edge));
    q.setColor(QPalette::Dark, p.of(Role::edge));
    q.setColor(QPalette::Shadow, p.of(Role::edge));
    return q;
}

/// Gives every window the style sheet as it is shown. It is not the application's: under a sheet of that,
/// Qt styles a whole subtree anew each time a part of a page is put into another, before any is seen.
class Dresser : public QObject {
public:
    explicit Dresser(QCoreApplication& app) : QObject(&app) { app.installEventFilter(this); }

    void setSheet(const QString& sheet) {
        sheet_ = sheet;
        for (auto* window : QApplication::topLevelWidgets())
            if (isDressed(*window)) window->setStyleSheet(sheet_);
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        // A main window or dialog before it is first laid out; what else turns out to be one when it shows.
        const bool early = event->type() == QEvent::Polish &&
                           (qobject_cast<QMainWindow*>(watched) || qobject_cast<QDialog*>(watched));
        if (early || (event->type() == QEvent::Show && watched->isWidgetType()))
            dress(*static_cast<QWidget*>(watched));
        return false;
    }

private:
    static constexpr auto dressed = "dressed";

    void dress(QWidget& window) const {
        if (!window.isWindow() || window.parentWidget() || isDressed(window)) return;
        window.setProperty(dressed, true);
        window.setStyleSheet(sheet_);
    }

    static bool isDressed(const QWidget& window) { return window.property(dressed).toBool(); }

    QString sheet_;
};

Dresser& dresser(QApplication& app) {
    static QPointer<Dresser> one;
    if (!one) one = new Dresser(app);
    return *one;
}

} // namespace

const Palette& currentPalette() {
    return current();
}

Theme systemTheme() {
    // Asked once, before our own palette is set: Qt 6.4 tells a dark desktop by its colours only.
    static const Theme theme = QPalette(QApplication::palette()).color(QPalette::Window).lightness() < 128
                                   ? Theme::dark
                                   : Theme::light;
    return theme;
}

QString styleSheetFor(const Palette& palette) {
    QFile file(QStringLiteral(":/withy/style/withy.qss"));
    const bool there = file.open(QIODevice::ReadOnly);
    Q_ASSERT(there);
    QString sheet = QString::fromUtf8(there ? file.readAll() : QByteArray());
    const std::array<std::pair<const char*, Role>, 14> colours{{
        {"@paper", Role::paper},
        {"@sheet", Role::sheet},
        {"@mist", Role::mist},
        {"@wash", Role::wash},
        {"@line", Role::line},
        {"@edge", Role::edge},
        {"@ink3", Role::ink3},
        {"@ink2", Role::ink2},
        {"@ink", Role::ink},
        {"@onGreen", Role::onGreen},
        {"@green", Role::green},
        {"@osier", Role::osier},
        {"@waterEdge", Role::waterEdge},
        {"@water", Role::water},
    }};
    for (const auto& [word, role] : colours)
        sheet.replace(QLatin1String(word), palette.of(role).name());
    const std::array<std::pair<const char*, int>, 7> sizes{{
        {"@controlInRow", controlInRow()},
        {"@control", control()},
        {"@row", tableRow()},
        {"@gap1", grid(1)},
        {"@gap2", grid(2)},
        {"@gap3", grid(3)},
        {"@gap4", grid(4)},
    }};
    for (const auto& [word, pixels] : sizes)
        sheet.replace(QLatin1String(word), QString::number(pixels) + QStringLiteral("px"));
    sheet.replace(QLatin1String("@caption"),
                  QString::number(typeFont(TypeRole::caption).pointSizeF()) + QStringLiteral("pt"));
    return sheet;
}

void applyStyle(QApplication& app, Theme theme, double points) {
    static_cast<void>(systemTheme());
    setTextPoints(points);
    current().theme = theme;
    if (app.style()->name() != QLatin1String("fusion"))
        QApplication::setStyle(QStyleFactory::create(QStringLiteral("fusion")));
    QApplication::setPalette(qtPalette(current()));
    QApplication::setFont(typeFont(TypeRole::text));
    // A desktop may give these a font of their own, which would not follow our size of text.
    for (const char* part :
         {"QMenuBar", "QMenu", "QTipLabel", "QMessageBox", "QHeaderView", "QComboMenuItem"})
        QApplication::setFont(typeFont(TypeRole::text), part);
    dresser(app).setSheet(styleSheetFor(current()));
}

} // namespace withy::ui
