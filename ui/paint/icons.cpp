// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/icons.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QSvgRenderer>

#include <map>
#include <memory>

namespace withy::ui {

namespace {

const char* fileOf(IconName name) {
    switch (name) {
    case IconName::bookings:
        return "bookings";
    case IconName::designs:
        return "designs";
    case IconName::garden:
        return "garden";
    case IconName::shed:
        return "shed";
    case IconName::diary:
        return "diary";
    case IconName::season:
        return "season";
    case IconName::add:
        return "add";
    case IconName::search:
        return "search";
    case IconName::caution:
        return "caution";
    case IconName::back:
        return "back";
    }
    return "";
}

/// The files are drawn in black; one coloured copy is read for each colour asked for.
QByteArray tinted(IconName name, const QColor& colour) {
    QFile file(QStringLiteral(":/withy/icons/%1.svg").arg(QString::fromLatin1(fileOf(name))));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return file.readAll().replace("#000000", colour.name().toLatin1());
}

void draw(QPainter& painter, const QRectF& where, IconName name, const QColor& colour) {
    static std::map<std::pair<IconName, QRgb>, std::unique_ptr<QSvgRenderer>> known;
    auto& renderer = known[{name, colour.rgb()}];
    if (!renderer) renderer = std::make_unique<QSvgRenderer>(tinted(name, colour));
    renderer->render(&painter, where);
}

class Engine : public QIconEngine {
public:
    Engine(IconName name, QColor usual, QColor disabled) : name_(name), usual_(usual), disabled_(disabled) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        draw(*painter, rect, name_, mode == QIcon::Disabled ? disabled_ : usual_);
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap out(size);
        out.fill(Qt::transparent);
        QPainter painter(&out);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return out;
    }

    [[nodiscard]] QIconEngine* clone() const override { return new Engine(*this); }

private:
    IconName name_;
    QColor usual_;
    QColor disabled_;
};

} // namespace

QIcon icon(IconName name, const Palette& palette, Role role) {
    return QIcon(new Engine(name, palette.of(role), palette.of(Role::ink3)));
}

QPixmap iconPixmap(IconName name, const QColor& colour, int size, double devicePixelRatio) {
    const int pixels = qRound(size * devicePixelRatio);
    QPixmap out(pixels, pixels);
    out.setDevicePixelRatio(devicePixelRatio);
    out.fill(Qt::transparent);
    QPainter painter(&out);
    draw(painter, QRectF(0, 0, size, size), name, colour);
    return out;
}

QIcon applicationIcon() {
    QIcon icon;
    for (const auto& [file, sizes] :
         {std::pair{"withy-32", std::array{16, 24, 32}}, std::pair{"withy", std::array{48, 128, 256}}}) {
        QSvgRenderer renderer(QStringLiteral(":/withy/icons/%1.svg").arg(QString::fromLatin1(file)));
        for (const int size : sizes) {
            QPixmap pixmap(size, size);
            pixmap.fill(Qt::transparent);
            QPainter painter(&pixmap);
            renderer.render(&painter);
            icon.addPixmap(pixmap);
        }
    }
    return icon;
}

} // namespace withy::ui
