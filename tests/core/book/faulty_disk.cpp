#include "faulty_disk.h"

#include <algorithm>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sqlite3.h>
#include <stdexcept>
#include <string>

namespace stow::book {

namespace {

constexpr std::size_t sector = 512;

std::string content_of(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace

struct FaultyDisk::State {
    sqlite3_vfs vfs{};
    sqlite3_vfs* real = nullptr;
    Fault fault = Fault::full;
    int left = 0; // operations until the fault; 0: none is to come
    bool failed = false;
    std::map<std::string, std::string> synced; // by file: as it lies on the disk for good

    // Counts one write or sync; true when this one fails, or one before it did.
    bool fails()
    {
        if (failed) return true;
        if (left > 0 && --left == 0) failed = true;
        return failed;
    }
};

namespace {

struct File { // what SQLite holds; the real file lies behind it
    sqlite3_file base;
    FaultyDisk::State* disk;
    sqlite3_file* real;
    std::string* path;
};

File* mine(sqlite3_file* file)
{
    return reinterpret_cast<File*>(file);
}
sqlite3_file* real(sqlite3_file* file)
{
    return mine(file)->real;
}

int close(sqlite3_file* file)
{
    const int rc = real(file)->pMethods->xClose(real(file));
    delete mine(file)->path;
    ::operator delete(mine(file)->real);
    return rc;
}
int read(sqlite3_file* file, void* to, int n, sqlite3_int64 at)
{
    return real(file)->pMethods->xRead(real(file), to, n, at);
}
int write(sqlite3_file* file, const void* from, int n, sqlite3_int64 at)
{
    FaultyDisk::State& disk = *mine(file)->disk;
    const bool failed_before = disk.failed;
    if (!disk.fails()) return real(file)->pMethods->xWrite(real(file), from, n, at);
    using Fault = FaultyDisk::Fault;
    if (disk.fault == Fault::half_written && !failed_before && n > 1) {
        real(file)->pMethods->xWrite(real(file), from, n / 2, at);
    }
    return disk.fault == Fault::full ? SQLITE_FULL : SQLITE_IOERR_WRITE;
}
int truncate(sqlite3_file* file, sqlite3_int64 size)
{
    if (mine(file)->disk->failed) return SQLITE_IOERR_TRUNCATE;
    return real(file)->pMethods->xTruncate(real(file), size);
}
int sync(sqlite3_file* file, int flags)
{
    FaultyDisk::State& disk = *mine(file)->disk;
    if (disk.fails()) return SQLITE_IOERR_FSYNC;
    const int rc = real(file)->pMethods->xSync(real(file), flags);
    if (rc == SQLITE_OK) disk.synced[*mine(file)->path] = content_of(*mine(file)->path);
    return rc;
}
int size(sqlite3_file* file, sqlite3_int64* n)
{
    return real(file)->pMethods->xFileSize(real(file), n);
}
int lock(sqlite3_file* file, int level)
{
    return real(file)->pMethods->xLock(real(file), level);
}
int unlock(sqlite3_file* file, int level)
{
    return real(file)->pMethods->xUnlock(real(file), level);
}
int check_lock(sqlite3_file* file, int* held)
{
    return real(file)->pMethods->xCheckReservedLock(real(file), held);
}
int control(sqlite3_file* file, int what, void* with)
{
    return real(file)->pMethods->xFileControl(real(file), what, with);
}
int sector_size(sqlite3_file* /*file*/)
{
    return sector;
}
int character(sqlite3_file* /*file*/)
{
    return 0; // nothing is promised: neither whole sectors nor their order
}
int map_shared(sqlite3_file* file, int page, int n, int extend, void volatile** at)
{
    return real(file)->pMethods->xShmMap(real(file), page, n, extend, at);
}
int lock_shared(sqlite3_file* file, int offset, int n, int flags)
{
    return real(file)->pMethods->xShmLock(real(file), offset, n, flags);
}
void barrier_shared(sqlite3_file* file)
{
    real(file)->pMethods->xShmBarrier(real(file));
}
int unmap_shared(sqlite3_file* file, int remove)
{
    return real(file)->pMethods->xShmUnmap(real(file), remove);
}

const sqlite3_io_methods methods{2,           close,          read,         write,   truncate,    sync,      size,
                                 lock,        unlock,         check_lock,   control, sector_size, character, map_shared,
                                 lock_shared, barrier_shared, unmap_shared, nullptr, nullptr};

FaultyDisk::State& disk_of(sqlite3_vfs* vfs)
{
    return *static_cast<FaultyDisk::State*>(vfs->pAppData);
}

int open(sqlite3_vfs* vfs, const char* path, sqlite3_file* file, int flags, int* out)
{
    FaultyDisk::State& disk = disk_of(vfs);
    File* made = mine(file);
    made->base.pMethods = nullptr;
    made->disk = &disk;
    made->path = new std::string(path != nullptr ? path : "");
    made->real = static_cast<sqlite3_file*>(::operator new(static_cast<std::size_t>(disk.real->szOsFile)));
    std::memset(made->real, 0, static_cast<std::size_t>(disk.real->szOsFile));
    const int rc = disk.real->xOpen(disk.real, path, made->real, flags, out);
    if (rc != SQLITE_OK) {
        delete made->path;
        ::operator delete(made->real);
        return rc;
    }
    made->base.pMethods = &methods;
    // What was there before counts as synced; a file made just now is empty for good.
    if (path != nullptr) disk.synced.try_emplace(*made->path, content_of(*made->path));
    return rc;
}
int remove(sqlite3_vfs* vfs, const char* path, int sync_folder)
{
    FaultyDisk::State& disk = disk_of(vfs);
    if (disk.failed) return SQLITE_IOERR_DELETE;
    disk.synced.erase(path);
    return disk.real->xDelete(disk.real, path, sync_folder);
}
int access(sqlite3_vfs* vfs, const char* path, int flags, int* out)
{
    return disk_of(vfs).real->xAccess(disk_of(vfs).real, path, flags, out);
}
int full_name(sqlite3_vfs* vfs, const char* path, int n, char* out)
{
    return disk_of(vfs).real->xFullPathname(disk_of(vfs).real, path, n, out);
}
int randomness(sqlite3_vfs* vfs, int n, char* out)
{
    return disk_of(vfs).real->xRandomness(disk_of(vfs).real, n, out);
}
int sleep(sqlite3_vfs* vfs, int microseconds)
{
    return disk_of(vfs).real->xSleep(disk_of(vfs).real, microseconds);
}
int now(sqlite3_vfs* vfs, double* out)
{
    return disk_of(vfs).real->xCurrentTime(disk_of(vfs).real, out);
}

} // namespace

FaultyDisk::FaultyDisk() : state_(std::make_unique<State>())
{
    State& s = *state_;
    s.real = sqlite3_vfs_find(nullptr);
    s.vfs = *s.real;
    s.vfs.iVersion = 1;
    s.vfs.szOsFile = sizeof(File);
    s.vfs.zName = "faulty";
    s.vfs.pAppData = state_.get();
    s.vfs.pNext = nullptr;
    s.vfs.xOpen = open;
    s.vfs.xDelete = remove;
    s.vfs.xAccess = access;
    s.vfs.xFullPathname = full_name;
    s.vfs.xRandomness = randomness;
    s.vfs.xSleep = sleep;
    s.vfs.xCurrentTime = now;
    if (sqlite3_vfs_register(&s.vfs, 1) != SQLITE_OK) throw std::runtime_error("no VFS");
}

FaultyDisk::~FaultyDisk()
{
    sqlite3_vfs_unregister(&state_->vfs);
    sqlite3_vfs_register(state_->real, 1);
}

void FaultyDisk::fail(Fault fault, int n)
{
    state_->fault = fault;
    state_->left = n;
}

bool FaultyDisk::has_failed() const
{
    return state_->failed;
}

void FaultyDisk::repair(std::mt19937& dice)
{
    if (state_->failed && state_->fault == Fault::power_lost) {
        for (const auto& [path, synced] : state_->synced) {
            if (!std::filesystem::exists(path)) continue;
            const std::string lost = content_of(path); // as the program saw it
            std::string found = synced;
            found.resize(std::max(synced.size(), lost.size()), '\0');
            for (std::size_t at = 0; at < lost.size(); at += sector) {
                if (dice() % 2 == 0) found.replace(at, sector, lost.substr(at, sector));
            }
            // A longer file may or may not have got its length.
            if (dice() % 2 == 0) found.resize(synced.size());
            std::ofstream(path, std::ios::binary | std::ios::trunc) << found;
        }
    }
    *state_ = State{state_->vfs, state_->real, Fault::full, 0, false, {}};
}

} // namespace stow::book
