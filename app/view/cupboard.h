// The cupboard: goods, supplies, rate sheets, records and how this house works.
#pragma once

#include "app/records.h"
#include "app/view/background.h"
#include "app/view/before_sale.h"
#include "app/view/guarded.h"
#include "app/view/paper_boxes.h"
#include "app/view/preview.h"
#include "app/view/rates.h"
#include "app/view/row_model.h"
#include "app/view/sending.h"
#include "app/view/sizes.h"
#include "app/view/supply_card.h"
#include "app/view/typed_table.h"
#include "core/shop/codes.h"
#include "core/supplies/outlook.h"

#include <QUrl>
#include <QVariant>

#include <limits>

namespace stow {
class Day;
}

namespace stow::view {

struct GoodRow {
    Q_GADGET
    Q_PROPERTY(QString code MEMBER code)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString size MEMBER size)
    Q_PROPERTY(QString weight MEMBER weight)
    Q_PROPERTY(QString shelf MEMBER shelf)
    Q_PROPERTY(int pieces MEMBER pieces)
    Q_PROPERTY(QString marks MEMBER marks)
    Q_PROPERTY(QString warning MEMBER warning)
public:
    QString code, name, size, weight, shelf;
    int pieces = 0;
    QString marks;   // "fragile · this way up"
    QString warning; // "make more: 2 left, lowest 5"
    Weight mean;
};

class GoodsController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* rows READ rows CONSTANT)
    Q_PROPERTY(QString headline READ headline NOTIFY changed)
    Q_PROPERTY(bool empty READ empty NOTIFY changed)
public:
    explicit GoodsController(Day& day, QObject* parent = nullptr);
    RowModel* rows() { return &rows_; }
    QString headline() const { return headline_; }
    bool empty() const { return rows_.all().empty(); }

    Q_INVOKABLE QVariantMap good(int row) const;
    // Keys as `good` gives them. Empty: kept; else what is wrong, and with which field.
    Q_INVOKABLE QString keep(const QVariantMap& good);
    Q_INVOKABLE QString count(int row, const QString& pieces);
    DraftPaper draft();
    Q_INVOKABLE void printMaking(); // what is to be made next
    Q_INVOKABLE void takeIn(const QUrl& file);
    void refresh();

signals:
    void changed();
    void said(const QString& words);
    void written(const QString& paper, const QString& file);

private:
    Day& day_;
    Rows<GoodRow> rows_;
    QString headline_;
};

struct SupplyRow {
    Q_GADGET
    Q_PROPERTY(QString code MEMBER code)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString kind MEMBER kind)
    Q_PROPERTY(QString size MEMBER size)
    Q_PROPERTY(QString onHand MEMBER on_hand)
    Q_PROPERTY(QString cover MEMBER cover)
    Q_PROPERTY(QString cost MEMBER cost)
    Q_PROPERTY(QString supplier MEMBER supplier)
    Q_PROPERTY(QString warning MEMBER warning)
public:
    QString code, name, kind, size, on_hand;
    QString cover; // "lasts 9 days"
    QString cost, supplier;
    QString warning;                            // "reorder 2 packs of 25"
    int days = std::numeric_limits<int>::max(); // it lasts; no telling: longest
};

struct LedgerRow {
    Q_GADGET
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString amount MEMBER amount)
public:
    QString when, what, amount;
};

class SuppliesController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* rows READ rows CONSTANT)
    Q_PROPERTY(stow::view::RowModel* ledger READ ledger CONSTANT)
    Q_PROPERTY(QString headline READ headline NOTIFY changed)
    Q_PROPERTY(bool empty READ empty NOTIFY changed)
    Q_PROPERTY(QVariantMap detail READ detail NOTIFY detailChanged)
public:
    explicit SuppliesController(Day& day, QObject* parent = nullptr);
    RowModel* rows() { return &rows_; }
    RowModel* ledger() { return &ledger_; }
    QString headline() const { return headline_; }
    bool empty() const { return rows_.all().empty(); }
    QVariantMap detail() const { return detail_; }

    Q_INVOKABLE void look(int row);
    Q_INVOKABLE QString count(const QString& code, const QString& amount); // what is really there
    // Came from the supplier; `cost` of all of it, or empty.
    Q_INVOKABLE QString receive(const QString& code, const QString& amount, const QString& cost);
    Q_INVOKABLE QString spoil(const QString& code, const QString& amount, const QString& why);
    DraftPaper draft();
    Q_INVOKABLE void printReorder();
    Q_INVOKABLE void open() // forecasts are worked out for who looks at them
    {
        open_ = true;
        refresh();
    }
    Q_INVOKABLE void leave() { open_ = false; }
    Q_INVOKABLE void takeIn(const QUrl& file);
    void refresh();

signals:
    void changed();
    void detailChanged();
    void said(const QString& words);
    void written(const QString& paper, const QString& file);

private:
    void show_detail();

    Day& day_;
    Rows<SupplyRow> rows_;
    Rows<LedgerRow> ledger_;
    std::map<shop::SupplyCode, supplies::Outlook> outlook_;
    bool open_ = false;
    shop::SupplyCode looked_at_;
    QVariantMap detail_;
    QString headline_;
};

struct RecordRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString value MEMBER value)
    Q_PROPERTY(QString more MEMBER more)
    Q_PROPERTY(QString chapter MEMBER chapter)
    Q_PROPERTY(bool first MEMBER first)
    Q_PROPERTY(double bar MEMBER bar)
    Q_PROPERTY(int behind MEMBER behind)
public:
    QString name, value, more, chapter;
    bool first = false; // of its chapter
    double bar = -1;    // of the largest of its chapter, 0 to 1; below: no bar
    int behind = 0;     // parcels that the figure is made of
};

struct BehindRow { // one parcel behind a figure
    Q_GADGET
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(QString about MEMBER about)
    Q_PROPERTY(QString cost MEMBER cost)
    Q_PROPERTY(QString more MEMBER more)
public:
    QString number, about, cost, more;
};

class RecordsController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* rows READ rows CONSTANT)
    Q_PROPERTY(stow::view::RowModel* behind READ behind CONSTANT)
    Q_PROPERTY(QString behindTitle READ behindTitle NOTIFY behindChanged)
    Q_PROPERTY(QString covers READ covers NOTIFY changed) // "the last 4 weeks, 212 parcels"
    Q_PROPERTY(QString period READ period NOTIFY changed)
    Q_PROPERTY(stow::view::SketchScene weeks READ weeks NOTIFY changed) // cost by week
public:
    explicit RecordsController(Day& day, QObject* parent = nullptr);
    RowModel* rows() { return &rows_; }
    RowModel* behind() { return &behind_; }
    QString behindTitle() const { return behind_title_; }
    QString covers() const { return covers_; }
    bool busy() const { return work_.running(); }
    QString period() const;
    SketchScene weeks() const { return weeks_; }
    // Years of parcels are not read for a screen that nobody looks at: she looks, and the rows are made.
    Q_INVOKABLE void look();
    Q_INVOKABLE void leave() { looked_at_ = false; }
    Q_INVOKABLE void nextPeriod();
    Q_INVOKABLE void open(int row); // the parcels behind it
    DraftPaper draft();
    Q_INVOKABLE void printFiles(); // packaging by material, on paper and as CSV
    void refresh();

signals:
    void changed();
    void behindChanged();
    void written(const QString& paper, const QString& file);
    void said(const QString& words);

private:
    void add(RecordRow row, std::vector<std::size_t> parcels);
    void add_sums(const QString& chapter, records::Grouped by);
    void show();
    void draw_weeks();

    Day& day_;
    Rows<RecordRow> rows_;
    Rows<BehindRow> behind_;
    std::vector<RecordRow> making_;                        // while rows are made
    std::vector<std::vector<std::size_t>> parcels_behind_; // of each row
    RecordsRead read_;
    Work work_; // reads what would be felt
    SketchScene weeks_;
    Date from_;
    QString covers_, behind_title_;
    int period_ = 0;
    bool looked_at_ = false, changed_meanwhile_ = false;
};

struct HouseField { // one setting
    Q_GADGET
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString value MEMBER value)
    Q_PROPERTY(QString unit MEMBER unit)
    Q_PROPERTY(QString more MEMBER more)
public:
    QString key, name, value, unit, more;
};

bool sounds_wanted(const Day& day); // the tones of the bench

class HouseController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* fields READ fields CONSTANT)
    Q_PROPERTY(stow::view::TypedTable* rules READ rules CONSTANT)
    Q_PROPERTY(stow::view::TypedTable* wrappings READ wrappings CONSTANT)
public:
    explicit HouseController(Day& day, QObject* parent = nullptr);
    RowModel* fields() { return &fields_; }
    TypedTable* rules() { return &rules_; }
    TypedTable* wrappings() { return &wrappings_; }
    Q_INVOKABLE QString set(const QString& key, const QString& value); // empty: kept
    DraftPaper draft();
    Q_INVOKABLE void printCommandCards();
    void refresh();

signals:
    void said(const QString& words);
    void written(const QString& paper, const QString& file);

private:
    Day& day_;
    Rows<HouseField> fields_;
    Guarded<RulesTable> rules_;
    Guarded<WrappingsTable> wrappings_;
};

class CupboardController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(int shelf MEMBER shelf_ NOTIFY shelfChanged) // that stands open
    Q_PROPERTY(stow::view::GoodsController* goods READ goods CONSTANT)
    Q_PROPERTY(stow::view::SuppliesController* supplies READ supplies CONSTANT)
    Q_PROPERTY(stow::view::RatesController* rates READ rates CONSTANT)
    Q_PROPERTY(stow::view::RecordsController* records READ records CONSTANT)
    Q_PROPERTY(stow::view::HouseController* house READ house CONSTANT)
    Q_PROPERTY(stow::view::SendingController* sending READ sending CONSTANT)
    Q_PROPERTY(stow::view::BeforeSaleController* beforeSale READ beforeSale CONSTANT)
    Q_PROPERTY(stow::view::SizesController* sizes READ sizes CONSTANT)
    Q_PROPERTY(stow::view::SupplyCard* supplyCard READ supplyCard CONSTANT)
    Q_PROPERTY(stow::view::PaperBoxesController* paperBoxes READ paperBoxes CONSTANT)
public:
    explicit CupboardController(Day& day, QObject* parent = nullptr);
    GoodsController* goods() { return &goods_; }
    SuppliesController* supplies() { return &supplies_; }
    RatesController* rates() { return &rates_; }
    RecordsController* records() { return &records_; }
    HouseController* house() { return &house_; }
    SendingController* sending() { return &sending_; }
    BeforeSaleController* beforeSale() { return &before_sale_; }
    SizesController* sizes() { return &sizes_; }
    SupplyCard* supplyCard() { return &supply_card_; }
    PaperBoxesController* paperBoxes() { return &paper_boxes_; }
    void refresh();

    bool hasPapers() const; // the shelf that stands open prints one
    std::vector<DraftPaper> drafts();

signals:
    void shelfChanged();

private:
    int shelf_ = 0;
    Guarded<GoodsController> goods_;
    Guarded<SuppliesController> supplies_;
    Guarded<RatesController> rates_;
    Guarded<RecordsController> records_;
    Guarded<HouseController> house_;
    Guarded<SendingController> sending_;
    Guarded<BeforeSaleController> before_sale_;
    Guarded<SizesController> sizes_;
    Guarded<PaperBoxesController> paper_boxes_;
    Guarded<SupplyCard> supply_card_;
};

} // namespace stow::view
