#pragma once

#include <QStringList>

namespace tierloam::ui {

/// How a file is called where several are listed: its base name, and its folder when two share it.
QString shownFileName(const QString& path, const QStringList& among);

}
