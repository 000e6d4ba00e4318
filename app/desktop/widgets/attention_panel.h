#pragma once

#include "app/desktop/settings/appearance.h"

#include <QScrollArea>
#include <vector>

namespace treadwell::widgets {

/// One thing that is said in the panel.
struct Notice {
    QString text;
    QString source = {};   ///< who says so; empty where nobody has to be named
    bool marked = false;   ///< has the caution mark
    QString putAway = {};  ///< the key by which it is put away; empty: it stays
    friend bool operator==(const Notice&, const Notice&) = default;
};

struct NoticeSection {
    QString title;
    std::vector<Notice> notices;
    friend bool operator==(const NoticeSection&, const NoticeSection&) = default;
};

/// What matters now and what there is to know, in sections, the most pressing first. Quiet: nothing blinks,
/// moves or sounds, and nothing has to be answered.
class AttentionPanel final : public QScrollArea {
    Q_OBJECT

  public:
    explicit AttentionPanel(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Sections without notices are left out.
    void setSections(const std::vector<NoticeSection>& sections);

  signals:
    void putAway(const QString& key);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void refresh();

    const settings::Appearance& m_appearance;
    std::vector<NoticeSection> m_sections;
};

}  // namespace treadwell::widgets
