#include "core/intake/sample_logs.h"

#include "core/formats/csv_number.h"
#include "core/intake/codes.h"
#include "core/intake/log_rows.h"

namespace treadwell::intake {

namespace {

Result<AsFedMass> asFedGrams(const Row& row, Column column) {
    return dishKilograms(row, column).map(AsFedMass::fromKilograms);
}
Result<DryMass> dryGrams(const Row& row, Column column) {
    return dishKilograms(row, column).map(DryMass::fromKilograms);
}
Result<Share> share(const Row& row, Column column) {
    return fraction(row, column).map(Share::fromFraction);
}
Result<LocalDay> day(const Row& row, Column column) {
    return row.day(column);
}
/// Millimetres where the header has no unit: nobody writes chop in metres.
Result<Length> chopLength(const Row& row, Column column) {
    if (row.columns().unitOf(column).empty()) return row.number(column).map(Length::fromMillimetres);
    return row.length(column);
}

/// The numbers of `19/8/4`.
Result<std::vector<double>> numbers(const Row& row, Column column) {
    std::vector<double> list;
    std::string_view rest = row.text(column);
    while (true) {
        const std::size_t end = std::min(rest.find('/'), rest.size());
        const auto number = formats::numberFromCell(rest.substr(0, end), row.decimalSign());
        if (!number)
            return Unexpected{row.wrong(column, code::numberUnreadable, std::string{rest.substr(0, end)})};
        list.push_back(*number);
        if (end == rest.size()) return list;
        rest.remove_prefix(end + 1);
    }
}

Result<std::vector<Length>> openings(const Row& row, Column column) {
    if (const auto stack = row.word<samples::SieveStack>(column)) {
        const auto known = samples::openingsOf(*stack);
        return std::vector<Length>{known.begin(), known.end()};
    }
    const double unit = row.columns().unitOf(column) == "cm" ? 0.01 : 0.001;
    return numbers(row, column).map([&](const std::vector<double>& list) {
        std::vector<Length> lengths;
        for (const double each : list) lengths.push_back(Length::fromMetres(each * unit));
        return lengths;
    });
}

Result<std::vector<AsFedMass>> masses(const Row& row, Column column) {
    const double unit = row.columns().unitOf(column) == "kg" ? 1.0 : 0.001;
    return numbers(row, column).map([&](const std::vector<double>& list) {
        std::vector<AsFedMass> read;
        for (const double each : list) read.push_back(AsFedMass::fromKilograms(each * unit));
        return read;
    });
}

Result<std::vector<Share>> parts(const Row& row, Column column) {
    return numbers(row, column).map([&](const std::vector<double>& list) {
        std::vector<Share> read;
        for (const double each : list) read.push_back(Share::fromPercent(each));
        return read;
    });
}

/// What people put into a column of yes and no.
enum class YesNo : std::uint8_t { no, yes };
constexpr std::array<std::string_view, 2> enumTexts(YesNo /*answer*/) noexcept {
    return {"no", "yes"};
}

Result<Proposal> sieveTest(const Row& row) {
    entries::SieveTest test;
    const auto field = row.namedIfAny(Column::field, row.context().fields);
    if (!field) return Unexpected{field.error()};
    test.field = *field;
    auto stack = openings(row, Column::sieves);
    if (!stack) return Unexpected{stack.error()};
    test.openings = *std::move(stack);
    YesNo wet = YesNo::no;
    const auto read = firstFailure(readIfAny(row, Column::sieveMasses, test.masses, masses),
                                   readIfAny(row, Column::sieveParts, test.parts, parts),
                                   readIfAny(row, Column::before, test.before, asFedGrams),
                                   readIfAny(row, Column::topLength, test.topLength, chopLength),
                                   readIfAny(row, Column::rainWet, wet, [](const Row& r, Column column) {
                                       return r.word<YesNo>(column);
                                   }));
    if (!read) return Unexpected{read.error()};
    test.wet = wet == YesNo::yes;
    return proposed(row, std::move(test));
}

Result<Proposal> kernelTest(const Row& row) {
    entries::KernelTest test;
    const auto field = row.namedIfAny(Column::field, row.context().fields);
    if (!field) return Unexpected{field.error()};
    test.field = *field;
    const auto whole = [](const Row& r, Column column) { return r.count(column); };
    const auto read =
        firstFailure(readIfAny(row, Column::material, test.material,
                               [](const Row& r, Column column) { return r.word<samples::Material>(column); }),
                     readIfAny(row, Column::kernels, test.kernels, whole),
                     readIfAny(row, Column::whole, test.whole, dryGrams),
                     readIfAny(row, Column::coarse, test.coarse, dryGrams),
                     readIfAny(row, Column::wholeStarch, test.wholeStarch, share),
                     readIfAny(row, Column::coarseStarch, test.coarseStarch, share));
    if (!read) return Unexpected{read.error()};
    return proposed(row, test);
}

/// When the extremes of a day are known.
Instant lastInstantOf(LocalDay day, const FarmZone& zone) {
    return zone.startOf(dayAfter(day)) - std::chrono::microseconds{1};
}

Result<Proposal> temperatures(const Row& row) {
    entries::DayTemperatures entry;
    const auto date = row.day(Column::date);
    if (!date) return Unexpected{date.error()};
    entry.day = *date;
    const auto low = temperature(row, Column::low);
    if (!low) return Unexpected{low.error()};
    const auto high = temperature(row, Column::high);
    if (!high) return Unexpected{high.error()};
    entry.low = *low;
    entry.high = *high;
    return Proposal{
        entries::Temperatures{{entry}}, lastInstantOf(*date, row.context().zone), {}, row.record().line, {}};
}

/// One entry for all days of the file: known when the last of them was over.
Intake joinedTemperatures(Intake single, const Context& context) {
    if (single.proposals.empty()) return single;
    Proposal all = single.proposals.front();
    auto& days = std::get<entries::Temperatures>(all.body).days;
    for (std::size_t i = 1; i < single.proposals.size(); ++i) {
        days.push_back(std::get<entries::Temperatures>(single.proposals[i].body).days.front());
        all.happened = std::max(all.happened, single.proposals[i].happened);
    }
    single.proposals.clear();
    if (context.known.contains(factHash(all.body, all.happened))) {
        single.alreadyImported += std::exchange(single.used, 0);
    } else {
        single.proposals.push_back(std::move(all));
    }
    return single;
}

Result<Proposal> fieldVisit(const Row& row) {
    entries::FieldObserved visit;
    const auto field = row.named(Column::field, row.context().fields);
    if (!field) return Unexpected{field.error()};
    visit.field = *field;
    if (!row.text(Column::hybrid).empty()) visit.hybrid = std::string{row.text(Column::hybrid)};
    const auto whole = [](const Row& r, Column column) { return r.count(column); };
    const auto read = firstFailure(readIfAny(row, Column::planted, visit.planted, day),
                                   readIfAny(row, Column::silked, visit.silked, day),
                                   readIfAny(row, Column::hybridDays, visit.hybridDays, whole),
                                   readIfAny(row, Column::milkLine, visit.milkLine, share),
                                   readIfAny(row, Column::dryMatter, visit.dryMatter, dryMatter));
    if (!read) return Unexpected{read.error()};
    return proposed(row, std::move(visit));
}

Result<Proposal> chopSetting(const Row& row) {
    entries::ChopSet set;
    const auto read = firstFailure(
        readIfAny(row, Column::cutLength, set.length, chopLength),
        readIfAny(row, Column::rollGap, set.rollGap, chopLength),
        readIfAny(row, Column::cuttingHeight, set.cuttingHeight, length),
        readIfAny(row, Column::processor, set.processor,
                  [](const Row& r, Column column) { return r.word<samples::Processor>(column); }));
    if (!read) return Unexpected{read.error()};
    return proposed(row, set);
}

}  // namespace

Result<Intake> readSieveTests(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date,   Column::time,        Column::field,
                                 Column::sieves, Column::sieveMasses, Column::sieveParts,
                                 Column::before, Column::topLength,   Column::rainWet};
    constexpr std::array kRequired{Column::time, Column::sieves};
    return readList(bytes, context, kWanted, kRequired, sieveTest);
}

Result<Intake> readKernelTests(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date,     Column::time,        Column::field,
                                 Column::material, Column::kernels,     Column::whole,
                                 Column::coarse,   Column::wholeStarch, Column::coarseStarch};
    constexpr std::array kRequired{Column::time};
    return readList(bytes, context, kWanted, kRequired, kernelTest);
}

Result<Intake> readTemperatures(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date, Column::low, Column::high};
    return readList(bytes, context, kWanted, kWanted, temperatures).map([&](Intake single) {
        return joinedTemperatures(std::move(single), context);
    });
}

Result<Intake> readFieldVisits(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date,       Column::time,     Column::field,
                                 Column::planted,    Column::silked,   Column::hybrid,
                                 Column::hybridDays, Column::milkLine, Column::dryMatter};
    constexpr std::array kRequired{Column::time, Column::field};
    return readList(bytes, context, kWanted, kRequired, fieldVisit);
}

Result<Intake> readChopSettings(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date,    Column::time,          Column::cutLength,
                                 Column::rollGap, Column::cuttingHeight, Column::processor};
    constexpr std::array kRequired{Column::time};
    return readList(bytes, context, kWanted, kRequired, chopSetting);
}

}  // namespace treadwell::intake
