#include "core/plan/sealing_list.h"

#include "core/plan/codes.h"

#include <algorithm>

namespace treadwell::plan {

namespace {

struct Done {
    Length begin;
    Length end;
    Instant at;
};

constexpr entries::CoverStep coverStepOf(SealStep step) {
    switch (step) {
        case SealStep::wallSheets:
            return entries::CoverStep::wallSheets;
        case SealStep::barrierFilm:
            return entries::CoverStep::barrierFilm;
        case SealStep::weights:
            return entries::CoverStep::weights;
        case SealStep::edgesSealed:
            return entries::CoverStep::edgesSealed;
        default:
            return entries::CoverStep::sheet;
    }
}

template <class Kind, class Meant>
void collect(const season::Day& day, Instant now, Length length, const Meant& meant, std::vector<Done>& all) {
    for (const season::Dated<Kind>& record : day.records.of<Kind>()) {
        if (record.at > now || !meant(record.what)) continue;
        const entries::Stretch& stretch = record.what.stretch;
        all.push_back(
            {stretch.begin.value_or(Length{}), std::min(length, stretch.end.value_or(length)), record.at});
    }
}

/// Part of the length that the stretches cover together.
Share covered(std::vector<Done> all, Length length) {
    std::sort(all.begin(), all.end(), [](const Done& a, const Done& b) { return a.begin < b.begin; });
    Length reached, sum;
    for (const Done& done : all) {
        const Length from = std::max(reached, done.begin);
        if (done.end > from) sum += done.end - from;
        reached = std::max(reached, done.end);
    }
    return Share::fromFraction(std::min(1.0, sum / length));
}

void markDone(SealTask& task, const season::Season& season, Instant now) {
    const Length length = task.length;
    std::vector<Done> all;
    for (const auto& day : season.days()) {
        if (task.step == SealStep::treatment) {
            collect<entries::SurfaceTreatment>(
                *day, now, length, [&](const auto& record) { return record.silo == *task.id; }, all);
        } else {
            collect<entries::Cover>(
                *day, now, length,
                [&](const auto& record) {
                    return record.silo == *task.id && record.step == coverStepOf(task.step);
                },
                all);
        }
    }
    task.done = covered(all, length);
    for (const Done& done : all) task.at = std::max(task.at.value_or(done.at), done.at);
}

std::vector<SealTask> tasksOf(const Seal& seal, LocalDay begun) {
    std::vector<SealTask> tasks;
    const auto add = [&](SealStep step, LocalDay due) -> SealTask& {
        SealTask& task = tasks.emplace_back();
        task.silo = seal.silo;
        task.step = step;
        task.due = due;
        return task;
    };
    if (seal.sideSheets > Area{}) add(SealStep::wallSheets, begun).area = seal.sideSheets;
    if (seal.treatment_L > 0.0) add(SealStep::treatment, seal.full).litres = seal.treatment_L;
    add(SealStep::barrierFilm, seal.full).area = seal.sheets.area;
    add(SealStep::sheet, seal.full).area = seal.sheets.area;
    add(SealStep::weights, seal.full).tyres = seal.tyres;
    add(SealStep::edgesSealed, seal.full);
    return tasks;
}

}  // namespace

std::vector<SealTask> sealingList(const std::vector<Seal>& seals, LocalDay begins,
                                  const season::Season& season, Instant now) {
    std::vector<SealTask> all;
    LocalDay begun = begins;
    for (const Seal& seal : seals) {
        const auto& silos = season.farm().silos;
        const auto known =
            std::ranges::find_if(silos, [&](const auto& silo) { return silo.second.name == seal.silo; });
        for (SealTask& task : tasksOf(seal, begun)) {
            if (known != silos.end()) {
                task.id = known->first;
                task.length = known->second.length;
                markDone(task, season, now);
            }
            all.push_back(std::move(task));
        }
        begun = seal.full;
    }
    return all;
}

Result<entries::Body> doneEntry(const SealTask& task, const entries::Stretch& stretch,
                                const std::string& product) {
    if (!task.id) return fail(code::planSiloUnknown, "silo", task.silo);
    entries::Body body;
    if (task.step == SealStep::treatment) {
        entries::SurfaceTreatment treatment;
        treatment.silo = *task.id;
        treatment.dose.product = product;
        const Length covered = stretch.end.value_or(task.length) - stretch.begin.value_or(Length{});
        treatment.dose.volume =
            ProductVolume::fromLitres(task.litres.value_or(0.0) * (covered / task.length));
        treatment.stretch = stretch;
        body = treatment;
    } else {
        body = entries::Cover{*task.id, coverStepOf(task.step), stretch};
    }
    if (auto valid = entries::validate(body); !valid) return Unexpected{valid.error()};
    return body;
}

}  // namespace treadwell::plan
