#include "app/desktop/practice/place_form.h"

#include "core/base/codes.h"
#include "core/base/number_text.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace treadwell::practice_page {

namespace {

constexpr std::array kNames{"placeLatitude", "placeLongitude", "placeBearing"};
constexpr std::array kFields{"latitude", "longitude", "bearing"};

/// Either sign before the decimals, in every language.
Result<double> degreesIn(const QString& text, const char* field) {
    std::string plain = text.trimmed().remove(u'°').trimmed().replace(u',', u'.').toStdString();
    const auto number = numberFromText(plain);
    if (!number) return fail(plain.empty() ? code::valueMissing : code::textNotNumber, field, plain);
    return *number;
}

}  // namespace

PlaceForm::PlaceForm(const settings::Appearance& look, QWidget* parent)
    : QWidget{parent}, m_why{new QLabel}, m_record{new QPushButton} {
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    m_why->setWordWrap(true);
    grid->addWidget(m_why, 0, 0, 1, 2);
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        m_titles[i] = new QLabel;
        m_fields[i] = new QLineEdit;
        m_fields[i]->setObjectName(QLatin1String{kNames[i]});
        m_fields[i]->setMinimumHeight(look.pixels(settings::kControlMillimetres));
        m_titles[i]->setBuddy(m_fields[i]);
        grid->addWidget(m_titles[i], static_cast<int>(i) + 1, 0);
        grid->addWidget(m_fields[i], static_cast<int>(i) + 1, 1);
        connect(m_fields[i], &QLineEdit::returnPressed, this, &PlaceForm::read);
    }
    m_record->setObjectName(QStringLiteral("placeRecord"));
    m_record->setMinimumHeight(look.pixels(settings::kControlMillimetres));
    grid->addWidget(m_record, 4, 0, 1, 2);
    connect(m_record, &QPushButton::clicked, this, &PlaceForm::read);
    retranslate();
}

void PlaceForm::clear() {
    for (QLineEdit* field : m_fields) field->clear();
}

void PlaceForm::read() {
    std::array<double, 3> degrees{};
    for (std::size_t i = 0; i < degrees.size(); ++i) {
        const auto number = degreesIn(m_fields[i]->text(), kFields[i]);
        if (!number) {
            m_fields[i]->setFocus();
            return emit failed(number.error());
        }
        degrees[i] = *number;
    }
    const farm::SiloPlace place{degrees[0], degrees[1], degrees[2], std::nullopt};
    if (const auto valid = farm::validate(place); !valid) return emit failed(valid.error());
    emit placed(place);
}

void PlaceForm::retranslate() {
    m_why->setText(
        tr("Where this silo lies is not recorded: the corner of back wall and left wall, seen from the back "
           "wall, and the direction of the left wall from there, in degrees from north."));
    const std::array titles{tr("Latitude"), tr("Longitude"), tr("Direction")};
    for (std::size_t i = 0; i < titles.size(); ++i) {
        m_titles[i]->setText(titles[i]);
        m_fields[i]->setAccessibleName(titles[i]);
    }
    m_fields[0]->setPlaceholderText(QStringLiteral("43.5202447"));
    m_fields[1]->setPlaceholderText(QStringLiteral("-89.5091687"));
    m_fields[2]->setPlaceholderText(QStringLiteral("135"));
    m_record->setText(tr("Record the place"));
}

void PlaceForm::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::practice_page
