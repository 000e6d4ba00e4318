#include "app/desktop/samples/scale_dialog.h"

#include "app/desktop/widgets/choice_box.h"

#include <QDir>
#include <QSettings>

namespace treadwell::samples_page {

namespace {

constexpr const char* kPlaceKey = "scale/place";
constexpr const char* kProfileKey = "scale/profile";
constexpr const char* kBaudKey = "scale/baud";
constexpr const char* kCharactersKey = "scale/characters";

QString textOf(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// Serial devices that are plugged in.
QStringList devices() {
    QStringList found;
    for (const QString& name : QDir{QStringLiteral("/dev")}.entryList(
             {QStringLiteral("ttyUSB*"), QStringLiteral("ttyACM*"), QStringLiteral("ttyS?")}, QDir::System))
        found << QStringLiteral("/dev/") + name;
    return found;
}

}  // namespace

ScaleDialog::ScaleDialog(const settings::Appearance& look, QWidget* parent)
    : Sheet{look, tr("A scale on a wire"), parent},
      m_place{new widgets::ChoiceBox{look}},
      m_profile{new widgets::ChoiceBox{look}},
      m_baud{new widgets::ChoiceBox{look}},
      m_characters{new widgets::ChoiceBox{look}} {
    const QSettings kept;
    m_place->setObjectName(QStringLiteral("scalePlace"));
    m_profile->setObjectName(QStringLiteral("scaleProfile"));
    m_place->setEditable(true);
    m_place->addItems(devices());
    m_place->setCurrentText(kept.value(QLatin1String{kPlaceKey}, m_place->currentText()).toString());
    for (const formats::ScaleProfile& profile : formats::scaleProfiles())
        m_profile->addItem(textOf(profile.example), textOf(profile.name));
    for (const int baud : scale::kBauds) m_baud->addItem(QString::number(baud), baud);
    for (const std::string_view each : enumTexts(scale::Characters{})) m_characters->addItem(textOf(each));
    const auto choose = [](QComboBox* box, int at) { box->setCurrentIndex(std::max(0, at)); };
    choose(m_profile, m_profile->findData(kept.value(QLatin1String{kProfileKey})));
    choose(m_baud, m_baud->findData(kept.value(QLatin1String{kBaudKey}, scale::LineSettings{}.baud).toInt()));
    choose(m_characters, m_characters->findText(kept.value(QLatin1String{kCharactersKey}).toString()));
    addRow(tr("Device, or host and port"), m_place);
    addRow(tr("It writes"), m_profile);
    addRow(tr("Baud"), m_baud);
    addRow(tr("Characters"), m_characters);
    addDecision(tr("Listen to it"));
}

void ScaleDialog::record() {
    const QString place = m_place->currentText().trimmed();
    if (place.isEmpty()) return refuse(tr("Say where it is, as /dev/ttyUSB0 or 127.0.0.1:4001."));
    QSettings kept;
    kept.setValue(QLatin1String{kPlaceKey}, place);
    kept.setValue(QLatin1String{kProfileKey}, m_profile->currentData());
    kept.setValue(QLatin1String{kBaudKey}, m_baud->currentData());
    kept.setValue(QLatin1String{kCharactersKey}, m_characters->currentText());
    const auto characters = enumFromText<scale::Characters>(m_characters->currentText().toStdString());
    emit chosen(
        {place.toStdString(), m_baud->currentData().toInt(), characters.value_or(scale::Characters{})},
        formats::scaleProfiles()[static_cast<std::size_t>(m_profile->currentIndex())]);
    accept();
}

}  // namespace treadwell::samples_page
