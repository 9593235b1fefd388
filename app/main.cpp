// Puts the program together: command line, or shop book, day and window.
#include "app/command/command.h"
#include "app/painting/fonts.h"
#include "app/window.h"
#include "app/words/book.h"
#include "app/words/measures.h"
#include "app/words/translations.h"
#include "core/book/book.h"
#include "core/book/settings.h"
#ifdef STOW_WATCHED
#include "app/watch/application.h"
#endif

#include <QGuiApplication>

#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <sys/stat.h>

namespace {

using namespace stow;

// Offscreen unless a window can be shown: every command works without a display.
bool has_display()
{
    const auto set = [](const char* name) {
        const char* value = std::getenv(name);
        return value != nullptr && *value != '\0';
    };
    return set("DISPLAY") || set("WAYLAND_DISPLAY") || set("QT_QPA_PLATFORM");
}

// The demo's files: beside the program when installed, else where it was built from.
std::filesystem::path demo_data()
{
    const std::filesystem::path installed =
        std::filesystem::path(QCoreApplication::applicationDirPath().toStdString()) / "../share/stowbench";
    return std::filesystem::exists(installed / "demo_orders") ? installed : std::filesystem::path(STOW_SOURCE_DIR);
}

} // namespace

int main(int argc, char** argv)
{
    ::umask(S_IRWXG | S_IRWXO); // papers and tables show buyers' addresses: what is written is its owner's alone
    CLI::App line{"Stowbench packs a one-person maker's parcels: the smallest box with proof, filler, weight, postage, "
                  "papers.\nWithout a command it opens the window."};
    line.option_defaults()->always_capture_default(false);
    command::Context context{book::default_book_path(), false, false, std::cout, std::cerr, {}, std::nullopt};
    line.add_option_function<std::string>(
        "--book",
        [&context](const std::string& file) {
            context.book = file;
            context.book_named = true;
        },
        "The shop book; yours if left out");
    line.add_flag("--json", context.json, "Print one JSON document and nothing else");
    line.set_version_flag("--version", "Stowbench " STOW_VERSION);
    line.require_subcommand(0, 1);
    line.fallthrough();
    command::add_all(line, context);

    const bool window_possible = has_display();
    if (!window_possible) qputenv("QT_QPA_PLATFORM", "offscreen");
#ifdef STOW_WATCHED
    watch::Application application(argc, argv);
#else
    QGuiApplication application(argc, argv);
#endif
    QGuiApplication::setApplicationName(QStringLiteral("Stowbench"));
    QGuiApplication::setApplicationVersion(QStringLiteral(STOW_VERSION));
    words::install_translations(application);
    context.demo_data = demo_data();
    if (!painting::load_fonts()) {
        std::cerr << "The program's own fonts cannot be read; it was not built whole.\n";
        return command::book_unusable;
    }

    try {
        line.parse(argc, argv); // runs the command named
        if (context.exit) return *context.exit;
        const auto day = command::open_day(context);
        if (!day) return command::book_unusable;
        if (!window_possible) return command::print_today(context, *day);
        if (const auto language = book::remembered(day->book(), words::remembered_language);
            language && !language->empty()) {
            words::install_translations(application, QString::fromStdString(*language));
        }
        if (const auto units = book::remembered(day->book(), words::remembered_measures)) {
            words::use_measures(application, words::measures(*units).value_or(words::Measures::metric));
        }
        return open_window(application, *day);
    } catch (const CLI::ParseError& error) {
        const int code = line.exit(error, std::cout, std::cerr);
        return code == 0 ? command::done : command::usage;
    } catch (const book::BookFailure& failure) {
        command::say(std::cerr, words::failure(failure));
        return command::book_unusable;
    }
}
