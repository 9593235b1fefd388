#include "core/book/solved.h"

#include "core/book/sql.h"
#include "core/intake/document.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace stow::book {

SolvedQuestions::SolvedQuestions(const std::filesystem::path& book)
{
    try {
        db_ = std::make_unique<SQLite::Database>(book.string(), SQLite::OPEN_READWRITE, 200);
        db_->exec("PRAGMA synchronous = NORMAL"); // what is lost here is only solved again
    } catch (const SQLite::Exception&) {
        db_.reset();
    }
}

SolvedQuestions::~SolvedQuestions() = default;

std::optional<fitting::Answer> SolvedQuestions::recall(const fitting::Question& question)
{
    if (!db_) return std::nullopt;
    try {
        Query row(*db_, "SELECT answer FROM solved WHERE question = ? AND engine = ?", intake::to_document(question),
                  fitting::engine_version);
        if (!row.next()) return std::nullopt;
        auto answer = intake::from_document<fitting::Answer>(row.text(0));
        return answer ? std::optional(std::move(*answer)) : std::nullopt;
    } catch (const BookFailure&) {
        return std::nullopt;
    }
}

void SolvedQuestions::keep(const fitting::Question& question, const fitting::Answer& answer)
{
    if (!db_) return;
    try {
        Query(*db_,
              "INSERT INTO solved (question, engine, answer) VALUES (?, ?, ?) "
              "ON CONFLICT (question) DO UPDATE SET engine = excluded.engine, answer = excluded.answer",
              intake::to_document(question), fitting::engine_version, intake::to_document(answer))
            .run();
    } catch (const BookFailure&) { // advice only: planning goes on without
    }
}

} // namespace stow::book
