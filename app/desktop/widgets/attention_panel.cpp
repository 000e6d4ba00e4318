#include "app/desktop/widgets/attention_panel.h"

#include "app/desktop/widgets/caution_mark.h"
#include "app/desktop/widgets/page_change.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QToolButton>

namespace treadwell::widgets {

namespace {

QLabel* wrappedLabel(const QString& text) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

/// Writes the notices into a grid, row below row: mark, text, and the button that puts it away.
class Writer final {
  public:
    Writer(const settings::Appearance& appearance, AttentionPanel& panel, QGridLayout& grid)
        : m_appearance{appearance}, m_panel{panel}, m_grid{grid}, m_side{panel.fontMetrics().height()} {}

    void add(const NoticeSection& section) {
        if (section.notices.empty()) return;
        auto* title = new QLabel{section.title};
        QFont bold = title->font();
        bold.setBold(true);
        title->setFont(bold);
        m_grid.addWidget(title, m_row++, 0, 1, 3);
        for (const Notice& notice : section.notices) add(notice);
        m_grid.setRowMinimumHeight(m_row++, m_side / 2);
    }
    [[nodiscard]] int row() const noexcept { return m_row; }

  private:
    void add(const Notice& notice) {
        QLabel* text = wrappedLabel(notice.text);
        const int span = notice.putAway.isEmpty() ? 2 : 1;
        if (notice.marked) {
            auto* mark = new QLabel;
            const QIcon icon = cautionMark(m_appearance.theme());
            mark->setPixmap(icon.pixmap(QSize{m_side, m_side}, m_panel.devicePixelRatioF()));
            m_grid.addWidget(mark, m_row, 0, Qt::AlignTop);
            m_grid.addWidget(text, m_row, 1, 1, span);
        } else {
            m_grid.addWidget(text, m_row, 0, 1, span + 1);
        }
        if (!notice.putAway.isEmpty()) m_grid.addWidget(button(notice), m_row, 2, Qt::AlignTop);
        ++m_row;
        if (notice.source.isEmpty()) return;
        QLabel* source = wrappedLabel(AttentionPanel::tr("Source: %1").arg(notice.source));
        QPalette quiet = source->palette();
        quiet.setColor(QPalette::WindowText, m_appearance.theme().quietInk);
        source->setPalette(quiet);
        text->setAccessibleDescription(source->text());
        m_grid.addWidget(source, m_row++, 1, 1, 2);
    }

    QToolButton* button(const Notice& notice) {
        auto* button = new QToolButton;
        button->setText(QString{u'✕'});
        const int side = m_appearance.pixels(settings::kControlMillimetres);
        button->setFixedSize(side, side);
        button->setAccessibleName(AttentionPanel::tr("Put away: %1").arg(notice.text));
        button->setToolTip(AttentionPanel::tr("Put away"));
        QObject::connect(button, &QToolButton::clicked, &m_panel,
                         [panel = &m_panel, key = notice.putAway] { emit panel->putAway(key); });
        return button;
    }

    const settings::Appearance& m_appearance;
    AttentionPanel& m_panel;
    QGridLayout& m_grid;
    int m_side;
    int m_row = 0;
};

}  // namespace

AttentionPanel::AttentionPanel(const settings::Appearance& appearance, QWidget* parent)
    : QScrollArea{parent}, m_appearance{appearance} {
    setProperty("edged", true);
    setWidgetResizable(true);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);  // it takes what is left and scrolls
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(&appearance, &settings::Appearance::changed, this, &AttentionPanel::refresh);
    refresh();
}

void AttentionPanel::setSections(const std::vector<NoticeSection>& sections) {
    if (sections == m_sections) return;  // a rebuilt list would lose place and selection
    m_sections = sections;
    refresh();
}

void AttentionPanel::refresh() {
    setAccessibleName(tr("What matters now"));
    auto* page = new QWidget;
    auto* grid = new QGridLayout{page};
    grid->setColumnStretch(1, 1);
    Writer writer{m_appearance, *this, *grid};
    for (const NoticeSection& section : m_sections) writer.add(section);
    int last = writer.row();
    if (last == 0)
        grid->addWidget(wrappedLabel(tr("Nothing to say from what is known now.")), last++, 0, 1, 3);
    grid->setRowStretch(last, 1);
    changePage(*this, page);
}

void AttentionPanel::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::widgets
