#include "app/command/command.h"
#include "app/supply_papers.h"
#include "app/words/format.h"
#include "core/measure/decimal.h"

#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string kind = "one-square", out = "papers";
    std::vector<std::string> size;
    bool contents = false, letter = false;
};

int lay_out(Context& context, const Options& options)
{
    const auto kind = paperbox::kind(options.kind);
    std::vector<Length> mm_of;
    for (const std::string& typed : options.size) {
        const auto tenths = scaled(typed, 1, Rounding::nearest);
        if (tenths) mm_of.push_back({*tenths});
    }
    mm_of.resize(std::max<std::size_t>(mm_of.size(), 3)); // an envelope has no height
    if (!kind) {
        say(context.err, QObject::tr("A kind is one of one-square, tray, lid, pillow, envelope."));
        return usage;
    }
    paperbox::Wanted wanted{*kind, {mm_of[0], mm_of[1], mm_of[2]}};
    if (options.contents) {
        const auto made = paperbox::around(*kind, wanted.size, mm(1));
        if (!made) return usage;
        wanted = *made;
    }
    const auto laid = paperbox::lay(wanted);
    if (!laid.net) {
        say(context.err, laid.fault == paperbox::Fault::no_size
                             ? QObject::tr("All its lengths must be above zero.")
                             : QObject::tr("From one piece of paper that shape cannot be folded."));
        return refused;
    }
    const auto format = options.letter ? papers::Format::letter : papers::Format::a4;
    const auto file = write_box_template(wanted, format, options.out);
    say(context.out, QObject::tr("sheet %1")
                         .arg(words::length(laid.net->length, QLocale::c()) + QStringLiteral(" × ") +
                              words::length(laid.net->width, QLocale::c())));
    for (const Length mark : laid.net->edge_marks) {
        say(context.out, QObject::tr("mark at %1 from the corner").arg(words::length(mark, QLocale::c())));
    }
    if (!file) return refused;
    say(context.out, QString::fromStdString(file->string()));
    return done;
}

} // namespace

void add_paper_box(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("paper-box", "A box or envelope of paper: sheet, marks, template at 1:1");
    command->add_option("KIND", options->kind, "one-square, tray, lid, pillow or envelope")->required();
    command->add_option("SIZE", options->size, "Length, width and height in mm")->required()->expected(2, 3);
    command->add_flag("--around", options->contents, "The size is of what must go in");
    command->add_flag("--letter", options->letter, "On US Letter instead of A4");
    command->add_option("--out", options->out, "Folder");
    command->callback([&context, options] { context.exit = lay_out(context, *options); });
}

} // namespace stow::command
