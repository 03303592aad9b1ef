#include "tests/support/private_folders.h"

#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>

namespace tierloam::tests {

PrivateFolders::PrivateFolders()
{
    std::string pattern = (std::filesystem::temp_directory_path() / "tierloam-tests-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) {
        std::perror("no folder for the tests");
        std::exit(EXIT_FAILURE);
    }
    root_ = pattern;
    for (const char* name : {"CONFIG", "DATA", "CACHE", "STATE"}) {
        const std::string folder = root_ + '/' + name;
        std::filesystem::create_directories(folder);
        setenv((std::string{"XDG_"} + name + "_HOME").c_str(), folder.c_str(), 1);
    }
    setenv("HOME", root_.c_str(), 1); // documents lie under it
}

PrivateFolders::~PrivateFolders()
{
    std::error_code ignored; // a folder that stays behind in the temporary place harms nobody
    std::filesystem::remove_all(root_, ignored);
}

void fixZoneAndLocale()
{
    setenv("TZ", "UTC", 1);
    tzset();
    setenv("LC_ALL", "C.UTF-8", 1);
    std::setlocale(LC_ALL, "C.UTF-8");
}

}
