#pragma once

#include "core/quantity/measures.h"

#include <array>
#include <cstdint>
#include <cstring>
#include <deque>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

/// Values as bytes and back, one list of fields for both ways: each(archive, a, b, c) writes or reads. Read back only by the program that wrote it, on the
/// same machine: words are as they lie in memory. A type's list is a function `pass(archive, value)` in this namespace.
namespace tierloam::reckoning::archive {

/// FNV-1a over words of eight bytes: finds what a disk or a killed program leaves, not what somebody forges.
std::uint64_t checksum(std::string_view bytes);

class Out {
public:
    static constexpr bool reading = false;
    explicit Out(std::string& to) : to_{to} {}
    bool good() const { return true; }
    void raw(void* from, std::size_t size) { to_.append(static_cast<const char*>(from), size); }

private:
    std::string& to_;
};

/// Once something does not fit, nothing more is read: what is asked for is zero, and good() is false.
class In {
public:
    static constexpr bool reading = true;
    /// Good when the bytes begin with the mark and hold what they held when they were written.
    In(std::string_view mark, std::string_view bytes);
    bool good() const { return good_; }
    bool atEnd() const { return from_.empty(); }
    std::size_t left() const { return from_.size(); }
    void fail() { good_ = false; }
    void raw(void* to, std::size_t size)
    {
        if (!good_ || size > from_.size()) {
            good_ = false;
            std::memset(to, 0, size);
            return;
        }
        std::memcpy(to, from_.data(), size);
        from_.remove_prefix(size);
    }

private:
    std::string_view from_;
    bool good_ = true;
};

template <class Value>
concept Plain = std::is_arithmetic_v<Value> || std::is_enum_v<Value> || std::is_same_v<Value, Day>;

template <class Archive, class... Values>
void each(Archive& archive, Values&... values);

template <class Archive, Plain Value>
void pass(Archive& archive, Value& value) { archive.raw(&value, sizeof value); }

/// How many there are; of what is read no more than the bytes could hold.
template <class Archive>
std::size_t passSize(Archive& archive, std::size_t size)
{
    std::uint64_t many = size;
    archive.raw(&many, sizeof many);
    if constexpr (Archive::reading)
        if (many > archive.left()) {
            archive.fail();
            return 0;
        }
    return static_cast<std::size_t>(many);
}

template <class Archive>
void pass(Archive& archive, std::string& text)
{
    text.resize(passSize(archive, text.size()));
    archive.raw(text.data(), text.size());
}

template <class Archive, class Value>
void pass(Archive& archive, std::optional<Value>& value)
{
    bool is = value.has_value();
    archive.raw(&is, sizeof is);
    if constexpr (Archive::reading) value = is ? std::optional{Value{}} : std::nullopt;
    if (is) each(archive, *value);
}

template <class Archive, class First, class Second>
void pass(Archive& archive, std::pair<First, Second>& both) { each(archive, both.first, both.second); }

template <class Archive, class Values>
void passAll(Archive& archive, Values& values)
{
    values.resize(passSize(archive, values.size()));
    for (auto& value : values) {
        if (!archive.good()) return;
        each(archive, value);
    }
}

template <class Archive, class Value>
void pass(Archive& archive, std::vector<Value>& values) { passAll(archive, values); }
template <class Archive, class Value>
void pass(Archive& archive, std::deque<Value>& values) { passAll(archive, values); }

/// Rows of numbers, in one go.
template <class Archive, Plain Value>
void pass(Archive& archive, std::vector<Value>& values)
{
    const std::size_t many = passSize(archive, values.size());
    if constexpr (Archive::reading)
        if (many > archive.left() / sizeof(Value)) {
            archive.fail();
            return;
        }
    values.resize(many);
    if (many > 0) archive.raw(values.data(), many * sizeof(Value));
}

template <class Archive, class Value, std::size_t many>
void pass(Archive& archive, std::array<Value, many>& values)
{
    for (Value& value : values) each(archive, value);
}

template <class Archive, class Key, class Value>
void pass(Archive& archive, std::map<Key, Value>& values)
{
    std::vector<std::pair<Key, Value>> rows;
    if constexpr (!Archive::reading) rows.assign(values.begin(), values.end());
    each(archive, rows);
    if constexpr (Archive::reading) values = std::map<Key, Value>(rows.begin(), rows.end());
}

template <class Archive, class... Values>
void each(Archive& archive, Values&... values)
{
    (pass(archive, values), ...);
}

/// Mark, checksum, then the values.
template <class... Values>
std::string written(std::string_view mark, Values&... values)
{
    std::string all{mark};
    std::uint64_t sum = 0;
    all.append(sizeof sum, '\0');
    Out out{all};
    each(out, values...);
    sum = checksum(std::string_view{all}.substr(mark.size() + sizeof sum));
    std::memcpy(all.data() + mark.size(), &sum, sizeof sum);
    return all;
}

}
