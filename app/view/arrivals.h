// Arrivals: files taken in, problems first, until an order is ready to plan.
#pragma once

#include "app/view/row_model.h"
#include "core/book/steps.h"
#include "core/measure/date.h"
#include "core/shop/orders.h"

#include <QUrl>
#include <QVariant>

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace stow {
class Day;
}

namespace stow::view {

// What is to be done with an order: those alike lie together, the most pressing pile first.
enum class Pile { match, mend, unpaid, look, fine, aside, ready, planned };

struct ArrivedOrder {
    Q_GADGET
    Q_PROPERTY(int pile READ pileNumber)
    Q_PROPERTY(qlonglong order MEMBER order)
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(QString shop MEMBER shop)
    Q_PROPERTY(QString buyer MEMBER buyer)
    Q_PROPERTY(QString place MEMBER place)
    Q_PROPERTY(QString contents MEMBER contents)
    Q_PROPERTY(QString problem MEMBER problem)
    Q_PROPERTY(QString remedy MEMBER remedy)
    Q_PROPERTY(QString promised MEMBER promised)
    Q_PROPERTY(bool blocks MEMBER blocks)
    Q_PROPERTY(bool isAside MEMBER aside)
    Q_PROPERTY(bool ready MEMBER ready)
    Q_PROPERTY(bool planned MEMBER planned)
    Q_PROPERTY(bool unmatched MEMBER unmatched)
public:
    qlonglong order = 0;
    QString number, shop, buyer, place, contents;
    QString problem;                                                    // first of them in words; empty: nothing wrong
    QString remedy;                                                     // what to press or mend
    QString promised;                                                   // "promised Fri 27 Nov"
    bool blocks = false, aside = false, ready = false, planned = false; // ready: checked
    bool unmatched = false;                                             // a title has no good yet
    bool joinable = false;                                              // the same buyer has another order
    Pile pile = Pile::fine;
    Date date, due; // due: promised; without a promise the end of time
    qlonglong id() const { return order; }
    int pileNumber() const { return static_cast<int>(pile); }
};

struct ColumnRow { // one heading of the file and what it is taken for
    Q_GADGET
    Q_PROPERTY(QString heading MEMBER heading)
    Q_PROPERTY(QString example MEMBER example)
    Q_PROPERTY(int field MEMBER field)
    Q_PROPERTY(bool missing MEMBER missing)
public:
    QString heading, example;
    int field = 0; // index into `fields`; 0: not used
    bool missing = false;
};

struct FileProblem {
    Q_GADGET
    Q_PROPERTY(QString where MEMBER where)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(bool leftOut MEMBER leftOut)
public:
    QString where, what; // "orders.csv, row 14, postcode"; "..."
    bool leftOut = false;
};

struct GoodChoice {
    Q_GADGET
    Q_PROPERTY(QString code MEMBER code)
    Q_PROPERTY(QString name MEMBER name)
public:
    QString code, name;
};

struct OrderLineRow { // of the order being looked at
    Q_GADGET
    Q_PROPERTY(int line MEMBER line)
    Q_PROPERTY(int count MEMBER count)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString good MEMBER good)
    Q_PROPERTY(QString personal MEMBER personal)
    Q_PROPERTY(bool unmatched MEMBER unmatched)
public:
    int line = 0, count = 1;
    QString title, good, personal;
    bool unmatched = false;
};

class ArrivalsController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* orders READ orders CONSTANT)
    Q_PROPERTY(QString headline READ headline NOTIFY changed) // "3 orders need a look"
    Q_PROPERTY(QString summary READ summary NOTIFY changed)   // "21 ready to plan, 2 set aside"
    Q_PROPERTY(bool empty READ empty NOTIFY changed)
    Q_PROPERTY(int ready READ ready NOTIFY changed)
    Q_PROPERTY(int arrivedReady READ arrivedReady NOTIFY changed) // arrived with nothing in the way

    // The order looked at.
    Q_PROPERTY(qlonglong current READ current NOTIFY currentChanged)
    Q_PROPERTY(QVariantMap detail READ detail NOTIFY
                   currentChanged) // number, shop, buyer, address, note, gift, state, problems
    Q_PROPERTY(stow::view::RowModel* lines READ lines CONSTANT)
    Q_PROPERTY(stow::view::RowModel* goods READ goods CONSTANT) // to match a title to; filter it by typing

    // A file on its way in.
    Q_PROPERTY(bool matching READ matching NOTIFY fileChanged)
    Q_PROPERTY(QString fileName READ fileName NOTIFY fileChanged)
    Q_PROPERTY(
        QString fileFacts READ fileFacts NOTIFY fileChanged) // "24 rows, semicolons, Windows-1252, decimal comma"
    Q_PROPERTY(QString shop READ shop WRITE setShop NOTIFY fileChanged)
    Q_PROPERTY(QStringList fields READ fields NOTIFY fileChanged)
    Q_PROPERTY(QString stillMissing READ stillMissing NOTIFY fileChanged) // empty: it can be taken in
    Q_PROPERTY(stow::view::RowModel* columns READ columns CONSTANT)
    Q_PROPERTY(stow::view::RowModel* problems READ problems CONSTANT)
    Q_PROPERTY(QString outcome READ outcome NOTIFY fileChanged) // "21 new, 3 known already, 1 row left out"
public:
    explicit ArrivalsController(Day& day, QObject* parent = nullptr);

    RowModel* orders() { return &orders_; }
    RowModel* lines() { return &lines_; }
    RowModel* goods() { return &goods_; }
    RowModel* columns() { return &columns_; }
    RowModel* problems() { return &problems_; }
    QString headline() const { return headline_; }
    QString summary() const { return summary_; }
    bool empty() const { return orders_.all().empty(); }
    int ready() const { return ready_; }
    int arrivedReady() const { return arrived_ready_; }
    qlonglong current() const { return current_; }
    QVariantMap detail() const { return detail_; }
    bool matching() const { return matching_; }
    QString fileName() const { return file_name_; }
    QString fileFacts() const { return file_facts_; }
    QString shop() const { return shop_; }
    void setShop(const QString& shop);
    QStringList fields() const { return fields_; }
    QString stillMissing() const { return still_missing_; }
    QString outcome() const { return outcome_; }

    Q_INVOKABLE QString pileWords(int pile) const; // "Mend the address: 2"
    Q_INVOKABLE void openFile(const QUrl& file);   // reads it and shows the columns, unless this shop's are known
    Q_INVOKABLE void setField(int column, int field);
    Q_INVOKABLE void takeIn();
    Q_INVOKABLE void leaveFile();
    Q_INVOKABLE void look(qlonglong order);
    Q_INVOKABLE void matchLine(int line, const QString& good); // remembered for shop, title and variant
    Q_INVOKABLE void checkAll();                               // all that have nothing in the way
    // Of the marked orders; where none is marked, of the one given.
    Q_INVOKABLE void check(qlonglong order); // ready to plan
    // Empty: it is aside; else what is wrong with the day.
    Q_INVOKABLE QString setAside(qlonglong order, const QString& reason, const QString& until);
    Q_INVOKABLE void takeBack(qlonglong order); // from aside
    Q_INVOKABLE void isPaid(qlonglong order);   // she has its money, whatever the shop's file says
    Q_INVOKABLE void callOff(qlonglong order);
    Q_INVOKABLE void join(qlonglong order); // with the other orders of the same buyer
    // Keys: name, street, postcode, town, country, note, gift, giver, lines ("2 INK-SEA" each). Empty: taken; else what
    // is wrong.
    Q_INVOKABLE QString enterByHand(const QVariantMap& order);
    Q_INVOKABLE QString mendAddress(qlonglong order, const QVariantMap& address);

    void refresh();
    void refresh_goods(); // them alone: the bench adds them too

signals:
    void changed();
    void currentChanged();
    void fileChanged();
    void said(const QString& words); // a line for the foot of the screen

private:
    struct File;
    struct Stands { // of an order among the others
        bool checked = false, planned = false, joinable = false;
        bool operator==(const Stands&) const = default;
    };
    struct Known { // a row, and what it was worked out from
        struct From {
            int order = -1, cupboard = -1;
            Date today{};
            Stands stands;
            bool operator==(const From&) const = default;
        } from;
        ArrivedOrder row;
        int address_from = -1;
        std::string address; // orders with the same may travel together
    };
    struct Open { // of one address: how many arrived, and the first two that may travel
        int arrived = 0;
        std::optional<shop::OrderId> first, second;
    };
    ArrivedOrder row_of(const shop::HeldOrder& held, const Stands& stands) const;
    const ArrivedOrder& row_known(Known& known, const shop::HeldOrder& held, const Stands& stands) const;
    const std::string& address_known(Known& known, const shop::HeldOrder& held) const;
    const shop::HeldOrder* travels_with(const shop::HeldOrder& held) const;
    void showFile();
    void settle(const book::Done& done, const QString& words);
    std::vector<const shop::HeldOrder*> meant(qlonglong order) const; // the marked ones, or this one

    Day& day_;
    std::unordered_map<std::int64_t, Known> known_;
    std::unordered_map<std::string_view, Open> at_address_; // the keys stand in known_
    Rows<ArrivedOrder> orders_;
    std::map<Pile, int> piles_; // how many lie in each
    Rows<OrderLineRow> lines_;
    Rows<GoodChoice> goods_;
    Rows<ColumnRow> columns_;
    Rows<FileProblem> problems_;
    QString headline_, summary_, file_name_, file_facts_, shop_, still_missing_, outcome_;
    QStringList fields_;
    QVariantMap detail_;
    qlonglong current_ = 0;
    int ready_ = 0, arrived_ready_ = 0;
    bool matching_ = false;
    std::shared_ptr<File> file_;
};

} // namespace stow::view
