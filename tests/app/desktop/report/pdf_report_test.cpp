#include "app/desktop/report/pdf_report.h"

#include "app/desktop/report/pieces.h"
#include "app/words/document_table.h"
#include "core/review/codes.h"
#include "tests/core/review/example_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

namespace treadwell::report {
namespace {

using testing::HasSubstr;

/// A sheet on paper, read back by poppler's programs.
class Printed {
  public:
    explicit Printed(const review::Document& document, Paper paper = Paper::a4,
                     const words::Style& style = {}) {
        QFile file{m_folder.filePath(QStringLiteral("sheet.pdf"))};
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(pdfOf(document, style, paper));
    }

    [[nodiscard]] QString run(const QString& program, QStringList arguments,
                              const QStringList& after = {}) const {
        QProcess process;
        process.start(program, arguments << m_folder.filePath(QStringLiteral("sheet.pdf")) << after);
        EXPECT_TRUE(process.waitForFinished(20'000)) << program.toStdString();
        return QString::fromUtf8(process.readAllStandardOutput());
    }
    /// In the order in which it was set, words parted by one blank; pages by a form feed.
    [[nodiscard]] QStringList pages() const {
        QStringList pages = run(QStringLiteral("pdftotext"), {QStringLiteral("-raw")}, {QStringLiteral("-")})
                                .split(QChar::fromLatin1('\f'), Qt::SkipEmptyParts);
        for (QString& page : pages) page = page.simplified();
        return pages;
    }

  private:
    QTemporaryDir m_folder;
};

/// Where a line ends is the layout's to choose, so blanks do not count.
std::string withoutBlanks(QString text) {
    text.removeIf([](QChar c) { return c.isSpace(); });
    return text.toStdString();
}

std::string rowText(const std::vector<std::string>& cells) {
    QString text;
    for (const std::string& cell : cells) text += QString::fromStdString(cell);
    return withoutBlanks(text);
}

/// A day of so many loads by so many trucks from so many fields.
review::Document busySheet(int loads) {
    testing_support::SeasonMaker maker = review::exampleDay();
    for (int i = 3; i <= 80; ++i) {
        farm::Truck truck{testing_support::idOf<farm::TruckTag>(static_cast<std::uint8_t>(i)),
                          "Truck " + std::to_string(i),
                          AsFedMass::fromTonnes(12),
                          {}};
        maker.add(entries::TruckDefined{truck}, testing_support::at("2026-02-10T08:00:00Z"));
    }
    for (int i = 0; i < loads; ++i) {
        entries::Load load = testing_support::someLoad(12);
        load.truck = testing_support::idOf<farm::TruckTag>(static_cast<std::uint8_t>(3 + i % 78));
        maker.add(load, testing_support::at("2026-02-10T06:00:00Z") + i * std::chrono::seconds{50});
    }
    return review::exampleSheet(maker, "2026-02-10T21:00:00Z");
}

TEST(PdfReport, HoldsEveryCellOfTheTextInItsOrder) {
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const review::Document sheet = review::exampleSheet();
        const std::string all = withoutBlanks(Printed{sheet, paper}.pages().join(QString{}));
        std::size_t from = 0, rows = 0;
        for (const review::Section& section : sheet.sections) {
            for (const review::Block& block : section.blocks) {
                std::vector<std::string> wanted;
                if (const auto* table = std::get_if<review::Table>(&block)) {
                    for (const auto& row : words::inWords(*table, {}).rows) wanted.push_back(rowText(row));
                } else if (const auto* message = std::get_if<Message>(&block)) {
                    wanted.push_back(rowText({words::inWords(*message, {})}));
                }
                for (const std::string& text : wanted) {
                    const std::size_t found = all.find(text, from);
                    ASSERT_NE(found, std::string::npos) << text << "\nis not in\n" << all.substr(from);
                    from = found + text.size();
                    ++rows;
                }
            }
        }
        EXPECT_GE(rows, 60u);
    }
}

// In the densest tables too.
TEST(PdfReport, KeepsAUnitOnOneLine) {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::us}) {
        words::Style style;
        style.units = units;
        const std::string text =
            Printed{review::exampleSheet(), Paper::letter, style}
                .run(QStringLiteral("pdftotext"), {QStringLiteral("-layout")}, {QStringLiteral("-")})
                .toStdString();
        EXPECT_THAT(text, HasSubstr(units == UnitSystem::us ? "lb DM/ft3" : "kg DM/m3"));
        for (const char* broken : {"kg DM/ ", "kg DM/\n", "lb DM/ ", "lb DM/\n", "min/ ", "min/\n"})
            EXPECT_THAT(text, testing::Not(HasSubstr(broken)));
    }
}

// A short ton is never taken for a tonne: the language says which.
TEST(PdfReport, ChartsAreInTheWordsOfTheTables) {
    words::Style style;
    style.units = UnitSystem::us;
    style.translate = [](const char* context, const char* english) {
        return std::string{english} + (context == std::string{words::kUnitContext} ? " short" : "");
    };
    const std::string text =
        Printed{review::exampleSheet(), Paper::a4, style}.pages().join(QString{}).toStdString();
    EXPECT_THAT(text, HasSubstr("Delivery, ton/h short"));
}

// Somebody's own word without a blank, wider than its column.
TEST(PdfReport, BreaksALongWordRatherThanCutIt) {
    const QFontMetricsF metrics{QFont{QStringLiteral("DejaVu Sans")}};
    const QString name = QStringLiteral("Schwarzwasserbruchwiese");
    EXPECT_EQ(inLines(name, metrics, 1e4), name);
    const QString broken =
        inLines(name + QStringLiteral(" west"), metrics, metrics.horizontalAdvance(QStringLiteral("west, ")));
    EXPECT_EQ(broken.count(QChar{0x200B}), name.size() - 1);
    EXPECT_TRUE(broken.endsWith(QStringLiteral("\nwest")));
}

TEST(PdfReport, BreaksALineBeforeANumberAndNotWithinItsUnit) {
    const QFontMetricsF metrics{QFont{QStringLiteral("DejaVu Sans")}};
    const QString text = QStringLiteral("chance 4 % of 239 kg/m3");
    const auto linesAt = [&](const char* widest) {
        return inLines(text, metrics, metrics.horizontalAdvance(QLatin1String{widest}) + 1).toStdString();
    };
    EXPECT_EQ(linesAt("chance 4 % of 239 kg/m3"), text.toStdString());
    EXPECT_EQ(linesAt("chance 4 % of 239 kg/"), "chance 4 % of\n239 kg/m3");
    EXPECT_TRUE(linesAt("239 kg/m3").ends_with("\n239 kg/m3"));
}

TEST(PdfReport, EmbedsEveryFontAndHoldsNoPicture) {
    const Printed printed{review::exampleSheet()};
    const QStringList fonts =
        printed.run(QStringLiteral("pdffonts"), {}).split(QChar::fromLatin1('\n'), Qt::SkipEmptyParts);
    ASSERT_GT(fonts.size(), 2);
    for (int i = 2; i < fonts.size(); ++i) {
        EXPECT_THAT(fonts[i].simplified().toStdString(),
                    testing::ContainsRegex("DejaVuSans.* yes (yes|no) yes "));
    }
    const QStringList pictures = printed.run(QStringLiteral("pdfimages"), {QStringLiteral("-list")})
                                     .split(QChar::fromLatin1('\n'), Qt::SkipEmptyParts);
    EXPECT_EQ(pictures.size(), 2) << "two lines of headings";
}

TEST(PdfReport, IsOnThePaperAskedFor) {
    EXPECT_THAT(Printed(review::exampleSheet(), Paper::a4).run(QStringLiteral("pdfinfo"), {}).toStdString(),
                HasSubstr("(A4)"));
    EXPECT_THAT(
        Printed(review::exampleSheet(), Paper::letter).run(QStringLiteral("pdfinfo"), {}).toStdString(),
        HasSubstr("(letter)"));
}

TEST(PdfReport, KeepsASentenceWithTheTableThatItSpeaksOf) {
    review::Document sheet{"sheet", {code::reviewNothing, {}}, {}};
    review::Table table{"table", {{"hour", code::columnHour}}, {{std::string{"row"}}, {std::string{"row"}}}};
    // Wherever the page ends, the sentence is never its last.
    for (std::size_t rows = 50; rows < 90; ++rows) {
        review::Table above = table;
        above.rows.resize(rows, {std::string{"above"}});
        sheet.sections = {{"section",
                           code::reviewLaidLayers,
                           {std::move(above), Message{code::reviewLoosestLayers, {}}, table}}};
        const auto said = QString::fromStdString(words::inWords(Message{code::reviewLoosestLayers, {}}, {}));
        for (const QString& page : Printed{sheet}.pages())
            EXPECT_FALSE(page.contains(said + QStringLiteral(" Nothing recorded"))) << rows;
    }
}

// 1,000 loads by 78 trucks: the table of trucks goes over the page. No heading stands at a page's foot, each
// page is numbered, and a table that goes on has its head again.
TEST(PdfReport, SetsABusyDayWithoutOrphans) {
    const review::Document sheet = busySheet(990);
    const QStringList pages = Printed{sheet}.pages();
    ASSERT_GE(pages.size(), 3);
    std::size_t goingOn = 0;
    for (int i = 0; i < pages.size(); ++i) {
        const QString foot =
            QStringLiteral("Day sheet of Lindenhof, 2026-02-10 %1 / %2").arg(i + 1).arg(pages.size());
        ASSERT_TRUE(pages[i].endsWith(foot)) << pages[i].toStdString();
        const QString body = pages[i].chopped(foot.size()).trimmed();
        for (const review::Section& section : sheet.sections) {
            const auto title = QString::fromStdString(words::inWords(Message{section.title, {}}, {}));
            EXPECT_FALSE(body.endsWith(title)) << body.toStdString();
        }
        goingOn += body.startsWith(QStringLiteral("Truck Loads As fed, t"));
    }
    EXPECT_EQ(goingOn, 1u);
    for (int truck = 3; truck <= 80; ++truck) {
        EXPECT_THAT(pages.join(QStringLiteral(" ")).toStdString(),
                    HasSubstr("Truck " + std::to_string(truck) + ' '));
    }
}

}  // namespace
}  // namespace treadwell::report
