// Packing questions solved on earlier days, kept in the book. Has its own connection, so planning may ask from another
// thread. Advice only: a look-up that fails is no answer, and keeping one that fails is left out.
#pragma once

#include "core/fitting/fit.h"

#include <filesystem>
#include <memory>

namespace SQLite {
class Database;
}

namespace stow::book {

class SolvedQuestions : public fitting::Memory {
public:
    explicit SolvedQuestions(const std::filesystem::path& book); // an existing book
    ~SolvedQuestions() override;

    std::optional<fitting::Answer> recall(const fitting::Question& question) override;
    void keep(const fitting::Question& question, const fitting::Answer& answer) override;

private:
    std::unique_ptr<SQLite::Database> db_;
};

} // namespace stow::book
