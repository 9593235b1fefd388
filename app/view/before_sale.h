// Before the sale: what it would cost to send some of a good somewhere; and what to charge for postage, as a table.
#pragma once

#include "app/view/background.h"
#include "app/view/row_model.h"
#include "core/planning/before_sale.h"

namespace stow {
class Day;
}

namespace stow::view {

struct OfferRow { // one service
    Q_GADGET
    Q_PROPERTY(QString service MEMBER service)
    Q_PROPERTY(QString price MEMBER price)
    Q_PROPERTY(QString more MEMBER more)
    Q_PROPERTY(bool chosen MEMBER chosen)
public:
    QString service, price; // price empty: it does not take it
    QString more;           // parts, days; or why not
    bool chosen = false;
};

class BeforeSaleController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QStringList goods READ goods NOTIFY changed)
    Q_PROPERTY(QString answer READ answer NOTIFY answered) // "8.20 EUR, Skua Post, Letter"
    Q_PROPERTY(QString packed READ packed NOTIFY answered) // "Carton K2, 812 ± 28 g, closed 206 × 156 × 106 mm"
    Q_PROPERTY(QString countFault READ countFault NOTIFY answered) // why the question cannot be answered
    Q_PROPERTY(QString countryFault READ countryFault NOTIFY answered)
    Q_PROPERTY(bool asking READ asking NOTIFY workingChanged)   // the answer is being worked out
    Q_PROPERTY(bool writing READ writing NOTIFY workingChanged) // and the table
    Q_PROPERTY(QString risk READ risk NOTIFY answered)          // "one in twelve is heavier than the step: then 8.10"
    Q_PROPERTY(QString saving READ saving NOTIFY answered)
    Q_PROPERTY(stow::view::RowModel* services READ services CONSTANT)
public:
    explicit BeforeSaleController(Day& day, QObject* parent = nullptr);
    QStringList goods() const { return goods_; }
    QString answer() const { return answer_; }
    QString packed() const { return packed_; }
    bool asking() const { return asking_.running(); }
    bool writing() const { return writing_.running(); }
    QString countFault() const { return count_fault_; }
    QString countryFault() const { return country_fault_; }
    QString risk() const { return risk_; }
    QString saving() const { return saving_; }
    RowModel* services() { return &services_; }

    Q_INVOKABLE void ask(int good, const QString& count, const QString& country, const QString& postcode);
    Q_INVOKABLE void writeTable(); // every good for every country she has sent to, as CSV
    void refresh();

signals:
    void changed();
    void answered();
    void workingChanged();
    void said(const QString& words);

private:
    void show(const planning::Offer& asked, const tl::expected<planning::ParcelPlan, planning::StuckOrder>& plan);
    void write(const std::vector<planning::Charge>& table);

    Day& day_;
    QStringList goods_;
    std::vector<std::string> codes_;
    QString answer_, packed_, count_fault_, country_fault_, risk_, saving_;
    Rows<OfferRow> services_;
    Work asking_, writing_;
};

} // namespace stow::view
