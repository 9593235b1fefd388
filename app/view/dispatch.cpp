#include "app/view/dispatch.h"

#include "app/day_papers.h"
#include "app/dispatch.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/cupboard.h"
#include "core/intake/out_files.h"
#include "core/intake/table.h"
#include "core/shop/check_digits.h"

#include <QClipboard>
#include <QGuiApplication>

#include <algorithm>
#include <cctype>
#include <fstream>
#include <set>

namespace stow::view {

namespace {

QString lack(const papers::CustomsFault& fault)
{
    const QString what = fault.what.empty() ? DispatchController::tr("a line") : text(fault.what);
    switch (fault.lack) {
    case papers::CustomsLack::description: return DispatchController::tr("a good has no words for customs");
    case papers::CustomsLack::vague: return DispatchController::tr("“%1” is too vague for customs").arg(what);
    case papers::CustomsLack::tariff_number:
        return DispatchController::tr("%1: no tariff number (HS) of six digits or more").arg(what);
    case papers::CustomsLack::origin: return DispatchController::tr("%1: no country of origin").arg(what);
    case papers::CustomsLack::value: return DispatchController::tr("%1: no value").arg(what);
    case papers::CustomsLack::two_currencies: return DispatchController::tr("values in two currencies");
    case papers::CustomsLack::heavier_than_parcel:
        return DispatchController::tr("the lines weigh more than the parcel");
    }
    return {};
}

QString form_name(shop::CustomsForm form)
{
    return form == shop::CustomsForm::cn22 ? QStringLiteral("CN 22") : QStringLiteral("CN 23");
}

bool written(const std::filesystem::path& file, const std::string& content)
{
    std::error_code error;
    std::filesystem::create_directories(file.parent_path(), error);
    std::ofstream out(file, std::ios::binary);
    out << content;
    return static_cast<bool>(out);
}

std::string file_name(const std::string& what, const std::string& whose, const Day& day, const char* ending)
{
    std::string name = what + "-" + whose + "-" + to_text(day.today()) + ending;
    std::replace_if(
        name.begin(), name.end(), [](char c) { return c == ' ' || c == '/' || c == '\\'; }, '-');
    return name;
}

} // namespace

DispatchController::DispatchController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

void DispatchController::look(qlonglong parcel)
{
    id_ = {parcel};
    refresh();
}

void DispatchController::refresh()
{
    const auto held = id_.value != 0 ? book::parcel(day_.book(), id_) : std::nullopt;
    lines_.show({});
    bought_.show({});
    faults_.clear();
    stamps_.clear();
    title_.clear();
    if (!held) return emit changed();
    const shop::HeldOrder* order = order_of(day_, held->parcel.pieces);
    title_ = joined(
        {tr("Parcel %1").arg(text(held->parcel.number)), order != nullptr ? text(order->order.to.name) : QString()},
        QStringLiteral(", "));
    tracking_ = text(held->parcel.tracking);
    message_ = text(dispatch_message(day_, *held));
    price_ = held->parcel.postage ? words::money_with_currency(*held->parcel.postage) : QString();

    const ParcelCustoms customs = customs_of(day_, *held);
    totals_.clear();
    if (customs.border == shop::Border::none) {
        customs_ = tr("Nothing to declare");
    } else {
        customs_ = joined({form_name(customs.form), tr("sale of goods"),
                           customs.border == shop::Border::tax_only ? tr("outside the tax area only") : QString()});
        std::vector<CustomsRow> rows;
        Weight net;
        std::optional<Money> value;
        bool valued = true;
        for (const auto& line : customs.data.lines) {
            rows.push_back({tr("%1 × %2")
                                .arg(line.count)
                                .arg(line.description.empty() ? tr("– no words –") : text(line.description)),
                            words::weight(line.weight), line.value ? words::money_with_currency(*line.value) : tr("–"),
                            line.tariff_number.empty() ? tr("–") : text(line.tariff_number),
                            line.origin.empty() ? tr("–") : text(line.origin)});
            net += line.weight;
            valued = valued && line.value && (!value || value->currency == line.value->currency);
            if (valued) value = value ? *value + *line.value : *line.value;
        }
        totals_ = joined({tr("goods %1").arg(words::weight(net)),
                          customs.data.gross ? tr("parcel %1").arg(words::weight(*customs.data.gross)) : QString(),
                          valued && value ? words::money_with_currency(*value) : QString()});
        if (customs.data.gift_shown) {
            faults_ += tr("A gift: the form outside shows what it is and its value. Tell the giver.");
        }
        for (const papers::CustomsFault& fault : papers::faults(customs.data)) faults_ += lack(fault);
        faults_.removeDuplicates();
        lines_.show(std::move(rows));
    }

    std::vector<BoughtRow> bought;
    bought_before_ = false;
    for (const book::PostageBought& one : book::postage_bought(day_.book(), id_)) {
        bought.push_back({one.id,
                          joined({words::money_with_currency(one.amount), text(one.number), text(to_text(one.at)),
                                  one.refunded ? tr("refunded") : QString()}),
                          one.refunded});
        bought_before_ = bought_before_ || !one.refunded;
    }
    bought_.show(std::move(bought));
    for (const shop::Stamp& stamp : book::dispatch(day_.book()).stamps) {
        const auto left = day_.cupboard().on_hand.find(stamp.supply);
        const auto pieces = left == day_.cupboard().on_hand.end() ? 0 : left->second.thousandths / 1000;
        stamps_ +=
            tr("%1 (%2), %3 left").arg(text(stamp.supply.text), words::money_with_currency(stamp.face)).arg(pieces);
    }
    emit changed();
}

QString DispatchController::buy(const QString& amount, const QString& number, const QString& stamps, bool again)
{
    const auto held = book::parcel(day_.book(), id_);
    if (!held) return {};
    book::PostageBought bought;
    bought.parcel = id_;
    bought.carrier = held->parcel.carrier;
    bought.service = held->parcel.service;
    bought.number = utf8(number);
    std::map<shop::SupplyCode, int> used;
    Money face{0, day_.cupboard().house.currency};
    if (!stamps.trimmed().isEmpty()) {
        const auto counted =
            intake::counted_codes(utf8(QString(stamps).replace(QLatin1Char(','), QLatin1Char('+'))), '.');
        if (!counted) return tr("stamps as 2 STAMP-110 + 1 STAMP-20");
        const auto known = book::dispatch(day_.book()).stamps;
        for (const intake::CountedCode& code : *counted) {
            const auto stamp = std::find_if(known.begin(), known.end(),
                                            [&](const shop::Stamp& s) { return s.supply.text == code.code; });
            if (stamp == known.end()) return tr("%1 is not among the stamps").arg(text(code.code));
            const int count = static_cast<int>(code.thousandths / 1000);
            used[stamp->supply] += count;
            if (stamp->face.currency == face.currency) face += stamp->face * count;
        }
    }
    if (amount.trimmed().isEmpty() && !used.empty()) {
        bought.amount = face;
    } else {
        const auto typed = typed_money(amount, day_.cupboard().house.currency);
        if (!typed || typed->minor < 0) return tr("“%1” is not an amount").arg(amount);
        bought.amount = *typed;
    }
    if (const auto done = book::buy_postage(day_.book(), bought, again, used); !done) {
        return done.error().why == book::Why::already_bought
                   ? tr("postage was bought for this parcel already: press B again to buy it a second time")
                   : words::refused(done.error());
    }
    emit said(tr("Postage for %1: %2").arg(text(held->parcel.number), words::money_with_currency(bought.amount)));
    day_.moved();
    return {};
}

void DispatchController::refund(int row)
{
    const BoughtRow* bought = bought_.shown(row);
    if (bought == nullptr || bought->refunded) return;
    const auto done = book::refund_postage(day_.book(), bought->purchase);
    emit said(done ? tr("Refund noted") : words::refused(done.error()));
    if (done) day_.moved();
}

QString DispatchController::setTracking(const QString& number)
{
    const std::string plain = utf8(QString(number).remove(QLatin1Char(' ')).toUpper());
    // Thirteen places, letters at both ends: meant as an S10 number, whose check digit then must be right.
    const bool s10 = plain.size() == 13 && !std::isdigit(static_cast<unsigned char>(plain[0])) &&
                     !std::isdigit(static_cast<unsigned char>(plain[12]));
    if (s10 && !shop::s10_ok(plain)) return tr("the check digit of %1 is wrong: scan it again").arg(number);
    const bool plausible = std::all_of(plain.begin(), plain.end(), [](unsigned char c) {
        return std::isalnum(c) || c == '-' || c == '/' || c == '.';
    });
    constexpr std::size_t least = 4, most = 40;
    if (!plain.empty() && (!plausible || plain.size() < least || plain.size() > most)) {
        return tr("“%1” is no tracking number: %2 to %3 letters and digits").arg(number).arg(least).arg(most);
    }
    if (const auto done = book::set_tracking(day_.book(), id_, plain); !done) return words::refused(done.error());
    day_.moved();
    return {};
}

void DispatchController::copyMessage()
{
    QGuiApplication::clipboard()->setText(message_);
    emit said(tr("The message is in the clipboard"));
}

void DispatchController::writeCustoms()
{
    const auto file = print_paper(day_, PaperKind::customs, {id_}, paper_folder(day_));
    emit said(file ? tr("Customs data: %1").arg(text(file->string())) : tr("There is nothing to declare"));
}

void DispatchController::writeSendFile(const QString& carrier)
{
    const auto file = paper_folder(day_) / file_name("send", utf8(carrier), day_, ".csv");
    emit said(written(file, send_file(day_, utf8(carrier))) ? tr("Send file: %1").arg(text(file.string()))
                                                            : tr("%1 cannot be written").arg(text(file.string())));
}

void DispatchController::writeShopFiles()
{
    std::set<std::string> shops;
    for (const shop::HeldOrder& held : day_.orders()) shops.insert(held.order.key.shop);
    QStringList files;
    for (const std::string& shop : shops) {
        const std::string content = shop_file(day_, shop);
        if (std::count(content.begin(), content.end(), '\n') < 2) continue; // nothing of this shop went today
        const auto file = paper_folder(day_) / file_name("sent", shop, day_, ".csv");
        if (written(file, content)) files += text(file.string());
    }
    emit said(files.isEmpty() ? tr("Nothing was handed over today") : tr("For the shops: %1").arg(joined(files)));
}

void DispatchController::writeMessages()
{
    std::string all;
    int count = 0;
    for (const book::HandOverList& list : book::hand_over_lists(day_.book())) {
        if (list.day != day_.today()) continue;
        for (const shop::ParcelId id : list.parcels) {
            const auto held = book::parcel(day_.book(), id);
            const shop::HeldOrder* order = held ? order_of(day_, held->parcel.pieces) : nullptr;
            if (order == nullptr) continue;
            all += order->order.buyer_contact + "\n" + dispatch_message(day_, *held) + "\n\n";
            ++count;
        }
    }
    const auto file = paper_folder(day_) / file_name("messages", "buyers", day_, ".txt");
    if (count == 0) return emit said(tr("Nothing was handed over today"));
    emit said(written(file, all) ? tr("%n messages: ", nullptr, count) + text(file.string())
                                 : tr("%1 cannot be written").arg(text(file.string())));
}

namespace {

std::vector<std::string> numbers_of(const book::Book& book)
{
    std::vector<std::string> all;
    for (const shop::Parcel& parcel : book::parcels(book)) all.push_back(parcel.number);
    return all;
}

} // namespace

void DispatchController::takeTracking(const QUrl& file)
{
    const auto taken =
        intake::read_tracking(intake::read_csv_file(file.toLocalFile().toStdString()), numbers_of(day_.book()));
    QStringList wrong;
    for (const intake::Problem& p : taken.problems) wrong += words::problem(p);
    if (const auto done = book::set_trackings(day_.book(), taken.by_parcel); !done) {
        return emit said(words::refused(done.error()));
    }
    emit said(joined({tr("%n tracking numbers taken", nullptr, static_cast<int>(taken.by_parcel.size())),
                      wrong.mid(0, 2).join(QLatin1Char(' '))}));
    day_.moved();
}

void DispatchController::pasteTracking(const QStringList& in_turn)
{
    std::vector<std::string> turn;
    for (const QString& number : in_turn) turn.push_back(utf8(number));
    const auto taken =
        intake::read_pasted_tracking(QGuiApplication::clipboard()->text().toStdString(), numbers_of(day_.book()), turn);
    QStringList wrong;
    for (const intake::Problem& p : taken.problems) wrong += words::what_is_wrong(p);
    if (const auto done = book::set_trackings(day_.book(), taken.by_parcel); !done) {
        return emit said(words::refused(done.error()));
    }
    emit said(joined({tr("%n tracking numbers taken", nullptr, static_cast<int>(taken.by_parcel.size())),
                      wrong.mid(0, 2).join(QStringLiteral("; "))}));
    day_.moved();
}

} // namespace stow::view
