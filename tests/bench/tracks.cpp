// Reading tracks against what their bytes cost anyhow: NMEA beside a look at every byte for line ends (budget
// 15 times), GPX beside a parser of expat that hands nothing over (3 times), and ten million fixes counted on
// a grid, whose memory may grow by 16 MiB.
#include "core/formats/gpx.h"
#include "core/formats/nmea.h"
#include "core/passes/driven.h"
#include "core/passes/track_file.h"

#include <benchmark/benchmark.h>
#include <expat.h>

#include <cstdio>
#include <fstream>

namespace {

using namespace treadwell;

/// A receiver's GGA and RMC of one second, a tractor going to and fro over 30 m.
std::string epoch(std::int64_t second) {
    const auto sentence = [](const char* body) {
        unsigned sum = 0;
        for (const char* c = body; *c != '\0'; ++c) sum ^= static_cast<unsigned char>(*c);
        char whole[256];
        std::snprintf(whole, sizeof whole, "$%s*%02X\r\n", body, sum);
        return std::string{whole};
    };
    const auto part = static_cast<int>(second % 27);
    const int day = static_cast<int>(second / 86'400), at = static_cast<int>(second % 86'400);
    char gga[192], rmc[192];
    std::snprintf(gga, sizeof gga,
                  "GNGGA,%02d%02d%02d.00,4331.%05d,N,08930.55012,W,4,17,0.6,281.432,M,-34.118,M,1.0,0000",
                  at / 3600, at / 60 % 60, at % 60, 21468 + part * 60);
    std::snprintf(rmc, sizeof rmc,
                  "GNRMC,%02d%02d%02d.00,A,4331.%05d,N,08930.55012,W,2.16,271.5,%02d%02d%02d,,,R", at / 3600,
                  at / 60 % 60, at % 60, 21468 + part * 60, day % 28 + 1, day / 28 % 12 + 1, 20);
    return sentence(gga) + sentence(rmc);
}

std::string nmeaOf(std::int64_t seconds) {
    std::string text;
    for (std::int64_t second = 0; second < seconds; ++second) text += epoch(second);
    return text;
}

std::string gpxOf(int points) {
    std::string text = "<gpx version=\"1.1\" creator=\"bench\"><trk><trkseg>\n";
    for (int i = 0; i < points; ++i) {
        char point[256];
        std::snprintf(point, sizeof point,
                      "<trkpt lat=\"43.5202%05d\" lon=\"-89.509168700\"><ele>281.4</ele>"
                      "<time>2026-09-15T%02d:%02d:%02dZ</time><sat>17</sat><hdop>0.6</hdop></trkpt>\n",
                      i % 100'000, i / 3600 % 24, i / 60 % 60, i % 60);
        text += point;
    }
    return text + "</trkseg></trk></gpx>\n";
}

void count(benchmark::State& state, const std::string& text) {
    state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(text.size()));
}

void newlineScan(benchmark::State& state) {
    const std::string text = nmeaOf(100'000);
    for (auto _ : state) {
        std::int64_t lines = 0;
        for (const char c : text) lines += c == '\n' ? 1 : 0;
        benchmark::DoNotOptimize(lines);
    }
    count(state, text);
}
BENCHMARK(newlineScan)->Unit(benchmark::kMillisecond);

void nmea(benchmark::State& state) {
    const std::string text = nmeaOf(100'000);
    for (auto _ : state) {
        std::int64_t fixes = 0;
        formats::NmeaReader reader{{[&](const formats::Fix&) { ++fixes; }, [](const formats::Rejected&) {}}};
        reader.take(text);
        reader.finish();
        benchmark::DoNotOptimize(fixes);
    }
    count(state, text);
}
BENCHMARK(nmea)->Unit(benchmark::kMillisecond);

void bareExpat(benchmark::State& state) {
    const std::string text = gpxOf(100'000);
    for (auto _ : state) {
        XML_Parser parser = XML_ParserCreate("UTF-8");
        XML_SetElementHandler(
            parser, [](void*, const XML_Char*, const XML_Char**) {}, [](void*, const XML_Char*) {});
        XML_SetCharacterDataHandler(parser, [](void*, const XML_Char*, int) {});
        const auto status = XML_Parse(parser, text.data(), static_cast<int>(text.size()), 1);
        benchmark::DoNotOptimize(status);
        XML_ParserFree(parser);
    }
    count(state, text);
}
BENCHMARK(bareExpat)->Unit(benchmark::kMillisecond);

void gpx(benchmark::State& state) {
    const std::string text = gpxOf(100'000);
    for (auto _ : state) {
        std::int64_t fixes = 0;
        formats::GpxReader reader{{[&](const formats::Fix&) { ++fixes; }, [](const formats::Rejected&) {}}};
        benchmark::DoNotOptimize(reader.take(text).has_value());
        benchmark::DoNotOptimize(reader.finish().has_value());
        benchmark::DoNotOptimize(fixes);
    }
    count(state, text);
}
BENCHMARK(gpx)->Unit(benchmark::kMillisecond);

/// A file that is made while it is read, so that it takes no memory of its own.
class Receiver final : public std::streambuf {
  public:
    explicit Receiver(std::int64_t seconds) : m_left{seconds} {}

  private:
    int_type underflow() override {
        if (m_left == 0) return traits_type::eof();
        m_text.clear();
        for (int i = 0; i < 400 && m_left > 0; ++i, --m_left) m_text += epoch(m_second++);
        setg(m_text.data(), m_text.data(), m_text.data() + m_text.size());
        return traits_type::to_int_type(m_text.front());
    }
    std::int64_t m_left;
    std::int64_t m_second = 0;
    std::string m_text;
};

double peakMebibytes() {
    std::ifstream status{"/proc/self/status"};
    for (std::string line; std::getline(status, line);) {
        if (line.starts_with("VmHWM:")) return std::stod(line.substr(6)) / 1024.0;
    }
    return 0.0;
}

void tenMillionFixes(benchmark::State& state) {
    for (auto _ : state) {
        auto grid = passes::DrivenGrid::make({Length::fromMetres(60), Length::fromMetres(20)},
                                             {43.5202, -89.5092, 0.0, {}},
                                             {{1, instantFromIso8601("2020-01-01T00:00:00Z").value(), 0, 60}})
                        .value();
        grid.begin({MachineMass::fromTonnes(12)}, 0);
        // The peak anew from here: that of the benchmarks before would hide what grows.
        if (!(std::ofstream{"/proc/self/clear_refs"} << "5" << std::flush))
            state.SkipWithError("the peak cannot be reset");
        const double before = peakMebibytes();
        Receiver receiver{state.range(0)};
        std::istream in{&receiver};
        const auto read = passes::readTrack(in, [&](const formats::Fix& fix) { grid.take(fix); });
        if (!read || grid.counts().fixes != state.range(0)) state.SkipWithError("fixes are missing");
        const double grown = peakMebibytes() - before;
        state.counters["grown_MiB"] = grown;
        if (grown > 16.0) state.SkipWithError("memory grew by more than 16 MiB");
    }
}
BENCHMARK(tenMillionFixes)->Arg(10'000'000)->Iterations(1)->Unit(benchmark::kMillisecond);

}  // namespace
