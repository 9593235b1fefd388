// Boxes and envelopes she folds herself: what sheet one takes, where to cut and score, its template on paper; kept, it
// is one of her outers as long as the paper lasts.
#pragma once

#include "app/view/preview.h"
#include "app/view/row_model.h"
#include "app/view/scenes.h"
#include "core/planning/paper_outer.h"

namespace stow {
class Day;
}

namespace stow::view {

struct PaperFact { // "mark along each edge": "62.0 and 118.6 mm"
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString value MEMBER value)
public:
    QString name, value;
};

class PaperBoxesController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QStringList kinds READ kinds CONSTANT)
    Q_PROPERTY(QStringList papers READ papers NOTIFY papersChanged)
    Q_PROPERTY(stow::view::RowModel* facts READ facts CONSTANT)
    Q_PROPERTY(stow::view::SketchScene net READ net NOTIFY changed)
    Q_PROPERTY(bool laid READ laid NOTIFY changed)
    Q_PROPERTY(bool open READ open WRITE setOpen NOTIFY openChanged) // its sheet lies over the screen
    Q_PROPERTY(bool fromPaper READ fromPaper NOTIFY changed)         // it can be cut from the paper chosen
public:
    explicit PaperBoxesController(Day& day, QObject* parent = nullptr);
    QStringList kinds() const;
    QStringList papers() const { return papers_; }
    RowModel* facts() { return &facts_; }
    SketchScene net() const { return net_; }
    bool laid() const { return wanted_.has_value(); }
    bool open() const { return open_; }
    void setOpen(bool open);
    bool fromPaper() const { return made_.has_value(); }

    // Lengths in mm; `around`: they are of what must go in. Empty: laid out; else what is wrong.
    Q_INVOKABLE QString lay(int kind, int paper, const QString& length, const QString& width, const QString& height,
                            bool around);
    Q_INVOKABLE void printTemplate();
    Q_INVOKABLE void lookAtTemplate() { emit lookAsked(); }
    std::vector<DraftPaper> drafts();                                                           // of what is laid out
    Q_INVOKABLE QString keep(const QString& code, const QString& name, const QString& minutes); // empty: kept
    void refresh();

signals:
    void changed();
    void papersChanged();
    void openChanged();
    void lookAsked();
    void said(const QString& words);
    void written(const QString& paper, const QString& file);

private:
    void show(const paperbox::Net& net);

    Day& day_;
    QStringList papers_;
    std::vector<shop::SupplyCode> codes_;
    Rows<PaperFact> facts_;
    SketchScene net_;
    std::optional<paperbox::Wanted> wanted_;
    std::optional<planning::PaperOuter> made_;
    bool open_ = false;
};

} // namespace stow::view
