#include "app/command/command.h"

#include "app/words/book.h"

#include <ostream>

namespace stow::command {

void say(std::ostream& stream, const QString& line)
{
    stream << line.toStdString() << '\n';
}

std::unique_ptr<Day> open_day(Context& context)
{
    auto book = book::Book::open(context.book);
    if (!book) {
        say(context.err, words::problem(book.error()));
        context.exit = book_unusable;
        return nullptr;
    }
    return std::make_unique<Day>(std::move(*book));
}

} // namespace stow::command
