#include "app/desktop/samples/scale_row.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/samples/scale_dialog.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <mutex>
#include <thread>

namespace treadwell::samples_page {

namespace {

constexpr std::chrono::milliseconds kScaleTick{100};

}  // namespace

/// A connection may take minutes to fail, so that it is made aside; who has gone meanwhile does not ask.
struct ScaleRow::Opening {
    std::mutex mutex;
    std::optional<Result<scale::Line>> line;
};

ScaleRow::ScaleRow(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_choose{new QPushButton},
      m_take{new QPushButton},
      m_says{new QLabel} {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_choose);
    row->addWidget(m_says, 1);
    row->addWidget(m_take);
    m_choose->setObjectName(QStringLiteral("scaleChoose"));
    m_take->setObjectName(QStringLiteral("scaleTake"));
    m_says->setObjectName(QStringLiteral("scaleSays"));
    m_says->setTextFormat(Qt::PlainText);
    m_says->setWordWrap(true);
    m_take->setFocusPolicy(Qt::NoFocus);  // the field in hand stays so
    connect(m_choose, &QPushButton::clicked, this, &ScaleRow::ask);
    connect(m_take, &QPushButton::clicked, this, &ScaleRow::take);
    connect(&m_tick, &QTimer::timeout, this, &ScaleRow::hear);
    connect(&appearance, &settings::Appearance::changed, this, &ScaleRow::retranslate);
    retranslate();
}

void ScaleRow::ask() {
    auto* sheet = new ScaleDialog{m_appearance, this};
    connect(sheet, &ScaleDialog::chosen, this, &ScaleRow::listen);
    sheet->open();
}

void ScaleRow::listen(const scale::LineSettings& settings, const formats::ScaleProfile& profile) {
    m_line.reset();
    m_lost.reset();
    m_shown.reset();
    m_stands = false;
    m_steady = {};
    m_frames.emplace(profile);
    m_opening = std::make_shared<Opening>();
    std::thread{[opening = m_opening, settings] {
        auto line = scale::Line::open(settings);
        const std::scoped_lock lock{opening->mutex};
        opening->line.emplace(std::move(line));
    }}.detach();
    m_tick.start(kScaleTick);
    tell();
}

void ScaleRow::hang(const Error& error) {
    m_tick.stop();
    m_line.reset();
    m_opening.reset();
    m_shown.reset();
    m_stands = false;
    m_lost = error;
    tell();
}

void ScaleRow::hear() {
    if (m_opening) {
        const std::scoped_lock lock{m_opening->mutex};
        if (!m_opening->line) return;
        auto opened = std::move(*m_opening->line);
        if (!opened) {
            m_lost = opened.error();
        } else {
            m_line.emplace(*std::move(opened));
            tell();
        }
    }
    m_opening.reset();
    if (m_lost) return hang(*m_lost);
    const auto bytes = m_line->read(std::chrono::milliseconds{0});
    if (!bytes) return hang(bytes.error());
    const Instant now = SystemClock{}.now();
    for (const formats::ScaleFrame& frame : m_frames->take(*bytes)) {
        m_stands = m_steady.take(frame, now).has_value();
        m_shown = frame.reading ? frame.reading->weight : std::nullopt;
    }
    if (!bytes->empty()) tell();
}

void ScaleRow::take() {
    if (m_stands && m_shown) emit taken(*m_shown);
}

void ScaleRow::retranslate() {
    m_choose->setText(tr("Scale …"));
    m_choose->setAccessibleName(tr("Choose a scale on a wire"));
    m_take->setText(tr("Take it (F8)"));
    m_take->setAccessibleName(tr("Take the weight into the field in hand"));
    for (QPushButton* button : {m_choose, m_take})
        button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    tell();
}

void ScaleRow::tell() {
    m_take->setVisible(m_line.has_value());
    m_take->setEnabled(m_stands && m_shown);
    if (m_lost) {
        m_says->setText(fill::Speech{m_appearance.units(), FarmZone{}}.say(*m_lost));
    } else if (m_shown) {
        const QString weight = m_appearance.units().text(Amount{Dimension::dishMass, m_shown->si()});
        m_says->setText(m_stands ? tr("%1, stands still").arg(weight) : tr("%1, moves").arg(weight));
    } else {
        m_says->setText(m_line || m_opening ? tr("nothing heard yet") : tr("no scale on a wire"));
    }
    m_says->setAccessibleName(tr("The scale: %1").arg(m_says->text()));
}

void ScaleRow::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::samples_page
