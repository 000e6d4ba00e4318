#include "app/desktop/samples/ranges_dialog.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/quantity_spin_box.h"

#include <QHBoxLayout>
#include <QLabel>

namespace treadwell::samples_page {

namespace {

constexpr std::array kRanges{&samples::ChopRanges::on19, &samples::ChopRanges::on8, &samples::ChopRanges::on4,
                             &samples::ChopRanges::below4};

}  // namespace

RangesDialog::RangesDialog(const settings::Appearance& look, crop::Crop crop, samples::Processor processor,
                           InForce inForce, QWidget* parent)
    : Sheet{look, tr("What the chop should be"), parent},
      m_inForce{std::move(inForce)},
      m_crop{new widgets::ChoiceBox{look}},
      m_processor{new widgets::ChoiceBox{look}} {
    m_crop->setObjectName(QStringLiteral("rangesCrop"));
    m_processor->setObjectName(QStringLiteral("rangesProcessor"));
    m_crop->addItems({tr("Maize"), tr("Grass"), tr("Lucerne")});
    m_processor->addItems({tr("No processor"), tr("Rolls"), tr("Rolls for a long cut")});
    m_crop->setCurrentIndex(static_cast<int>(crop));
    m_processor->setCurrentIndex(static_cast<int>(processor));
    addRow(tr("Crop"), m_crop);
    addRow(tr("Processor"), m_processor);
    for (std::size_t part = 0; part < kParts; ++part) addPart(part);
    addDecision(tr("Record the ranges"));
    for (QComboBox* choice : {m_crop, m_processor})
        connect(choice, &QComboBox::currentIndexChanged, this, &RangesDialog::showInForce);
    showInForce();
}

void RangesDialog::addPart(std::size_t part) {
    const bool isPan = part == samples::kChopBounds.size();
    const QString bound = look().units().text(samples::kChopBounds[isPan ? part - 1 : part].chopAmount());
    const QString name = isPan ? tr("Below %1").arg(bound) : tr("On %1").arg(bound);
    auto* ends = new QWidget;
    auto* row = new QHBoxLayout{ends};
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& spoken, const char* end) {
        auto* box = new widgets::QuantitySpinBox{look(), Dimension::share};
        box->setSiRange(0.0, 1.0);
        box->setObjectName(QStringLiteral("range%1%2").arg(part).arg(QLatin1String{end}));
        box->setAccessibleName(spoken);
        box->setMinimumHeight(look().pixels(settings::kControlMillimetres));
        row->addWidget(box, 1);
        return box;
    };
    m_parts[part].low = add(tr("%1, at least").arg(name), "low");
    row->addWidget(new QLabel{QStringLiteral("–")});
    m_parts[part].high = add(tr("%1, at most").arg(name), "high");
    addRow(name, ends);
}

void RangesDialog::showInForce() {
    const samples::ChopRanges ranges =
        m_inForce(static_cast<crop::Crop>(m_crop->currentIndex()),
                  static_cast<samples::Processor>(m_processor->currentIndex()));
    for (std::size_t part = 0; part < kParts; ++part) {
        const samples::PartRange& range = ranges.*kRanges[part];
        m_parts[part].low->setQuantity(range.low);
        m_parts[part].high->setQuantity(range.high);
    }
}

samples::ChopRanges RangesDialog::typed() const {
    samples::ChopRanges ranges;
    ranges.crop = static_cast<crop::Crop>(m_crop->currentIndex());
    ranges.processor = static_cast<samples::Processor>(m_processor->currentIndex());
    for (std::size_t part = 0; part < kParts; ++part) {
        ranges.*kRanges[part] = {m_parts[part].low->quantity<Share>(), m_parts[part].high->quantity<Share>()};
    }
    return ranges;
}

void RangesDialog::record() {
    for (const Ends& ends : m_parts) {
        for (widgets::QuantitySpinBox* box : {ends.low, ends.high}) {
            if (box->isWrong())
                return refuse(QStringLiteral("%1: %2").arg(box->accessibleName(), box->echo()));
            box->interpretText();  // a touch need not take the focus from it
        }
    }
    const samples::ChopRanges ranges = typed();
    if (const auto valid = samples::validate(ranges); !valid)
        return refuse(fill::Speech{look().units(), FarmZone{}}.say(valid.error()));
    emit recorded(ranges);
    accept();
}

}  // namespace treadwell::samples_page
