// Reads the scale ten times a second and tells what changed.
#pragma once

#include "app/scale/scale_device.h"
#include "core/weighing/scale_feed.h"

#include <QObject>
#include <QTimer>

#include <memory>

namespace stow::scale {

class ScaleReader : public QObject {
    Q_OBJECT
public:
    explicit ScaleReader(std::unique_ptr<Device> device, QObject* parent = nullptr);

    const weighing::ScaleSays& now() const { return feed_.now(); }
    void poll();

signals:
    void says(const stow::weighing::ScaleSays& said);

private:
    void tell(const weighing::ScaleSays& said);

    std::unique_ptr<Device> device_;
    weighing::ScaleFeed feed_;
    weighing::ScaleSays told_;
    QTimer timer_;
};

} // namespace stow::scale
