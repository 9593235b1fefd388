// Rate sheets as a grid: typed, pasted from a spreadsheet, checked while typing, tried with a parcel, kept as a whole.
#pragma once

#include "app/view/row_model.h"
#include "core/intake/rate_grid.h"

#include <QUrl>

#include <map>

namespace stow {
class Day;
}

namespace stow::view {

struct GridRow { // up to a weight
    Q_GADGET
    Q_PROPERTY(QString grams MEMBER grams)
    Q_PROPERTY(QStringList prices MEMBER prices)
    Q_PROPERTY(QString faulty MEMBER faulty)
public:
    QString grams;
    QStringList prices; // by zone
    QString faulty;     // columns that are wrong, as " 0 2 ": 0 the weight, then the zones
};

struct PartRow { // a service, zone, format, surcharge
    Q_GADGET
    Q_PROPERTY(QString record MEMBER record)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString amount MEMBER amount)
    Q_PROPERTY(QStringList values MEMBER values)
    Q_PROPERTY(QString fault MEMBER fault)
    Q_PROPERTY(int faulty MEMBER faulty)
    Q_PROPERTY(QString chapter MEMBER chapter)
    Q_PROPERTY(QString one MEMBER one)
    Q_PROPERTY(bool named MEMBER named)
    Q_PROPERTY(QString amountLabel MEMBER amount_label)
    Q_PROPERTY(QString amountExample MEMBER amount_example)
public:
    QString record, name, amount;
    QStringList values; // as she typed them, by word (intake::part_words)
    QString fault;
    int faulty = -1; // the value that is wrong
    QString chapter; // over the first of its kind
    QString one;     // what it is called
    bool named = true;
    QString amount_label, amount_example;
};

class RatesController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QStringList sheets READ sheets NOTIFY changed)
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY changed)
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)   // a sheet lies on the table
    Q_PROPERTY(bool unkept READ unkept NOTIFY checked) // it differs from what the book holds
    Q_PROPERTY(QString facts READ facts NOTIFY checked)
    Q_PROPERTY(QStringList problems READ problems NOTIFY checked)
    Q_PROPERTY(QString carrier READ carrier NOTIFY changed)
    Q_PROPERTY(QString currency READ currency NOTIFY changed)
    Q_PROPERTY(QString tax READ tax NOTIFY changed)
    Q_PROPERTY(QString from READ from NOTIFY changed)
    Q_PROPERTY(QString until READ until NOTIFY changed)
    Q_PROPERTY(QStringList services READ services NOTIFY tablesChanged)
    Q_PROPERTY(QStringList formats READ formats NOTIFY tablesChanged) // "any size" first
    Q_PROPERTY(QStringList zones READ zones NOTIFY tablesChanged)
    Q_PROPERTY(int service READ service WRITE setService NOTIFY tablesChanged)
    Q_PROPERTY(int format READ format WRITE setFormat NOTIFY tablesChanged)
    Q_PROPERTY(stow::view::RowModel* grid READ grid CONSTANT)
    Q_PROPERTY(stow::view::RowModel* parts READ parts CONSTANT)
    Q_PROPERTY(QStringList tried READ tried NOTIFY checked)
    Q_PROPERTY(QString triedFault READ triedFault NOTIFY checked)
public:
    explicit RatesController(Day& day, QObject* parent = nullptr);
    QStringList sheets() const { return sheets_; }
    int current() const { return current_; }
    void setCurrent(int sheet);
    bool isOpen() const { return open_; }
    bool unkept() const { return unkept_; }
    QString facts() const { return facts_; }
    QStringList problems() const { return problems_; }
    QString carrier() const;
    QString currency() const;
    QString tax() const;
    QString from() const;
    QString until() const;
    QStringList services() const;
    QStringList formats() const;
    QStringList zones() const;
    int service() const { return service_; }
    int format() const { return format_; }
    void setService(int service);
    void setFormat(int format);
    RowModel* grid() { return &grid_; }
    RowModel* parts() { return &parts_; }
    QStringList tried() const { return tried_; }
    QString triedFault() const { return tried_fault_; }

    Q_INVOKABLE void takeIn(const QUrl& file);
    Q_INVOKABLE void write(const QUrl& file);
    Q_INVOKABLE void begin();    // a new sheet with what every sheet has
    Q_INVOKABLE void nextYear(); // this one again, from the day after it ends
    Q_INVOKABLE void keep();
    Q_INVOKABLE void putAway(); // back to what the book holds
    Q_INVOKABLE void setHead(const QString& what, const QString& typed);
    Q_INVOKABLE void setCell(int row, int column, const QString& typed); // column 0: the weight
    Q_INVOKABLE bool tableInClipboard() const;   // more than one cell; one alone is for the field itself
    Q_INVOKABLE void paste(int row, int column); // the rows are made anew
    Q_INVOKABLE void setPart(int row, const QString& what, const QString& typed); // "name", "amount"
    Q_INVOKABLE void setValue(int row, int value, const QString& typed);          // of a word alone: blank or not
    Q_INVOKABLE QVariantList asked(const QString& record);                        // rate_questions.h
    // "250 180 90 812 DE 20095": three sizes in mm, grams, country, postcode; perhaps "roll" or "mailer".
    Q_INVOKABLE void tryParcel(const QString& typed);
    void refresh();

signals:
    void changed();
    void tablesChanged();
    void checked();
    void said(const QString& words);

private:
    void lay(intake::TypedSheet sheet); // on the table
    void show_grid();
    void show_parts();
    void check();
    void try_parcel();
    void remember_draft();
    intake::TypedTable& table();
    void part_typed(int row, PartRow shown);

    Day& day_;
    QStringList sheets_, problems_, tried_;
    QString facts_, tried_fault_, parcel_;
    int current_ = 0, service_ = 0, format_ = 0;
    bool open_ = false, unkept_ = false;
    intake::TypedSheet draft_;
    intake::ReadSheet read_;
    Rows<GridRow> grid_;
    Rows<PartRow> parts_;
    std::map<QString, QVariantList> asked_;
};

} // namespace stow::view
