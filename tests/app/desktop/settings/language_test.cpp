#include "app/desktop/settings/language.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/settings/display_units.h"
#include "app/desktop/widgets/pad_plan.h"
#include "core/advice/codes.h"
#include "core/quantity/relations.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace treadwell::settings {
namespace {

struct Entry {
    QString source;
    QStringList forms;  ///< one, or one a plural form
    bool finished = true;
};

QList<Entry> entriesOf(const char* file) {
    QFile ts{QStringLiteral(TREADWELL_SOURCE "/resources/translations/") + QString::fromUtf8(file)};
    EXPECT_TRUE(ts.open(QIODevice::ReadOnly));
    QXmlStreamReader xml{&ts};
    QList<Entry> entries;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement()) continue;
        if (xml.name() == u"source") {
            entries.append(Entry{xml.readElementText(), {}, true});
        } else if (xml.name() == u"translation") {
            entries.last().finished = xml.attributes().value(QStringLiteral("type")).isEmpty();
            const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements).trimmed();
            entries.last().forms = text.split(QRegularExpression{QStringLiteral("\\n +")});
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return entries;
}

QStringList placesIn(const QString& text) {
    static const QRegularExpression kPlace{QStringLiteral("%(\\d|n)")};
    QStringList places;
    for (const auto& match : kPlace.globalMatch(text)) places << match.captured();
    places.sort();
    return places;
}

class EveryLanguage : public testing::TestWithParam<const char*> {};

TEST_P(EveryLanguage, SaysEverythingWithTheSamePlaces) {
    const QList<Entry> entries = entriesOf(GetParam());
    ASSERT_GT(entries.size(), 50);
    for (const Entry& entry : entries) {
        EXPECT_TRUE(entry.finished) << entry.source.toStdString();
        for (const QString& form : entry.forms) {
            EXPECT_FALSE(form.isEmpty()) << entry.source.toStdString();
            EXPECT_EQ(placesIn(form), placesIn(entry.source)) << entry.source.toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Files, EveryLanguage, testing::Values("screens_en.ts", "screens_pt_BR.ts"));

TEST(Language, TurnsTheScreensToPortugueseAndBack) {
    const QString english = widgets::zoneName(widgets::Zone::spreading);
    {
        Language language;
        EXPECT_TRUE(language.set(QStringLiteral("pt_BR")));
        EXPECT_EQ(widgets::zoneName(widgets::Zone::spreading), QStringLiteral("Espalhando"));
        EXPECT_EQ(DisplayUnits{}.symbol(Dimension::dryDensity), QStringLiteral("kg MS/m³"));
        EXPECT_FALSE(language.set(QStringLiteral("de_DE")));
        EXPECT_EQ(language.name(), QStringLiteral("pt_BR"));
        EXPECT_TRUE(language.set(QStringLiteral("en")));
        EXPECT_EQ(widgets::zoneName(widgets::Zone::spreading), english);
        EXPECT_TRUE(language.set(QStringLiteral("pt_BR")));
    }
    EXPECT_EQ(widgets::zoneName(widgets::Zone::spreading), english);
}

// The short ton is no tonne, in Portuguese either, where "ton" may be read as one.
TEST(Language, TellsTheShortTonFromTheTonne) {
    Language language;
    ASSERT_TRUE(language.set(QStringLiteral("pt_BR")));
    const DisplayUnits us{UnitSystem::us, QLocale{QStringLiteral("pt_BR")}};
    EXPECT_EQ(us.symbol(Dimension::asFedRate), QStringLiteral("ton curta/h"));
    const fill::Speech speech{us, FarmZone{}};
    const QString said =
        speech.say(Message{code::adviceDelivery, {AsFedRate::fromTonnesPerHour(90).amount()}});
    EXPECT_TRUE(said.endsWith(QStringLiteral("99 ton curta/h"))) << said.toStdString();
}

}  // namespace
}  // namespace treadwell::settings
