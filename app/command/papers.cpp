#include "app/command/command.h"
#include "app/day_papers.h"
#include "app/paper_keys.h"
#include "app/paper_troubles.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string out;
    std::string only;
};

int papers(Context& context, const Options& options)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    std::vector<shop::ParcelId> parcels;
    for (const shop::Parcel& parcel : book::parcels(day->book())) {
        if (parcel.state < shop::ParcelState::handed_over) parcels.push_back(parcel.id);
    }
    const std::filesystem::path folder = options.out.empty() ? paper_folder(*day) : std::filesystem::path(options.out);
    std::vector<std::string> files;
    for (const PaperKind kind : all_paper_kinds) {
        if (!options.only.empty() && options.only != name_of(kind)) continue;
        if (kind == PaperKind::hand_over_list) {
            for (const book::HandOverList& list : book::hand_over_lists(day->book())) {
                if (list.day != day->today()) continue;
                if (const auto file = print_hand_over_list(*day, list, folder)) files.push_back(file->string());
            }
        } else if (!parcels.empty()) {
            const auto file = print_paper(*day, kind, parcels, folder);
            if (!file && only_some_have(kind)) continue;
            if (!file) {
                say(context.err, QObject::tr("Could not write into %1.").arg(QString::fromStdString(folder.string())));
                return refused;
            }
            files.push_back(file->string());
        }
    }
    if (options.only == paper_key::command_cards) { // of no parcel
        if (const auto file = write_command_cards(*day, folder)) files.push_back(file->string());
    }
    const bool of_parcels = options.only != paper_key::command_cards;
    const QString trouble = of_parcels ? words_of(paper_troubles(*day, parcels)) : QString();
    if (!trouble.isEmpty()) say(context.err, trouble);
    if (context.json) {
        context.out << nlohmann::json{{"files", files}}.dump() << '\n';
    } else if (files.empty()) {
        say(context.err, QObject::tr("There are no parcels to print for. Plan the day first."));
    } else {
        for (const std::string& file : files) context.out << file << '\n';
    }
    return files.empty() || !trouble.isEmpty() ? attention : done;
}

} // namespace

void add_papers(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("papers", "Write the papers of all parcels at hand as PDF");
    command->add_option("--out", options->out, "Folder to write into; one beside the shop book if left out");
    std::vector<std::string> names;
    for (const PaperKind kind : all_paper_kinds) names.emplace_back(name_of(kind));
    names.emplace_back(paper_key::command_cards);
    command->add_option("--only", options->only, "One kind of paper")->check(CLI::IsMember(names));
    command->callback([&context, options] { context.exit = papers(context, *options); });
}

} // namespace stow::command
