// What would come out of the printer, looked at before it does: the papers of a place, each page as it will be printed.
#pragma once

#include <QString> // first: moc cannot read <concepts> before it
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "app/painting/palette.h"
#include "core/papers/display_list.h"

#include <QObject>

#include <functional>
#include <memory>
#include <vector>

namespace stow::view {

// A paper made but not printed: the same display lists go to the PDF.
struct DraftPaper {
    QString name; // "Pick list"
    papers::Document document;
    const painting::Palette* palette = nullptr; // outlives it
    QString print_words;                        // on the button: "Print", "Start the round and print"
    std::function<void()> print;
    QString warning{}; // of what would come out wrong
};

// One page, for the item that shows it.
struct PageScene {
    Q_GADGET
    QML_ANONYMOUS
public:
    std::shared_ptr<const papers::Document> document; // nothing: no page
    std::size_t page = 0;
    enum class Part { whole, upper, lower } part = Part::whole; // halves, to be read
    const painting::Palette* palette = nullptr;
    QString sentence; // "Pick list, page 2 of 5"
};

class PreviewController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool open READ open NOTIFY changed)
    Q_PROPERTY(QStringList papers READ papers NOTIFY changed)
    Q_PROPERTY(int paper READ paper WRITE setPaper NOTIFY changed) // place in `papers`
    Q_PROPERTY(QString title READ title NOTIFY changed)            // of the paper shown
    Q_PROPERTY(int page READ page NOTIFY changed)                  // from 1
    Q_PROPERTY(int pages READ pages NOTIFY changed)
    Q_PROPERTY(QString where READ where NOTIFY changed)             // "Page 2 of 5"
    Q_PROPERTY(bool large READ large WRITE setLarge NOTIFY changed) // half a page at a time, to be read
    Q_PROPERTY(bool first READ first NOTIFY changed)                // nothing comes before what is shown
    Q_PROPERTY(bool last READ last NOTIFY changed)
    Q_PROPERTY(QString warning READ warning NOTIFY changed) // of the paper shown; empty: none
    Q_PROPERTY(QString printWords READ printWords NOTIFY changed)
    Q_PROPERTY(stow::view::PageScene scene READ scene NOTIFY changed)
public:
    explicit PreviewController(QObject* parent = nullptr) : QObject(parent) {}

    bool open() const { return !drafts_.empty(); }
    QStringList papers() const;
    int paper() const { return static_cast<int>(paper_); }
    void setPaper(int paper);
    QString title() const;
    int page() const { return open() ? static_cast<int>(page_) + 1 : 0; }
    int pages() const;
    QString where() const;
    bool large() const { return large_; }
    void setLarge(bool large);
    bool first() const { return paper_ == 0 && page_ == 0 && !lower_; }
    bool last() const;
    QString warning() const;
    QString printWords() const;
    PageScene scene() const;

    // Papers without a page are left out; false: none is left, and nothing is shown.
    bool show(std::vector<DraftPaper> drafts);

    Q_INVOKABLE void nextPage(); // over the end of a paper into the next one
    Q_INVOKABLE void previousPage();
    Q_INVOKABLE void print(); // the paper shown, and what goes with it; puts the preview away
    Q_INVOKABLE void close();

signals:
    void changed();
    void opened();

private:
    const DraftPaper* shown() const { return open() ? &drafts_[paper_] : nullptr; }
    bool in_halves() const; // the page shown is: it is higher than wide

    std::vector<DraftPaper> drafts_;
    std::shared_ptr<const papers::Document> document_; // of the paper shown
    std::size_t paper_ = 0, page_ = 0;
    bool large_ = false, lower_ = false; // the lower half is shown
};

} // namespace stow::view
