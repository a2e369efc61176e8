#include "cli/descriptor.hpp"
#include "cli/disk_words.hpp"
#include "cli/files.hpp"
#include "cli/process.hpp"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace lengthwise::cli {
namespace {

using Refusal = grammar::Reader::Refusal;

/// What stands where a file is to be written.
struct Target {
    std::string path; ///< links followed
    bool there = false;
    struct stat info {};
};

std::string folder_of(std::string const& path) {
    auto const slash = path.rfind('/');
    return slash == std::string::npos ? "./" : path.substr(0, slash + 1);
}

/// Follows a link to the file it stands for, which must be there.
std::variant<Target, Refusal> find_target(std::string const& path) {
    Target target{path, false, {}};
    struct stat own {};
    if (lstat(path.c_str(), &own) == 0 && S_ISLNK(own.st_mode)) {
        std::unique_ptr<char, decltype(&std::free)> const real{realpath(path.c_str(), nullptr), &std::free};
        if (real == nullptr) {
            return Refusal{errno == ENOENT ? "is a link to a file that is not there" : words_of(errno)};
        }
        target.path = real.get();
    }
    target.there = stat(target.path.c_str(), &target.info) == 0;
    if (!target.there && errno != ENOENT) {
        return Refusal{words_of(errno)};
    }
    return target;
}

/// Why what is there must stay; empty if it need not.
std::string keeps(Target const& target, Existing existing) {
    if (!target.there) {
        return {};
    }
    if (!S_ISREG(target.info.st_mode)) {
        return kind_of(target.info.st_mode);
    }
    if (existing == Existing::keep) {
        return "there already; --force replaces it";
    }
    // The folder's permissions would allow the rename: a write-protected file is not meant to change.
    return faccessat(AT_FDCWD, target.path.c_str(), W_OK, AT_EACCESS) == 0 ? std::string{}
                                                                           : "write-protected; old one kept";
}

/// The temporary file beside the target. Until it is renamed it goes when this goes, or
/// when a signal ends the process.
class Draft {
  public:
    static Draft beside(Target const& target) {
        auto path = folder_of(target.path) + ".lengthwise-XXXXXX";
        SignalsHeld const held;                          // no signal between creating the file and knowing it
        int const fd = mkostemp(path.data(), O_CLOEXEC); // mode 0600
        return Draft{std::move(path), fd};
    }
    ~Draft() {
        if (created_ && !placed_) {
            unlink(path_.c_str());
        }
    }
    Draft(Draft const&) = delete;
    Draft& operator=(Draft const&) = delete;

    [[nodiscard]] bool created() const { return created_; }

    [[nodiscard]] bool write(std::string_view bytes) const {
        while (!bytes.empty()) {
            auto const put = ::write(file_.number(), bytes.data(), bytes.size());
            if (put < 0 && errno != EINTR) {
                return false;
            }
            bytes.remove_prefix(put > 0 ? static_cast<std::size_t>(put) : 0);
        }
        return true;
    }

    /// Owner and permissions of what it replaces, or those of any new file.
    [[nodiscard]] bool dress_like(Target const& target) const {
        if (!target.there) {
            auto const mask = umask(0);
            umask(mask);
            return fchmod(file_.number(), 0666 & ~mask) == 0;
        }
        // Only root can give a file away; for others it stays theirs, as with any editor.
        if (fchown(file_.number(), target.info.st_uid, target.info.st_gid) != 0 && errno != EPERM) {
            return false;
        }
        return fchmod(file_.number(), target.info.st_mode & 0777) == 0;
    }

    [[nodiscard]] bool flush() { return fsync(file_.number()) == 0 && file_.close(); }

    /// The moment at which the new file is there: before it the old one, after it the whole new one.
    [[nodiscard]] bool place(Target const& target) {
        placed_ =
            target.there ? std::rename(path_.c_str(), target.path.c_str()) == 0 : place_new(target.path);
        return placed_;
    }

  private:
    Draft(std::string path, int fd)
        : path_(std::move(path)), file_(fd), created_(fd >= 0),
          unfinished_(created_ ? std::string_view{path_} : std::string_view{}) {}

    /// Replaces nothing that has come up in the meantime, where the file system can promise that.
    [[nodiscard]] bool place_new(std::string const& target) const {
        if (renameat2(AT_FDCWD, path_.c_str(), AT_FDCWD, target.c_str(), RENAME_NOREPLACE) == 0) {
            return true;
        }
        bool const unable = errno == EINVAL || errno == ENOSYS;
        return unable && std::rename(path_.c_str(), target.c_str()) == 0;
    }

    std::string path_;
    Descriptor file_;
    bool created_;
    bool placed_ = false;
    Unfinished unfinished_;
};

std::string draft_words(int error) {
    switch (error) {
    case ENOENT:
        return "no such folder";
    case EACCES:
    case EPERM:
        return "no permission to write in its folder";
    default:
        return words_of(error);
    }
}

using Old = std::optional<std::string_view>;

bool holds(std::string const& path, std::string_view was) {
    auto const now = Disk{}.read(path, was.size());
    auto const* const text = std::get_if<grammar::Reader::Text>(&now);
    return text != nullptr && text->bytes == was;
}

/// Why it could not be put in place; nothing if it was. `was` is what the file there must hold.
std::optional<std::string> put(Target const& target, std::string_view bytes, Old was) {
    auto const old_one_kept = [&target] { return target.there ? "; old one kept" : "; nothing written"; };
    auto draft = Draft::beside(target);
    if (!draft.created()) {
        return draft_words(errno) + old_one_kept();
    }
    if (!(draft.write(bytes) && draft.dress_like(target) && draft.flush())) {
        return words_of(errno) + old_one_kept();
    }
    if (was && !holds(target.path, *was)) {
        return "no longer what was read; left as it is, try again";
    }
    return draft.place(target) ? std::nullopt : std::optional{words_of(errno) + old_one_kept()};
}

/// So that the new name outlives a power cut. The file is in place already: what goes wrong
/// here takes nothing back.
void flush_folder(std::string const& path) {
    Descriptor const folder{::open(folder_of(path).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)};
    if (folder.open()) {
        fsync(folder.number());
    }
}

std::optional<Refusal> write_file(std::string const& path, std::string_view bytes, Existing existing,
                                  Old was) {
    auto found = find_target(path);
    if (auto* const refusal = std::get_if<Refusal>(&found)) {
        return std::move(*refusal);
    }
    auto const& target = std::get<Target>(found);
    if (auto reason = keeps(target, existing); !reason.empty()) {
        return Refusal{std::move(reason)};
    }
    if (auto reason = put(target, bytes, was)) {
        return Refusal{std::move(*reason)};
    }
    flush_folder(target.path);
    return std::nullopt;
}

} // namespace

std::optional<Refusal> Disk::write(std::string const& path, std::string_view bytes, Existing existing) {
    return write_file(path, bytes, existing, std::nullopt);
}

std::optional<Refusal> Disk::replace(std::string const& path, std::string_view bytes, std::string_view was) {
    return write_file(path, bytes, Existing::replace, was);
}

} // namespace lengthwise::cli
