#include "app/command/command.h"
#include "app/day_papers.h"
#include "app/words/book.h"

#include <nlohmann/json.hpp>
#include <ostream>
#include <set>

namespace stow::command {

namespace {

struct Options {
    std::string carrier;
    std::string out;
};

// Without a carrier: what is labelled, by carrier.
int show(Context& context, const Day& day)
{
    std::map<std::string, std::vector<std::string>> labelled;
    for (const shop::Parcel& parcel : book::parcels_in(day.book(), shop::ParcelState::labelled)) {
        labelled[parcel.carrier].push_back(parcel.number);
    }
    if (context.json) {
        context.out << nlohmann::json{{"labelled", labelled}}.dump() << '\n';
        return done;
    }
    if (labelled.empty()) say(context.out, QObject::tr("No parcel is labelled yet."));
    for (const auto& [carrier, numbers] : labelled) {
        context.out << carrier << ':';
        for (const std::string& number : numbers) context.out << ' ' << number;
        context.out << '\n';
    }
    return done;
}

int hand_over(Context& context, const Options& options)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    if (options.carrier.empty()) return show(context, *day);
    const auto list = book::hand_over(day->book(), options.carrier);
    if (!list) {
        say(context.err, words::refused(list.error()));
        return list.error().why == book::Why::nothing_to_do ? attention : refused;
    }
    day->moved();
    const auto file = print_hand_over_list(
        *day, *list, options.out.empty() ? paper_folder(*day) : std::filesystem::path(options.out));
    if (context.json) {
        context.out << nlohmann::json{{"carrier", list->carrier},
                                      {"list", list->number},
                                      {"parcels", list->parcels.size()},
                                      {"file", file ? file->string() : std::string()}}
                           .dump()
                    << '\n';
    } else {
        say(context.out, QObject::tr("List %1 for %2: %n parcels", nullptr, static_cast<int>(list->parcels.size()))
                             .arg(list->number)
                             .arg(QString::fromStdString(list->carrier)));
        if (file) context.out << file->string() << '\n';
    }
    return file ? done : attention;
}

} // namespace

void add_hand_over(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("hand-over", "Close the list of a carrier's labelled parcels and print it");
    command->add_option("CARRIER", options->carrier, "Without it: what is labelled");
    command->add_option("--out", options->out, "Folder for the list");
    command->callback([&context, options] { context.exit = hand_over(context, *options); });
}

} // namespace stow::command
