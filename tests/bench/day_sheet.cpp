// A day's sheet from its season to its PDF, for 100 and 1,000 loads. Budgets: 250 ms and 0.8 s. Quoted beside
// the bare setting of as many cells on a paper of the same sort.
#include "core/review/day_sheet.h"

#include "app/desktop/report/pdf_report.h"
#include "app/words/document_table.h"
#include "tests/support/season_maker.h"

#include <benchmark/benchmark.h>

#include <QBuffer>
#include <QGuiApplication>
#include <QPainter>
#include <QPdfWriter>

namespace {

using namespace treadwell;
using namespace testing_support;

season::Season dayOf(int loads) {
    SeasonMaker maker;
    const Instant begin = at("2026-02-10T06:00:00Z");
    maker.add(entries::SeasonStarted{"Lindenhof", "UTC"}, begin);
    maker.add(entries::SiloDefined{someSilo()}, begin);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, begin);
    for (std::uint8_t i = 1; i <= 40; ++i) {
        maker.add(
            entries::TruckDefined{
                {idOf<farm::TruckTag>(i), "Truck " + std::to_string(i), AsFedMass::fromTonnes(12), {}}},
            begin);
    }
    maker.add(someWork(1, farm::Activity::packing), begin);
    for (int i = 0; i < loads; ++i) {
        entries::Load load = someLoad(12);
        load.truck = idOf<farm::TruckTag>(static_cast<std::uint8_t>(1 + i % 40));
        maker.add(load, begin + i * std::chrono::microseconds{std::chrono::hours{14}} / loads);
    }
    return season::Season::fold(maker.entries);
}

review::Document sheetOf(const season::Season& season) {
    return review::daySheet(season, season.days().back()->date, at("2026-02-10T21:00:00Z")).value();
}

void sheetToPdf(benchmark::State& state) {
    const season::Season season = dayOf(static_cast<int>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(report::pdfOf(sheetOf(season), {}, report::Paper::a4));
}
BENCHMARK(sheetToPdf)->Arg(100)->Arg(1'000)->Unit(benchmark::kMillisecond);

void bareCells(benchmark::State& state) {
    std::vector<QString> cells;
    for (const review::Section& section : sheetOf(dayOf(static_cast<int>(state.range(0)))).sections) {
        for (const review::Block& block : section.blocks) {
            const auto* table = std::get_if<review::Table>(&block);
            if (table == nullptr) continue;
            for (const auto& row : words::inWords(*table, {}).rows) {
                for (const std::string& cell : row) cells.push_back(QString::fromStdString(cell));
            }
        }
    }
    for (auto _ : state) {
        QByteArray bytes;
        QBuffer buffer{&bytes};
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer{&buffer};
        writer.setResolution(1200);
        QPainter painter{&writer};
        for (std::size_t i = 0; i < cells.size(); ++i)
            painter.drawText(QRectF{0, static_cast<double>(i % 400) * 30.0, 2'000, 300}, Qt::AlignLeft,
                             cells[i]);
        painter.end();
        benchmark::DoNotOptimize(bytes);
    }
}
BENCHMARK(bareCells)->Arg(100)->Arg(1'000)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application{argc, argv};
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
