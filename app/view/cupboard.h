// The cupboard: goods, supplies, rate sheets, records and how this house works.
#pragma once

#include "app/view/before_sale.h"
#include "app/view/rates.h"
#include "app/view/row_model.h"
#include "app/view/sending.h"
#include "core/shop/codes.h"

#include <QUrl>
#include <QVariant>

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
    Q_INVOKABLE void takeIn(const QUrl& file);
    void refresh();

signals:
    void changed();
    void said(const QString& words);

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
    QString warning; // "reorder 2 packs of 25"
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
    Q_INVOKABLE QString count(const QString& code, const QString& amount);   // what is really there
    Q_INVOKABLE QString receive(const QString& code, const QString& amount); // came from the supplier
    Q_INVOKABLE void takeIn(const QUrl& file);
    void refresh();

signals:
    void changed();
    void detailChanged();
    void said(const QString& words);

private:
    void show_detail();

    Day& day_;
    Rows<SupplyRow> rows_;
    Rows<LedgerRow> ledger_;
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
public:
    QString name, value, more, chapter;
    bool first = false; // of its chapter
};

class RecordsController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* rows READ rows CONSTANT)
    Q_PROPERTY(QString covers READ covers NOTIFY changed) // "1 Oct to 25 Nov, 212 parcels"
public:
    explicit RecordsController(Day& day, QObject* parent = nullptr);
    RowModel* rows() { return &rows_; }
    QString covers() const { return covers_; }
    void refresh();

signals:
    void changed();

private:
    Day& day_;
    Rows<RecordRow> rows_;
    QString covers_;
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

class HouseController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* fields READ fields CONSTANT)
public:
    explicit HouseController(Day& day, QObject* parent = nullptr);
    RowModel* fields() { return &fields_; }
    Q_INVOKABLE QString set(const QString& key, const QString& value); // empty: kept
    void refresh();

signals:
    void said(const QString& words);

private:
    Day& day_;
    Rows<HouseField> fields_;
};

class CupboardController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::GoodsController* goods READ goods CONSTANT)
    Q_PROPERTY(stow::view::SuppliesController* supplies READ supplies CONSTANT)
    Q_PROPERTY(stow::view::RatesController* rates READ rates CONSTANT)
    Q_PROPERTY(stow::view::RecordsController* records READ records CONSTANT)
    Q_PROPERTY(stow::view::HouseController* house READ house CONSTANT)
    Q_PROPERTY(stow::view::SendingController* sending READ sending CONSTANT)
    Q_PROPERTY(stow::view::BeforeSaleController* beforeSale READ beforeSale CONSTANT)
public:
    explicit CupboardController(Day& day, QObject* parent = nullptr);
    GoodsController* goods() { return &goods_; }
    SuppliesController* supplies() { return &supplies_; }
    RatesController* rates() { return &rates_; }
    RecordsController* records() { return &records_; }
    HouseController* house() { return &house_; }
    SendingController* sending() { return &sending_; }
    BeforeSaleController* beforeSale() { return &before_sale_; }
    void refresh();

private:
    GoodsController goods_;
    SuppliesController supplies_;
    RatesController rates_;
    RecordsController records_;
    HouseController house_;
    SendingController sending_;
    BeforeSaleController before_sale_;
};

} // namespace stow::view
