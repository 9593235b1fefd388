// A disk that fails when it is told to, beneath SQLite (a VFS over the system's own; sqlite.org/vfs.html): full,
// writing half, refusing to write or to sync; or losing its power, with all that was not synced.
#pragma once

#include <cstdint>
#include <memory>
#include <random>

namespace stow::book {

class FaultyDisk { // SQLite's default while it lives; one at a time
public:
    enum class Fault { full, half_written, write_fails, sync_fails, power_lost };

    FaultyDisk();
    ~FaultyDisk();
    FaultyDisk(const FaultyDisk&) = delete;
    FaultyDisk& operator=(const FaultyDisk&) = delete;

    // The fault comes at the n-th write or sync from now on (n >= 1), and everything after it fails too.
    void fail(Fault fault, int n);
    bool has_failed() const;
    // The files as they are found afterwards: after a loss of power what was synced, and of each later write of a
    // sector (512 bytes) as the dice say. All connections must be closed. The disk works again.
    void repair(std::mt19937& dice);

    struct State;

private:
    std::unique_ptr<State> state_;
};

} // namespace stow::book
