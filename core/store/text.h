#pragma once

#include <QCoreApplication>
#include <QString>

#include <string>
#include <string_view>

namespace tierloam::store {

/// Context of the translations of this room.
class StoreText {
    Q_DECLARE_TR_FUNCTIONS(StoreText)
};

/// The file and the driver speak QString, the journal UTF-8. An empty text stays a text: a null QString would be bound as NULL.
inline QString toQString(std::string_view text)
{
    return text.empty() ? QStringLiteral("") : QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}
