#include "cli/disk_words.hpp"

#include <cctype>
#include <cerrno>
#include <system_error>

#include <sys/stat.h>

namespace lengthwise::cli {

std::string words_of(int error) {
    switch (error) {
    case ENOENT:
        return "no such file";
    case ENOTDIR:
        return "a part of its path is a file, not a folder";
    case EISDIR:
        return "is a directory";
    case EACCES:
    case EPERM:
        return "no permission";
    case EEXIST:
        return "there already";
    case EROFS:
        return "the disk is read-only";
    case ELOOP:
        return "its links lead in a circle";
    case ENAMETOOLONG:
        return "the name is too long";
    case ENOSPC:
    case EDQUOT:
        return "disk full";
    case EFBIG:
        return "larger than a file may be here";
    case EMFILE:
    case ENFILE:
        return "too many files are open";
    case ENOMEM:
        return "out of memory";
    case EBADF:
        return "it is closed";
    default:
        auto text = std::generic_category().message(error);
        if (!text.empty()) {
            text[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(text[0])));
        }
        return text;
    }
}

std::string kind_of(mode_t mode) {
    if (S_ISDIR(mode)) {
        return "is a directory";
    }
    if (S_ISFIFO(mode)) {
        return "is a pipe, not a file";
    }
    if (S_ISSOCK(mode)) {
        return "is a socket, not a file";
    }
    if (S_ISCHR(mode) || S_ISBLK(mode)) {
        return "is a device, not a file";
    }
    return "is no regular file";
}

} // namespace lengthwise::cli
