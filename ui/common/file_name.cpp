#include "ui/common/file_name.h"

#include <QDir>
#include <QFileInfo>
#include <QObject>

namespace tierloam::ui {

QString shownFileName(const QString& path, const QStringList& among)
{
    const QFileInfo file{path};
    const QString base = file.completeBaseName();
    int same = 0;
    for (const QString& other : among) same += QFileInfo{other}.completeBaseName() == base ? 1 : 0;
    return same > 1 ? QObject::tr("%1 in %2").arg(base, QDir::toNativeSeparators(file.absolutePath())) : base;
}

QString fileNameOf(QString name)
{
    for (QChar& c : name)
        if (c == u'/' || c == u'\\' || c == u':' || c.category() == QChar::Other_Control) c = u'_';
    return name.left(80);
}

}
