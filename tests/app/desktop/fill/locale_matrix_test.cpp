// The whole Fill page in every language, number format and unit system.
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/settings/language.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "tests/app/desktop/slow_file.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QLabel>
#include <QRegularExpression>
#include <QTest>
#include <ostream>

namespace treadwell::fill {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

struct Case {
    const char* locale;
    const char* language;
    UnitSystem units;
    friend void PrintTo(const Case& each, std::ostream* out) { *out << each.locale << enumText(each.units); }
};

class PageIn : public testing::TestWithParam<Case> {
  protected:
    PageIn() {
        language.set(QLatin1String{GetParam().language});
        appearance.setUnits(
            settings::DisplayUnits{GetParam().units, QLocale{QLatin1String{GetParam().locale}}});
        SeasonMaker maker;
        const Instant morning = clock.time - 3h;
        maker.add(entries::SiloDefined{someSilo()}, morning);
        maker.add(entries::TractorDefined{someTractor(1, 14)}, morning);
        maker.add(someWork(1, farm::Activity::packing), morning);
        for (int i = 0; i < 20; ++i) maker.add(someLoad(12.4), morning + 1h + i * 6min);
        desk = std::make_unique<desk::SeasonDesk>(std::make_unique<SlowFile>(disk, std::move(maker)), clock);
        page = std::make_unique<FillPage>(*desk, appearance);
        page->resize(1100, 760);
        page->show();
        QTest::qWait(5);
    }
    /// All that can be read or heard on the page.
    [[nodiscard]] QStringList texts() const {
        QStringList all;
        for (const QWidget* widget : page->findChildren<QWidget*>()) {
            all << widget->accessibleName() << widget->accessibleDescription();
            if (const auto* label = qobject_cast<const QLabel*>(widget)) all << label->text();
            if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) all << button->text();
        }
        return all;
    }
    void type(const char* text) {
        auto* box = page->findChild<widgets::QuantitySpinBox*>(QStringLiteral("dryMatterPercent"));
        box->setFocus();
        box->selectAll();
        QTest::keyClicks(box, QLatin1String{text});
        QTest::keyClick(box, Qt::Key_Return);
    }
    [[nodiscard]] const std::vector<season::Sample>& samples() const {
        return desk->season()->days().back()->samples;
    }

    HandClock clock{at("2026-09-15T14:00:00Z")};
    Disk disk;
    settings::Language language;
    settings::Appearance appearance;
    std::unique_ptr<desk::SeasonDesk> desk;
    std::unique_ptr<FillPage> page;
};

TEST_P(PageIn, ReadsWellInEveryView) {
    const bool comma = appearance.units().locale().decimalPoint() == u",";
    static const QRegularExpression kPlace{QStringLiteral("%\\d|\\bnan\\b|\\binf\\b")};
    static const QRegularExpression kPoint{QStringLiteral("\\d\\.\\d")};
    static const QRegularExpression kComma{QStringLiteral("\\d,\\d")};
    for (const View view : kViews) {
        page->findChild<ViewStrip*>()->choose(view);
        QTest::qWait(2);
        for (const QString& text : texts()) {
            if (text.startsWith(u"Source:") || text.startsWith(u"Fonte:")) continue;  // quoted as printed
            EXPECT_FALSE(text.contains(kPlace)) << text.toStdString();
            EXPECT_FALSE(text.contains(comma ? kPoint : kComma)) << text.toStdString();
        }
    }
}

TEST_P(PageIn, TakesPointAndCommaForTheSame) {
    type("34.5");
    ASSERT_TRUE(QTest::qWaitFor([this] { return samples().size() == 1; }));
    clock.time += 1min;
    type("34,5");
    // The same number is no edit, so something else must stand between the two.
    clock.time += 1min;
    type("36");
    ASSERT_TRUE(
        QTest::qWaitFor([this] { return samples().back().reading.dryMatter == DryMatter::fromPercent(36); }));
    clock.time += 1min;
    type("34,5");
    ASSERT_TRUE(QTest::qWaitFor(
        [this] { return samples().back().reading.dryMatter == samples().front().reading.dryMatter; }));
    EXPECT_NEAR(samples().front().reading.dryMatter.percent(), 34.5, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(
    Locales, PageIn,
    testing::Values(Case{"en_US", "en", UnitSystem::metric}, Case{"en_US", "en", UnitSystem::us},
                    Case{"de_DE", "en", UnitSystem::metric}, Case{"de_DE", "en", UnitSystem::us},
                    Case{"pt_BR", "pt_BR", UnitSystem::metric}, Case{"pt_BR", "pt_BR", UnitSystem::us}),
    [](const auto& each) {
        return std::string{each.param.locale} + '_' + std::string{enumText(each.param.units)};
    });

}  // namespace
}  // namespace treadwell::fill
