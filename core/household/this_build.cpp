#include "core/household/this_build.h"

#include <cstddef>
#include <cstring>
#include <link.h>

namespace tierloam::household {

namespace {

std::string inBase16(const unsigned char* bytes, std::size_t size)
{
    constexpr char digits[] = "0123456789abcdef";
    std::string text;
    for (std::size_t i = 0; i < size; ++i) {
        text += digits[bytes[i] >> 4];
        text += digits[bytes[i] & 15];
    }
    return text;
}

/// The notes of an ELF segment: sizes of name and description, type, name, description, each filled up to words of four bytes.
std::string idAmong(const unsigned char* notes, std::size_t size)
{
    const auto upToWord = [](std::size_t n) { return (n + 3) / 4 * 4; };
    for (std::size_t at = 0; at + sizeof(ElfW(Nhdr)) <= size;) {
        ElfW(Nhdr) head{};
        std::memcpy(&head, notes + at, sizeof head);
        const std::size_t name = at + sizeof head;
        const std::size_t text = name + upToWord(head.n_namesz);
        at = text + upToWord(head.n_descsz);
        if (at > size) return {};
        if (head.n_type == NT_GNU_BUILD_ID && head.n_namesz == 4 && std::memcmp(notes + name, "GNU", 4) == 0) return inBase16(notes + text, head.n_descsz);
    }
    return {};
}

int lookAt(dl_phdr_info* object, std::size_t, void* found)
{
    for (int i = 0; i < object->dlpi_phnum; ++i) {
        const ElfW(Phdr)& part = object->dlpi_phdr[i];
        if (part.p_type != PT_NOTE) continue;
        const std::string id = idAmong(reinterpret_cast<const unsigned char*>(object->dlpi_addr + part.p_vaddr), part.p_memsz); // NOLINT(performance-no-int-to-ptr)
        if (!id.empty()) {
            *static_cast<std::string*>(found) = id;
            break;
        }
    }
    return 1; // the first object is the program itself
}

}

std::string thisBuild()
{
    std::string id;
    dl_iterate_phdr(lookAt, &id);
    return id;
}

}
