// One parcel on its way out: customs data, postage bought, number, message; and the files of the day.
#pragma once

#include "app/view/row_model.h"
#include "core/shop/codes.h"

#include <QUrl>

namespace stow {
class Day;
}

namespace stow::view {

struct CustomsRow {
    Q_GADGET
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString weight MEMBER weight)
    Q_PROPERTY(QString value MEMBER value)
    Q_PROPERTY(QString code MEMBER code)
    Q_PROPERTY(QString origin MEMBER origin)
public:
    QString what, weight, value, code, origin;
};

struct BoughtRow {
    Q_GADGET
    Q_PROPERTY(qlonglong purchase MEMBER purchase)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(bool refunded MEMBER refunded)
public:
    qlonglong purchase = 0;
    QString words;
    bool refunded = false;
};

class DispatchController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString title READ title NOTIFY changed)       // "Parcel 2611-017, Ines Halvard"
    Q_PROPERTY(QString customs READ customs NOTIFY changed)   // "CN 22, sale of goods"; or that none is needed
    Q_PROPERTY(bool declared READ declared NOTIFY changed)    // there are customs data
    Q_PROPERTY(QStringList faults READ faults NOTIFY changed) // what would stop it at the border
    Q_PROPERTY(QString totals READ totals NOTIFY changed)
    Q_PROPERTY(stow::view::RowModel* lines READ lines CONSTANT)
    Q_PROPERTY(stow::view::RowModel* bought READ bought CONSTANT)
    Q_PROPERTY(QString price READ price NOTIFY changed) // what it should cost
    Q_PROPERTY(QStringList stamps READ stamps NOTIFY changed)
    Q_PROPERTY(bool boughtBefore READ boughtBefore NOTIFY changed)
    Q_PROPERTY(QString tracking READ tracking NOTIFY changed)
    Q_PROPERTY(QString message READ message NOTIFY changed)
public:
    explicit DispatchController(Day& day, QObject* parent = nullptr);
    QString title() const { return title_; }
    QString customs() const { return customs_; }
    bool declared() const { return !lines_.all().empty(); }
    QStringList faults() const { return faults_; }
    QString totals() const { return totals_; }
    RowModel* lines() { return &lines_; }
    RowModel* bought() { return &bought_; }
    QString price() const { return price_; }
    QStringList stamps() const { return stamps_; }
    bool boughtBefore() const { return bought_before_; }
    QString tracking() const { return tracking_; }
    QString message() const { return message_; }

    Q_INVOKABLE void look(qlonglong parcel);
    // `stamps`: "2 STAMP-110, 1 STAMP-20"; blank: none. Empty: kept; else what is wrong.
    Q_INVOKABLE QString buy(const QString& amount, const QString& number, const QString& stamps, bool again);
    Q_INVOKABLE void refund(int row);
    Q_INVOKABLE QString setTracking(const QString& number);
    Q_INVOKABLE void copyMessage();
    Q_INVOKABLE void writeCustoms();

    // Files of the day, into the folder of papers.
    Q_INVOKABLE void writeSendFile(const QString& carrier);
    Q_INVOKABLE void writeShopFiles();
    Q_INVOKABLE void writeMessages();
    Q_INVOKABLE void takeTracking(const QUrl& file);
    Q_INVOKABLE void
    pasteTracking(const QStringList& inTurn); // from the clipboard; parcel numbers as the list shows them
    void refresh();

signals:
    void changed();
    void said(const QString& words);

private:
    Day& day_;
    shop::ParcelId id_;
    Rows<CustomsRow> lines_;
    Rows<BoughtRow> bought_;
    QString title_, customs_, totals_, price_, tracking_, message_;
    QStringList faults_, stamps_;
    bool bought_before_ = false;
};

} // namespace stow::view
