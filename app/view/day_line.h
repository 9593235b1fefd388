// The line across the top: how many orders stand at each step, and when the next courier comes.
#pragma once

#include "app/view/row_model.h"

namespace stow {
class Day;
}

namespace stow::view {

struct DayStep {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(int waiting MEMBER waiting)
    Q_PROPERTY(int place MEMBER place)
public:
    QString name, key; // "Plan", "F2"
    int waiting = 0;
    int place = 0; // Desk::Place
};

class DayLine : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(stow::view::RowModel* steps READ steps CONSTANT)
    Q_PROPERTY(QString progress READ progress NOTIFY changed)     // "15 of 24 on their way"
    Q_PROPERTY(double emptied READ emptied NOTIFY changed)        // 0 to 1
    Q_PROPERTY(QString collection READ collection NOTIFY changed) // "Skua Post collects 16:30"; empty: none today
    Q_PROPERTY(QString left READ left NOTIFY changed)             // "42 min left"
    Q_PROPERTY(bool pressing READ pressing NOTIFY changed)        // less than an hour
public:
    explicit DayLine(Day& day, QObject* parent = nullptr);

    RowModel* steps() { return &steps_; }
    QString progress() const { return progress_; }
    double emptied() const { return emptied_; }
    QString collection() const { return collection_; }
    QString left() const { return left_; }
    bool pressing() const { return pressing_; }

    void refresh();

signals:
    void changed();

private:
    Day& day_;
    Rows<DayStep> steps_;
    QString progress_, collection_, left_;
    double emptied_ = 0;
    bool pressing_ = false;
};

} // namespace stow::view
