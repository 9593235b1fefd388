// Hand-over: what each courier takes, on a numbered list, and the tracking numbers.
#pragma once

#include "app/view/dispatch.h"
#include "app/view/guarded.h"
#include "app/view/preview.h"
#include "app/view/row_model.h"
#include "core/book/parcels.h"

namespace stow {
class Day;
}

namespace stow::view {

struct CarrierRow {
    Q_GADGET
    Q_PROPERTY(QString carrier MEMBER carrier)
    Q_PROPERTY(QString collection MEMBER collection)
    Q_PROPERTY(QString remaining MEMBER left)
    Q_PROPERTY(int labelled MEMBER labelled)
    Q_PROPERTY(int behind MEMBER behind)
    Q_PROPERTY(QString behindWords MEMBER behind_words)
    Q_PROPERTY(QString closed MEMBER closed)
public:
    QString carrier, collection, left;
    int labelled = 0, behind = 0; // behind: not labelled yet, so they would stay
    QString behind_words;         // which promises break, what else keeps them
    QString closed;               // "list 1 closed 15:40, 7 parcels"; empty: none today
};

struct LabelledRow {
    Q_GADGET
    Q_PROPERTY(qlonglong parcel MEMBER parcel)
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(QString buyer MEMBER buyer)
    Q_PROPERTY(QString place MEMBER place)
    Q_PROPERTY(QString carrier MEMBER carrier)
    Q_PROPERTY(QString service MEMBER service)
    Q_PROPERTY(QString weight MEMBER weight)
    Q_PROPERTY(QString postage MEMBER postage)
    Q_PROPERTY(QString tracking MEMBER tracking)
    Q_PROPERTY(QString handedOver MEMBER list)
public:
    qlonglong parcel = 0;
    QString number, buyer, place, carrier, service, weight, postage, tracking, list;
};

class HandOverController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* carriers READ carriers CONSTANT)
    Q_PROPERTY(stow::view::RowModel* parcels READ parcels CONSTANT)
    Q_PROPERTY(QString headline READ headline NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(bool empty READ empty NOTIFY changed)
    Q_PROPERTY(stow::view::DispatchController* dispatch READ dispatch CONSTANT)
public:
    explicit HandOverController(Day& day, QObject* parent = nullptr);

    RowModel* carriers() { return &carriers_; }
    RowModel* parcels() { return &parcels_; }
    QString headline() const { return headline_; }
    QString summary() const { return summary_; }
    bool empty() const { return parcels_.all().empty(); }
    DispatchController* dispatch() { return &dispatch_; }

    Q_INVOKABLE void courierIsHere(int carrier); // closes the list of exactly the labelled parcels, and prints it
    Q_INVOKABLE QString setTracking(int parcel, const QString& number);
    Q_INVOKABLE bool mayComeBack(int parcel); // else says why not
    // `goods`: 0 not looked at yet, 1 on the shelf again, 2 written off.
    Q_INVOKABLE void cameBack(int parcel, const QString& why, int goods, bool again);

    std::vector<DraftPaper> drafts(); // the lists that would be closed now, and today's closed ones

    void refresh();

signals:
    void changed();
    void said(const QString& words);
    void written(const QString& paper, const QString& file); // to be printed, where she has a printer for it

private:
    void print_again(const book::HandOverList& list);

    Day& day_;
    Guarded<DispatchController> dispatch_;
    Rows<CarrierRow> carriers_;
    Rows<LabelledRow> parcels_;
    QString headline_, summary_;
};

} // namespace stow::view
