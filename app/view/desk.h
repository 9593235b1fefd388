// The desk: everything the window shows, made once by main and handed to Main.qml as its one property.
#pragma once

#include "app/printing/print_queue.h"
#include "app/scale/scale_reader.h"
#include "app/view/arrivals.h"
#include "app/view/bench.h"
#include "app/view/cupboard.h"
#include "app/view/day_line.h"
#include "app/view/find.h"
#include "app/view/first_steps.h"
#include "app/view/guarded.h"
#include "app/view/hand_over.h"
#include "app/view/pick.h"
#include "app/view/plan.h"
#include "app/view/preview.h"
#include "core/papers/command_cards.h"

#include <QTimer>

#include <set>

namespace stow::view {

bool dark_wanted(const Day& day); // she works in the dark look

class Desk : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(Desk)
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(Place place READ place WRITE setPlace NOTIFY placeChanged)
    Q_PROPERTY(stow::view::DayLine* dayLine READ dayLine CONSTANT)
    Q_PROPERTY(stow::view::ArrivalsController* arrivals READ arrivals CONSTANT)
    Q_PROPERTY(stow::view::PlanController* plan READ plan CONSTANT)
    Q_PROPERTY(stow::view::PickController* pick READ pick CONSTANT)
    Q_PROPERTY(stow::view::BenchController* bench READ bench CONSTANT)
    Q_PROPERTY(stow::view::HandOverController* handOver READ handOver CONSTANT)
    Q_PROPERTY(stow::view::CupboardController* cupboard READ cupboard CONSTANT)
    Q_PROPERTY(stow::view::FindController* find READ find CONSTANT)
    Q_PROPERTY(stow::view::FirstSteps* firstSteps READ firstSteps CONSTANT)
    Q_PROPERTY(stow::view::PreviewController* preview READ preview CONSTANT)
    Q_PROPERTY(bool hasPapers READ hasPapers NOTIFY noticeChanged) // this place prints something
    Q_PROPERTY(bool dark READ dark WRITE setDark NOTIFY darkChanged)
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged)       // the last thing that happened
    Q_PROPERTY(QString undoWords READ undoWords NOTIFY noticeChanged) // "Undo: order 1042 called off"; empty: nothing
    Q_PROPERTY(QString redoWords READ redoWords NOTIFY noticeChanged) // what was undone last and can be done again
    Q_PROPERTY(QString printRemedy READ printRemedy NOTIFY printTroubleChanged)   // what can be done about it
    Q_PROPERTY(QString printTrouble READ printTrouble NOTIFY printTroubleChanged) // empty: none
    // Full-screen word; waits for a key. Empty: none.
    Q_PROPERTY(QString stopWord READ stopWord NOTIFY stopChanged)
    Q_PROPERTY(QString stopMore READ stopMore NOTIFY stopChanged)
    Q_PROPERTY(QString waitsFor READ waitsFor NOTIFY waitsForChanged) // long work; keys wait their turn. Empty: none
    // The shop book failed underneath: what happened, what is safe, what to do. Empty: it works.
    Q_PROPERTY(QString failure READ failure NOTIFY failureChanged)
    Q_PROPERTY(QString failureSafe READ failureSafe NOTIFY failureChanged)
    Q_PROPERTY(QString failureRemedy READ failureRemedy NOTIFY failureChanged)
public:
    enum class Place { Arrivals, Plan, Pick, Bench, HandOver, Cupboard }; // QML reads capitals only
    Q_ENUM(Place)

    explicit Desk(Day& day, QObject* parent = nullptr);

    Place place() const { return place_; }
    void setPlace(Place place);
    DayLine* dayLine() { return &day_line_; }
    ArrivalsController* arrivals() { return &arrivals_; }
    PlanController* plan() { return &plan_; }
    PickController* pick() { return &pick_; }
    BenchController* bench() { return &bench_; }
    HandOverController* handOver() { return &hand_over_; }
    CupboardController* cupboard() { return &cupboard_; }
    FindController* find() { return &find_; }
    FirstSteps* firstSteps() { return &first_steps_; }
    PreviewController* preview() { return &preview_; }
    bool hasPapers() const;
    bool dark() const { return dark_; }
    void setDark(bool dark);
    QString notice() const { return notice_; }
    QString printTrouble() const { return print_queue_.trouble(); }
    QString printRemedy() const { return print_queue_.remedy(); }
    QString undoWords() const;
    QString redoWords() const;
    QString stopWord() const { return stop_word_; }
    QString stopMore() const { return stop_more_; }
    QString waitsFor() const { return waits_for_; }
    QString failure() const { return failure_; }
    QString failureSafe() const { return failure_safe_; }
    QString failureRemedy() const { return failure_remedy_; }

    void plugIn(std::unique_ptr<scale::Device> device); // the scale on the cable

    Q_INVOKABLE void lookAtPapers(); // what this place would print, page by page
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    Q_INVOKABLE void mendPrinting(); // send again, or call back from a stopped printer
    void command(papers::Command command);
    Q_INVOKABLE void scan(const QString& code);    // wherever she is
    Q_INVOKABLE void goOn();                       // past the stop word
    Q_INVOKABLE void tryAgain();                   // after a failure: writes, and reads all anew
    Q_INVOKABLE void openParcel(qlonglong parcel); // at the bench, at the step it stands

    void refresh();                 // what is seen; the rest when she goes there
    void say(const QString& words); // in the line of what happened last

signals:
    void placeChanged();
    void darkChanged();
    void noticeChanged();
    void printTroubleChanged();
    void stopChanged();
    void failureChanged();
    void waitsForChanged();
    void findAsked(const QString& code); // scanned, and known to Find
    void right();                        // one tone
    void wrong();                        // the other

private:
    void print(const QString& paper, const QString& file);
    void stop(const QString& word, const QString& more);
    void tell(const book::BookFailure& failure);
    void refresh_place(Place place);
    void show_fresh(Place place);                              // unless nothing moved since it was shown
    bool ticks_first() const { return place_ == Place::Pick; } // at the shelves a tick goes before a step of the book
    void take_back(book::StepId step, book::StepKind kind, const QString& doing, const QString& done);
    void take_scan(const QString& code);
    void take_foreign(const QString& code);
    bool stops(const shop::Parcel& parcel); // an order of it changed or was called off: says so

    Day& day_;
    DayLine day_line_;
    Guarded<ArrivalsController> arrivals_;
    Guarded<PlanController> plan_;
    Guarded<PickController> pick_;
    Guarded<BenchController> bench_;
    Guarded<HandOverController> hand_over_;
    Guarded<CupboardController> cupboard_;
    Guarded<FindController> find_;
    Guarded<FirstSteps> first_steps_;
    Guarded<PreviewController> preview_;
    Place place_ = Place::Arrivals;
    std::set<Place> fresh_; // hold what the book holds
    bool dark_ = false;
    QTimer clock_;
    std::unique_ptr<scale::ScaleReader> scale_;
    printing::PrintQueue print_queue_;
    QString notice_, stop_word_, stop_more_;
    QString waits_for_;
    bool just_said_ = false; // in the event that is being handled
    QString last_step_;      // finished, as the book said it when it was last read
    QString next_step_;      // that was undone and can be done again
    QString failure_, failure_safe_, failure_remedy_;
};

} // namespace stow::view
