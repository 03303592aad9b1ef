#pragma once

#include <QCoreApplication>
#include <QString>

#include <string_view>

namespace tierloam::exchange {

/// Context of the translations of this room.
class ExchangeText {
    Q_DECLARE_TR_FUNCTIONS(ExchangeText)
};

inline QString toQString(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

/// A cell as it can be shown on one line of a message: bytes that are not UTF-8 become �, control characters their code (U+0007),
/// and a long text is cut to about 60 characters with an ellipsis.
QString shown(std::string_view cell);

}
