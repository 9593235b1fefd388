// Pick: one walk along the shelves, one tray an order.
#pragma once

#include "app/view/preview.h"
#include "app/view/row_model.h"
#include "core/book/parcels.h"
#include "core/papers/pick_list.h"
#include "core/shop/parcels.h"

namespace stow {
class Day;
}

namespace stow::view {

struct WalkRow { // one good at one shelf place, for several trays
    Q_GADGET
    Q_PROPERTY(QString shelf MEMBER shelf)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString code MEMBER code)
    Q_PROPERTY(int count MEMBER count)
    Q_PROPERTY(int picked MEMBER picked)
    Q_PROPERTY(QString trays MEMBER trays)
    Q_PROPERTY(QString personal MEMBER personal)
    Q_PROPERTY(bool done MEMBER done)
    Q_PROPERTY(bool first MEMBER first)
public:
    QString shelf, name, code;
    int count = 1, picked = 0;
    QString trays;    // "A 2 · C 1"
    QString personal; // "engrave: Anna"
    bool done = false;
    bool first = false; // first of its shelf
};

struct TrayRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString parcel MEMBER parcel)
    Q_PROPERTY(QString buyer MEMBER buyer)
    Q_PROPERTY(QString outer MEMBER outer)
    Q_PROPERTY(int missing MEMBER missing)
public:
    QString name, parcel, buyer, outer;
    int missing = 0; // pieces not in it yet
};

class PickController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* walk READ walk CONSTANT)
    Q_PROPERTY(stow::view::RowModel* trays READ trays CONSTANT)
    Q_PROPERTY(QString headline READ headline NOTIFY changed) // "Round 1 of 4: 6 trays, 17 pieces"
    Q_PROPERTY(QString next READ next NOTIFY changed)         // "Shelf B2: 3 ink bottles, sea green"
    Q_PROPERTY(QString nextTrays READ nextTrays NOTIFY changed)
    Q_PROPERTY(int nextRow READ nextRow NOTIFY changed)
    Q_PROPERTY(double done READ done NOTIFY changed)
    Q_PROPERTY(bool empty READ empty NOTIFY changed)
    Q_PROPERTY(bool roundDone READ roundDone NOTIFY changed)
    Q_PROPERTY(bool canStart READ canStart NOTIFY changed) // planned parcels wait for a round
public:
    explicit PickController(Day& day, QObject* parent = nullptr);

    RowModel* walk() { return &walk_; }
    RowModel* trays() { return &trays_; }
    QString headline() const { return headline_; }
    QString next() const { return next_; }
    QString nextTrays() const { return next_trays_; }
    int nextRow() const { return next_row_; }
    double done() const { return done_; }
    bool empty() const { return walk_.all().empty(); }
    bool roundDone() const { return round_done_; }
    bool canStart() const { return can_start_; }

    Q_INVOKABLE void startRound();
    Q_INVOKABLE void tick(int row); // all of it
    Q_INVOKABLE void untick(int row);
    Q_INVOKABLE void notThere(int row, bool broken); // orders aside, stock put right, outers given back
    Q_INVOKABLE void finishRound();                  // trays full: to the bench
    bool scan(const QString& code);                  // a good; false: not in this round
    // Ticks since the last step of the book, which are none themselves: taken back and made again one by one.
    QString lastTick() const { return ticks_.empty() ? QString() : ticks_.back().name; }
    QString lastUntick() const { return taken_back_.empty() ? QString() : taken_back_.back().name; }
    bool undoTick() { return swap_tick(ticks_, taken_back_); }
    bool redoTick() { return swap_tick(taken_back_, ticks_); }
    std::vector<DraftPaper> drafts(); // of the round under way, else of the next one

    void refresh();

signals:
    void changed();
    void said(const QString& words);
    void written(const QString& paper, const QString& file); // to be printed, where she has a printer for it
    void wrong(const QString& word, const QString& words);
    void right();
    void roundFinished();

private:
    std::vector<book::Tray> next_trays() const;
    bool print(const std::vector<shop::ParcelId>& parcels); // false: some could not be written
    struct Tick {
        std::size_t line;
        int before;
        QString name;
    };
    void set_tick(std::size_t line, int pieces);
    bool swap_tick(std::vector<Tick>& from, std::vector<Tick>& to);
    void read_ticks();
    void keep_ticks();
    void show();

    Day& day_;
    int round_ = 0;
    std::vector<shop::Parcel> parcels_;          // of the round
    std::vector<papers::PickSheet::Line> lines_; // of the walk
    std::vector<int> ticked_;                    // pieces of each line
    std::vector<Tick> ticks_, taken_back_;
    Rows<WalkRow> walk_;
    Rows<TrayRow> trays_;
    QString headline_, next_, next_trays_;
    int next_row_ = -1;
    double done_ = 0;
    bool round_done_ = false, can_start_ = false;
};

} // namespace stow::view
