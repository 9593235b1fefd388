// A file opened as a shop book: opened, or refused with the reason, and looked through where it opens. The bytes of a
// try are places and values to put into a sound book, so that what is damaged is still nearly one; with 255 first they
// are the file itself.
#include "core/book/verify.h"
#include "input.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <unistd.h>

namespace {

const std::string file = "/dev/shm/stowfuzz-" + std::to_string(::getpid()) + ".book";

void remove_all()
{
    for (const char* more : {"", "-wal", "-shm", "-journal"}) {
        std::filesystem::remove(file + more);
        for (int version = 1; version < stow::book::book_version; ++version) { // a try may claim to be any of them
            const std::string older = file + ".version-" + std::to_string(version);
            std::filesystem::remove(older + more);
            std::filesystem::remove(older + ".part" + more);
        }
    }
}

std::string sound_book()
{
    remove_all();
    if (!stow::book::Book::open(file)) std::abort();
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace stow;
    static const std::string sound = sound_book();
    std::string bytes = sound;
    if (size > 0 && data[0] == 255) {
        bytes = fuzz::text(data + 1, size - 1);
    } else {
        for (std::size_t i = 0; i + 4 <= size; i += 4) {
            const std::size_t at = data[i] + 256U * data[i + 1] + 65536U * data[i + 2];
            bytes[at % bytes.size()] = static_cast<char>(data[i + 3]);
        }
    }
    remove_all();
    std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes;
    if (auto opened = book::Book::open(file)) {
        try {
            book::verify(*opened);
        } catch (const book::BookFailure&) { // a broken page is found when it is read
        }
    }
    remove_all();
    return 0;
}
