// Bench: one parcel, full screen: how it goes in, what to do now, what the scale says.
#pragma once

#include "app/day_papers.h"
#include "app/view/bench_steps.h"
#include "app/view/preview.h"
#include "app/view/row_model.h"
#include "app/view/scenes.h"
#include "core/papers/payload.h"
#include "core/weighing/scale_feed.h"

#include <QVariant>

#include <filesystem>

namespace stow {
class Day;
}

namespace stow::view {

struct BenchStep {
    Q_GADGET
    Q_PROPERTY(QString mark MEMBER mark)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(bool done MEMBER done)
    Q_PROPERTY(bool current MEMBER current)
public:
    QString mark;  // number on the drawing
    QString words; // "Ink bottle, sea green: 2"
    bool done = false, current = false;
};

class BenchController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool empty READ empty NOTIFY changed)
    Q_PROPERTY(bool canHandOver READ canHandOver NOTIFY changed) // the bench is free, labelled parcels wait
    Q_PROPERTY(stow::view::RowModel* steps READ steps CONSTANT)
    Q_PROPERTY(QString parcel READ parcel NOTIFY changed) // "Parcel 2611-017"
    Q_PROPERTY(QString whose READ whose NOTIFY changed)   // "tray C · Ines Halvard, Ostermund · DE"
    Q_PROPERTY(QString count READ count NOTIFY changed)   // "16 of 24"
    Q_PROPERTY(QString outer READ outer NOTIFY changed)   // "Carton K3"
    Q_PROPERTY(QString proof READ proof NOTIFY changed)   // "smallest that holds it, proven"
    Q_PROPERTY(QString outerSize READ outerSize NOTIFY changed)
    Q_PROPERTY(QString filler READ filler NOTIFY
                   changed) // "Filler: shredded paper 1.4 L (38 g) · tissue 2 sheets · tape 0.8 m"
    Q_PROPERTY(QString caution READ caution NOTIFY changed)        // lifting, glass…; empty: none
    Q_PROPERTY(QString note READ note NOTIFY changed)              // the buyer's note, to be read
    Q_PROPERTY(bool orderChanged READ orderChanged NOTIFY changed) // since it was planned; stops until she has seen it
    Q_PROPERTY(QString address READ address NOTIFY changed)        // large, to copy by hand when the printer is out
    Q_PROPERTY(QString doNow READ doNow NOTIFY changed)            // "Put in the two ink bottles, caps up"
    Q_PROPERTY(QString doNowMore READ doNowMore NOTIFY changed)
    Q_PROPERTY(QString doneWords READ doneWords NOTIFY changed)       // on the button: "Done", "Stuck on"
    Q_PROPERTY(bool typesWeight READ typesWeight NOTIFY scaleChanged) // the step waits for a weight to be typed
    Q_PROPERTY(int currentStep READ currentStep NOTIFY changed)
    Q_PROPERTY(bool weighing READ weighing NOTIFY changed) // the step wants the scale
    Q_PROPERTY(stow::view::ParcelScene scene READ scene NOTIFY changed)
    Q_PROPERTY(int layers READ layers NOTIFY changed)
    Q_PROPERTY(int layer READ layer WRITE setLayer NOTIFY layerChanged) // 1 to layers
    Q_PROPERTY(bool comesApart READ comesApart NOTIFY changed)          // the layers can be drawn lifted
    Q_PROPERTY(QString layerWords READ layerWords NOTIFY layerChanged)
    Q_PROPERTY(QList<int> highlight READ highlight NOTIFY changed) // numbers on the drawing

    Q_PROPERTY(QString reading READ reading NOTIFY scaleChanged)         // "818 g"; empty: nothing weighed
    Q_PROPERTY(QString weightUnit READ weightUnit NOTIFY changed)        // of a number typed without one
    Q_PROPERTY(QString verdict READ verdict NOTIFY scaleChanged)         // "as expected, 812 ± 28 g"
    Q_PROPERTY(QString verdictMore READ verdictMore NOTIFY scaleChanged) // "seen from 24 g: a card would not be"
    Q_PROPERTY(int verdictKind READ verdictKind NOTIFY scaleChanged)     // 0 nothing yet, 1 right, 2 look here, 3 stop
    Q_PROPERTY(QStringList excuses READ excuses NOTIFY scaleChanged)     // why a weight may stand that looks wrong
    Q_PROPERTY(QString service READ service NOTIFY scaleChanged)
    Q_PROPERTY(QString edge READ edge NOTIFY scaleChanged) // "182 g below the step edge"
    Q_PROPERTY(bool edgeAtRisk READ edgeAtRisk NOTIFY scaleChanged)
    Q_PROPERTY(stow::view::RulerScene ruler READ ruler NOTIFY scaleChanged)
    Q_PROPERTY(QString saving READ saving NOTIFY scaleChanged)     // "3 mm thinner goes as large letter: saves 2.40"
    Q_PROPERTY(QString scale READ scale NOTIFY liveChanged)        // what the scale on the cable says; empty: none
    Q_PROPERTY(bool scaleStops READ scaleStops NOTIFY liveChanged) // overloaded, to be zeroed...
    Q_PROPERTY(QString wait READ wait NOTIFY changed)              // "soft in the heat: hold until Monday"; empty: none
public:
    explicit BenchController(Day& day, QObject* parent = nullptr);

    RowModel* steps() { return &steps_; }
    bool empty() const { return !scene_.arrangement; }
    bool canHandOver() const { return can_hand_over_; }
    QString parcel() const { return parcel_; }
    QString whose() const { return whose_; }
    QString count() const { return count_; }
    QString outer() const { return outer_; }
    QString proof() const { return proof_; }
    QString outerSize() const { return outer_size_; }
    QString filler() const { return filler_; }
    QString caution() const { return caution_; }
    QString note() const { return note_; }
    bool orderChanged() const { return order_changed_; }
    QString address() const { return address_; }
    QString doNow() const { return do_now_; }
    QString doNowMore() const { return do_now_more_; }
    QString doneWords() const { return done_words_; }
    int currentStep() const { return current_step_; }
    bool weighing() const { return weighing_; }
    ParcelScene scene() const { return scene_; }
    int layers() const { return layers_; }
    int layer() const { return layer_; }
    void setLayer(int layer);
    bool comesApart() const;
    QString layerWords() const;
    QList<int> highlight() const { return highlight_; }
    QString reading() const { return reading_words_; }
    QString weightUnit() const;
    bool typesWeight() const;
    QString verdict() const { return verdict_; }
    QString verdictMore() const { return verdict_more_; }
    int verdictKind() const { return verdict_kind_; }
    QStringList excuses() const;
    QString service() const { return service_; }
    QString edge() const { return edge_; }
    bool edgeAtRisk() const { return edge_at_risk_; }
    RulerScene ruler() const { return ruler_; }
    QString saving() const { return saving_; }
    QString scale() const { return scale_; }
    bool scaleStops() const { return scale_stops_; }
    QString wait() const { return wait_; }

    Q_INVOKABLE void open(qlonglong parcel);         // 0: the first that waits
    Q_INVOKABLE void done();                         // the current step
    Q_INVOKABLE void back();                         // the step before
    Q_INVOKABLE QString weigh(const QString& typed); // "818", "818,5 g", "0.818 kg"; empty: understood
    Q_INVOKABLE void itIsRight(const QString& why);  // the weight was looked at and stands
    Q_INVOKABLE void boxGone();                      // this outer is gone: stock put right, planned again
    Q_INVOKABLE QString addSomething(const QString& good, int count);
    Q_INVOKABLE void stuckOn(); // the label sits on this parcel
    Q_INVOKABLE void labelMissing();
    Q_INVOKABLE void printAgain();
    Q_INVOKABLE void holdUntilMonday(); // what softens does not lie in a hot depot over the weekend
    Q_INVOKABLE void changesSeen();     // the parcel still serves the changed order
    Q_INVOKABLE void later();           // put it back, take the next
    bool scan(const QString& code);

    std::vector<DraftPaper> drafts(); // of this parcel

    void refresh();
    void scaleSays(const weighing::ScaleSays& said); // the scale on the cable

signals:
    void changed();
    void layerChanged();
    void scaleChanged();
    void liveChanged();
    void said(const QString& words);
    void written(const QString& paper, const QString& file); // to be printed, where she has a printer for it
    void wrong(const QString& word, const QString& words);
    void right();

private:
    void show();
    void showScale();
    const ParcelStep* now() const;
    bool settle(const book::Done& done); // false: refused, and said
    void advance(bool scanned = false);
    bool take(Weight weight); // recorded, and judged
    void scan_label(const papers::Payload& code, bool same);
    QString taken_by_none(Weight weight) const;
    bool overrule(const std::string& why); // the reading that stands is right all the same
    bool keep(Weight weight, bool overridden, const std::string& why);
    shop::WeighingStage stage_now() const;
    std::optional<Weight> reading_at(shop::WeighingStage stage) const;
    bool all_scanned() const;
    bool pack();
    bool stands_closed(Weight weight) const;
    std::optional<std::filesystem::path> print_label(); // nothing: it could not be written
    void print_one(PaperKind kind);
    void stop_at_troubles(); // of the parcel: what was just printed shows boxes
    void undo_last();

    Day& day_;
    std::optional<book::HeldParcel> held_;
    std::vector<ParcelStep> plan_steps_;
    shop::WeighingStage shown_stage_ = shop::WeighingStage::closed;
    weighing::ScaleSays on_scale_;
    int scanned_ = 0;       // pieces of the current step
    int scanned_print_ = 0; // of this parcel's label, at its step; 0: none
    bool copying_ = false;  // the printer is out
    bool order_changed_ = false;
    Rows<BenchStep> steps_;
    qlonglong id_ = 0;
    QString parcel_, whose_, count_, outer_, proof_, outer_size_, filler_, caution_, note_, address_;
    QString do_now_, do_now_more_, done_words_;
    QString reading_words_, saving_, scale_, wait_;
    QString verdict_, verdict_more_, service_, edge_;
    ParcelScene scene_;
    RulerScene ruler_;
    int waiting_ = 0; // parcels at the bench, this one too
    int current_step_ = 0, layers_ = 0, layer_ = 0, verdict_kind_ = 0;
    QList<int> highlight_;
    bool scale_stops_ = false;
    bool can_hand_over_ = false, weighing_ = false, edge_at_risk_ = false;
};

} // namespace stow::view
