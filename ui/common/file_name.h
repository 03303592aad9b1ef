#pragma once

#include <QStringList>

namespace tierloam::ui {

/// How a file is called where several are listed: its base name, and its folder when two share it.
QString shownFileName(const QString& path, const QStringList& among);

/// A name that people gave, as the name of a file without its ending: what parts folders, or cannot stand in a name elsewhere, becomes '_'; at most
/// 80 characters.
QString fileNameOf(QString name);

}
