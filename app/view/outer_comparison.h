// Two outers for one parcel side by side, to one scale: what each takes, weighs, costs and when it arrives.
#pragma once

#include "app/view/background.h"
#include "app/view/row_model.h"
#include "app/view/scenes.h"
#include "core/planning/planner.h"

#include <tl/expected.hpp>

#include <memory>
#include <optional>

namespace stow {
class Day;
struct ParcelInput;
} // namespace stow

namespace stow::view {

struct ComparedFact {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString held MEMBER held)
    Q_PROPERTY(QString other MEMBER other)
    Q_PROPERTY(int better MEMBER better)
public:
    QString name, held, other;
    int better = 0; // 1: the held one, 2: the other, 0: alike, or no telling
};

class OuterComparison : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::OuterRowScene scene READ scene NOTIFY changed) // the held one, then the other
    Q_PROPERTY(stow::view::RowModel* facts READ facts CONSTANT)
    Q_PROPERTY(QString held READ held NOTIFY changed)       // "K3"
    Q_PROPERTY(QString other READ other NOTIFY changed)     // empty: none was looked at
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed) // "K4: 0.40 dearer in all"
    Q_PROPERTY(bool canHold READ canHold NOTIFY changed)    // the other one holds it
    Q_PROPERTY(bool working READ working NOTIFY changed)
public:
    explicit OuterComparison(Day& day, QObject* parent = nullptr);
    ~OuterComparison() override;

    OuterRowScene scene() const { return scene_; }
    RowModel* facts() { return &facts_; }
    QString held() const;
    QString other() const;
    QString verdict() const { return verdict_; }
    bool canHold() const { return other_ && other_->plan && !working(); }
    bool working() const { return work_.running(); }

    void begin(shop::ParcelId parcel);           // holds the outer it has
    Q_INVOKABLE void look(const QString& outer); // works the other one out
    Q_INVOKABLE void hold();                     // the other one is held from now on

signals:
    void changed();

private:
    using Planned = tl::expected<planning::ParcelPlan, planning::StuckOrder>;
    struct Side {
        shop::SupplyCode outer;
        Planned plan;
    };
    void work_out(const shop::SupplyCode& outer);
    void show();

    Day& day_;
    Work work_;
    std::shared_ptr<const ParcelInput> input_;
    std::optional<Side> held_, other_;
    std::optional<shop::SupplyCode> wanted_; // looked at while another was being worked out
    Rows<ComparedFact> facts_;
    OuterRowScene scene_;
    QString verdict_;
};

} // namespace stow::view
