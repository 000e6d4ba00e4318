#include "core/intake/logs.h"

#include "core/intake/codes.h"
#include "core/intake/log_rows.h"
#include "core/samples/codes.h"

namespace treadwell::intake {

Result<Proposal> proposed(const Row& row, entries::Body body) {
    return row.moment().map([&](FarmZone::WallInstant moment) {
        Proposal proposal{std::move(body), moment.at, {}, row.record().line, {}};
        if (moment.ambiguous) proposal.notes.push_back({code::clockChanged, {moment.at}});
        return proposal;
    });
}

Result<Intake> readList(std::string_view bytes, const Context& context, std::span<const Column> wanted,
                        std::span<const Column> required, const RowReader& read) {
    return Sheet::read(bytes, context, wanted, required).map([&](const Sheet& sheet) {
        return readRows(sheet, context, read);
    });
}

Result<double> fraction(const Row& row, Column column) {
    return row.number(column).map(
        [&](double value) { return row.columns().unitOf(column) == "percent" ? value / 100.0 : value; });
}

Result<DryMatter> dryMatter(const Row& row, Column column) {
    return fraction(row, column).map(DryMatter::fromFraction);
}

Result<Length> length(const Row& row, Column column) {
    return row.length(column);
}

Result<Temperature> temperature(const Row& row, Column column) {
    const std::string_view unit = row.columns().unitOf(column);
    if (unit != "c" && unit != "f") return Unexpected{row.wrong(column, code::temperatureUnitMissing)};
    return row.number(column).map([&](double value) {
        return unit == "f" ? Temperature::fromFahrenheit(value) : Temperature::fromCelsius(value);
    });
}

Result<double> dishKilograms(const Row& row, Column column) {
    return row.number(column).map(
        [&](double value) { return row.columns().unitOf(column) == "kg" ? value : value / 1000.0; });
}

namespace {

Result<Proposal> tractorWork(const Row& row) {
    entries::TractorWork work;
    const auto tractor = row.named(Column::tractor, row.context().tractors);
    if (!tractor) return Unexpected{tractor.error()};
    const auto activity = row.word<farm::Activity>(Column::activity);
    if (!activity) return Unexpected{activity.error()};
    work.tractor = *tractor;
    work.activity = *activity;
    if (work.activity != farm::Activity::away) {
        const auto silo = row.silo();
        if (!silo) return Unexpected{silo.error()};
        work.silo = *silo;
    }
    // Only a tractor that packs has a share of its time for it; the others' cell is not needed.
    if (work.activity == farm::Activity::packing && !row.text(Column::share).empty()) {
        const auto share = fraction(row, Column::share);
        if (!share) return Unexpected{share.error()};
        work.packingShare = Share::fromFraction(*share);
    }
    return proposed(row, work);
}

Result<void> readDish(const Row& row, entries::DryMatterSample& sample) {
    const auto wet = dishKilograms(row, Column::wet);
    if (!wet) return Unexpected{wet.error()};
    const auto dry = dishKilograms(row, Column::dry);
    if (!dry) return Unexpected{dry.error()};
    if (!(*wet > 0 && *dry > 0 && *dry < *wet)) {
        return Unexpected{row.wrong(Column::dry, code::dishImpossible, std::string{row.text(Column::wet)},
                                    std::string{row.text(Column::dry)})};
    }
    sample.wet = AsFedMass::fromKilograms(*wet);
    sample.dry = DryMass::fromKilograms(*dry);
    sample.dryMatter = DryMatter::fromFraction(*dry / *wet);
    return {};
}

Result<Proposal> drySample(const Row& row) {
    entries::DryMatterSample sample;
    const auto method = row.word<entries::DryMatterMethod>(Column::method);
    if (!method) return Unexpected{method.error()};
    sample.method = *method;
    const auto field = row.namedIfAny(Column::field, row.context().fields);
    if (!field) return Unexpected{field.error()};
    sample.field = *field;
    if (!row.text(Column::wet).empty() || !row.text(Column::dry).empty()) {
        if (const auto dish = readDish(row, sample); !dish) return Unexpected{dish.error()};
    }
    if (!sample.wet || !row.text(Column::dryMatter).empty()) {
        const auto given = fraction(row, Column::dryMatter);
        if (!given) return Unexpected{given.error()};
        sample.dryMatter = DryMatter::fromFraction(*given);  // validation holds it against the dish
    }
    return proposed(row, sample);
}

Result<Proposal> heightReading(const Row& row) {
    entries::HeightReading reading;
    const auto silo = row.silo();
    if (!silo) return Unexpected{silo.error()};
    for (const auto& [column, target] :
         {std::pair{Column::along, &reading.along}, std::pair{Column::across, &reading.across},
          std::pair{Column::height, &reading.height}}) {
        const auto length = row.length(column);
        if (!length) return Unexpected{length.error()};
        *target = *length;
    }
    return proposed(row, entries::HeightSurvey{*silo, {reading}});
}

// Readings of one time and silo belong together; a survey that is known as a whole adds nothing.
Intake joinedSurveys(Intake single, const Context& context) {
    std::map<std::pair<Instant, farm::SiloId>, std::size_t> places;
    std::vector<Proposal> surveys;
    for (Proposal& proposal : single.proposals) {
        auto& survey = std::get<entries::HeightSurvey>(proposal.body);
        const auto [place, isNew] = places.try_emplace({proposal.happened, survey.silo}, surveys.size());
        if (isNew) {
            surveys.push_back(std::move(proposal));
        } else {
            auto& readings = std::get<entries::HeightSurvey>(surveys[place->second].body).readings;
            readings.push_back(survey.readings.front());
        }
    }
    single.proposals.clear();
    for (Proposal& survey : surveys) {
        if (context.known.contains(factHash(survey.body, survey.happened))) {
            const auto rows =
                static_cast<std::int64_t>(std::get<entries::HeightSurvey>(survey.body).readings.size());
            single.used -= rows;
            single.alreadyImported += rows;
        } else {
            single.proposals.push_back(std::move(survey));
        }
    }
    return single;
}

Result<Proposal> layerSeen(const Row& row) {
    entries::LayerSeen layer;
    const auto silo = row.silo();
    if (!silo) return Unexpected{silo.error()};
    const auto thickness = row.length(Column::thickness);
    if (!thickness) return Unexpected{thickness.error()};
    layer.silo = *silo;
    layer.thickness = *thickness;
    if (!row.text(Column::method).empty()) {
        const auto method = row.word<entries::LayerMethod>(Column::method);
        if (!method) return Unexpected{method.error()};
        layer.method = *method;
    }
    return proposed(row, layer);
}

}  // namespace

Result<Intake> readTractorLog(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date,     Column::time,  Column::tractor,
                                 Column::activity, Column::share, Column::silo};
    constexpr std::array kRequired{Column::time, Column::tractor, Column::activity};
    return readList(bytes, context, kWanted, kRequired, tractorWork);
}

Result<Intake> readSamples(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date, Column::time,      Column::field, Column::wet,
                                 Column::dry,  Column::dryMatter, Column::method};
    constexpr std::array kRequired{Column::time, Column::method};
    return readList(bytes, context, kWanted, kRequired, drySample);
}

Result<Intake> readHeights(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date,  Column::time,   Column::silo,
                                 Column::along, Column::across, Column::height};
    constexpr std::array kRequired{Column::time, Column::along, Column::across, Column::height};
    return readList(bytes, context, kWanted, kRequired, heightReading).map([&](Intake single) {
        return joinedSurveys(std::move(single), context);
    });
}

Result<Intake> readLayers(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date, Column::time, Column::silo, Column::thickness, Column::method};
    constexpr std::array kRequired{Column::time, Column::thickness};
    return readList(bytes, context, kWanted, kRequired, layerSeen);
}

}  // namespace treadwell::intake
