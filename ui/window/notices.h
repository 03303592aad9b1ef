#pragma once

#include <QFrame>
#include <QString>

class QVBoxLayout;

namespace tierloam::window {

/// Messages above the page. They stay until they are dismissed or settled; nothing that went wrong vanishes by itself.
class Notices : public QWidget {
    Q_OBJECT

public:
    enum class Kind { notice, failure };

    explicit Notices(QWidget* parent = nullptr);
    /// The same text is not shown twice. `key` names what it is about, so that settle() can take it away once it is put right.
    void show(Kind kind, const QString& text, const QString& key = {});
    void settle(const QString& key);
    void clear();
    QStringList texts() const;

private:
    void dismiss(QFrame* frame);

    static constexpr int most = 4;
    QVBoxLayout* rows_;
    QList<QFrame*> frames_;          ///< oldest first
};

}
