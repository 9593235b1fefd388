// Which sizes to buy: from what was packed and the cartons a supplier offers, with the curve of cost against how many.
#pragma once

#include "app/view/row_model.h"
#include "app/view/scenes.h"

#include <QUrl>

namespace stow {
class Day;
}
namespace stow::records {
struct SizeAdvice;
}
namespace stow::shop {
struct Supply;
}

namespace stow::view {

class Work;

struct SizeRow { // so many sizes
    Q_GADGET
    Q_PROPERTY(QString sizes MEMBER sizes)
    Q_PROPERTY(QString cost MEMBER cost)
    Q_PROPERTY(QString names MEMBER names)
    Q_PROPERTY(QString more MEMBER more)
public:
    QString sizes, cost, names; // cost: a parcel
    QString more;               // how near the best it is, what does not go in, how it fares on later weeks
};

class SizesController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(stow::view::RowModel* rows READ rows CONSTANT)
    Q_PROPERTY(stow::view::SketchScene curve READ curve NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed) // what it goes by, or what is missing
    Q_PROPERTY(bool running READ running NOTIFY runningChanged)
    Q_PROPERTY(double progress READ progress NOTIFY runningChanged)
public:
    explicit SizesController(Day& day, QObject* parent = nullptr);
    ~SizesController() override;
    RowModel* rows() { return &rows_; }
    SketchScene curve() const { return curve_; }
    QString words() const { return words_; }
    bool running() const;
    double progress() const;

    // A table of cartons in the columns of supplies. Empty: begun; else what is wrong with what was typed.
    Q_INVOKABLE QString choose(const QUrl& file, const QString& a_litre);
    Q_INVOKABLE void stop();

signals:
    void changed();
    void runningChanged();

private:
    void show(const records::SizeAdvice& advice, const std::vector<shop::Supply>& offered);

    Day& day_;
    std::unique_ptr<Work> work_;
    Rows<SizeRow> rows_;
    SketchScene curve_;
    QString words_;
};

} // namespace stow::view
