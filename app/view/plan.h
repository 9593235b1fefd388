// Plan: each order's outer beside the ones it beat, and what the day needs.
#pragma once

#include "app/view/outer_comparison.h"
#include "app/view/row_model.h"
#include "app/view/scenes.h"
#include "app/words/measures.h"
#include "core/planning/plan.h"

#include <QVariant>

#include <deque>
#include <memory>
#include <unordered_map>

namespace stow {
class Day;
struct PlanInput;
} // namespace stow

namespace stow::view {

class Work;

struct PlanRow {
    Q_GADGET
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(QString buyer MEMBER buyer)
    Q_PROPERTY(QString place MEMBER place)
    Q_PROPERTY(QString contents MEMBER contents)
    Q_PROPERTY(QString warning MEMBER warning)
    Q_PROPERTY(QString part MEMBER part)
    Q_PROPERTY(stow::view::OuterRowScene outers MEMBER outers CONSTANT)
    Q_PROPERTY(QString outer MEMBER outer)
    Q_PROPERTY(QString proof MEMBER proof)
    Q_PROPERTY(QString filler MEMBER filler)
    Q_PROPERTY(QString weight MEMBER weight)
    Q_PROPERTY(QString price MEMBER price)
    Q_PROPERTY(QString service MEMBER service)
    Q_PROPERTY(double stepShare MEMBER step_share)
    Q_PROPERTY(QString edge MEMBER edge)
    Q_PROPERTY(bool edgeAtRisk MEMBER edge_at_risk)
    Q_PROPERTY(QString cheaper MEMBER cheaper)
    Q_PROPERTY(bool locked MEMBER locked)
    Q_PROPERTY(QString sentence MEMBER sentence)
    Q_PROPERTY(qlonglong parcel MEMBER parcel)
    Q_PROPERTY(qlonglong order MEMBER order)
public:
    QString number, buyer, place, contents, warning, part;
    OuterRowScene outers;
    QString outer, proof, filler, weight, price, service;
    double step_share = 0; // expected weight of the step edge, 0 to 1
    QString edge;          // "182 g to the step edge"
    bool edge_at_risk = false;
    QString cheaper; // "K4 would cost 0.40 less in all"; empty: no
    bool locked = false;
    QString sentence; // for the screen reader
    qlonglong parcel = 0, order = 0;
    Money postage;   // without a service: none
    double over = 0; // chance that it is past the step edge
    qlonglong id() const { return parcel; }
};

struct StuckRow {
    Q_GADGET
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(QString buyer MEMBER buyer)
    Q_PROPERTY(QString why MEMBER why)
    Q_PROPERTY(qlonglong order MEMBER order)
public:
    QString number, buyer, why;
    qlonglong order = 0;
};

struct OuterChoice {
    Q_GADGET
    Q_PROPERTY(QString code MEMBER code)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(bool possible MEMBER possible)
public:
    QString code, name, words;
    bool possible = true;
};

class PlanController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* rows READ rows CONSTANT)
    Q_PROPERTY(stow::view::RowModel* stuck READ stuck CONSTANT)
    Q_PROPERTY(stow::view::RowModel* choices READ choices CONSTANT)              // other outers for the row asked about
    Q_PROPERTY(stow::view::OuterComparison* comparison READ comparison CONSTANT) // of two of them
    Q_PROPERTY(QString headline READ headline NOTIFY changed)   // "9 parcels planned", "9 orders to plan"
    Q_PROPERTY(QString totals READ totals NOTIFY changed)       // "9 parcels · postage 52.30 · …"
    Q_PROPERTY(QString savings READ savings NOTIFY changed)     // what the whole-day choice saved
    Q_PROPERTY(QString shortages READ shortages NOTIFY changed) // empty: enough of everything
    Q_PROPERTY(QString preference READ preference NOTIFY changed)
    Q_PROPERTY(bool empty READ empty NOTIFY changed)
    Q_PROPERTY(bool stale READ stale NOTIFY changed) // orders are waiting that the plan does not hold
    Q_PROPERTY(bool working READ working NOTIFY workChanged)
    Q_PROPERTY(double progress READ progress NOTIFY workChanged)
    Q_PROPERTY(QString workWords READ workWords NOTIFY workChanged)
public:
    explicit PlanController(Day& day, QObject* parent = nullptr);
    ~PlanController() override;

    RowModel* rows() { return &rows_; }
    RowModel* stuck() { return &stuck_; }
    RowModel* choices() { return &choices_; }
    OuterComparison* comparison() { return &comparison_; }
    QString headline() const { return headline_; }
    QString totals() const { return totals_; }
    QString savings() const { return savings_; }
    QString shortages() const { return shortages_; }
    QString preference() const { return preference_; }
    bool empty() const { return rows_.all().empty() && stuck_.all().empty(); }
    bool stale() const { return stale_; }
    bool working() const;
    double progress() const;
    QString workWords() const { return work_words_; }

    Q_INVOKABLE void plan(); // everything that is not locked
    Q_INVOKABLE void cancel();
    Q_INVOKABLE void nextPreference();
    Q_INVOKABLE void askOuters(int row);
    Q_INVOKABLE bool useOuter(int row, const QString& code);
    Q_INVOKABLE void toggleLock(int row); // the marked parcels like this one; where none is marked, this one
    Q_INVOKABLE void printAndPick();      // papers of the round out, plans locked, on to Pick

    void refresh();

signals:
    void changed();
    void workChanged();
    void said(const QString& words);
    void readyToPick();

private:
    struct Sums { // of one parcel, for those of the day
        std::optional<Money> postage, larger;
        Money packaging;
        Volume filler;
        Length tape;
    };
    struct From {
        int parcel = -1, cupboard = -1;
        std::vector<int> orders;
        words::Measures measures = words::Measures::metric;
        bool operator==(const From&) const = default;
    };
    struct Known { // a row, and what it was worked out from
        From from;
        PlanRow row;
        bool keeps_promise = true;
        Sums sums;
    };
    const Known* fresh(const shop::Parcel& parcel) const;
    From from(const shop::Parcel& parcel) const;
    const Known& read(const shop::Parcel& parcel);
    void read_more();
    static Sums sums_of(const planning::ParcelPlan& plan);
    planning::Preference preferred() const;
    void show_rows(std::vector<PlanRow> rows, const std::vector<Sums>& sums);
    void show_first(const planning::DayPlan& plan);
    void keep(const PlanInput& input, const planning::DayPlan& plan);

    Day& day_;
    std::vector<planning::StuckOrder> stuck_orders_; // of the last planning
    std::vector<planning::Shortage> shortages_found_;
    planning::DaySharing sharing_;
    Rows<PlanRow> rows_;
    Rows<StuckRow> stuck_;
    Rows<OuterChoice> choices_;
    OuterComparison comparison_;
    QString headline_, totals_, savings_, shortages_, preference_, work_words_;
    bool stale_ = false;
    std::unordered_map<std::int64_t, Known> known_;
    std::deque<shop::ParcelId> unread_;
    bool reading_ = false;
    std::unique_ptr<Work> work_;
};

} // namespace stow::view
