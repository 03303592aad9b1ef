#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tierloam::exchange {

/// Writes JSON in the order in which it is told, which QJsonDocument does not. Numbers have 6 significant digits; one that is not
/// finite becomes null. Objects and arrays opened `onOneLine` stay on it; the others are indented by a blank a level.
class JsonText {
public:
    enum class Layout { spread, onOneLine };

    void openObject(Layout layout = Layout::spread) { open('{', '}', layout); }
    void openArray(Layout layout = Layout::spread) { open('[', ']', layout); }
    void close();

    /// The name of the next value of an object.
    void key(std::string_view name);
    void text(std::string_view value);
    void number(double value);
    void whole(long long value);
    void null();

    /// The document; every object and array must be closed.
    std::string take() &&;

private:
    struct Level {
        char closing;
        Layout layout;
        bool empty = true;
    };
    void open(char opening, char closing, Layout layout);
    void beforeValue();
    void newLine(std::size_t depth);
    void quoted(std::string_view value);

    std::string out_;
    std::vector<Level> levels_;
    bool afterKey_ = false;
};

}
