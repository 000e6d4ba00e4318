#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>
#include <set>

namespace treadwell::review {

namespace {

/// Collects what is still open about a day.
class Questions final {
  public:
    Questions(const DayView& view, bool closes) : m_view{view}, m_closes{closes} {
        for (const season::LoadTipped& load : view.day.loads) {
            if (load.at <= view.until) m_loads.push_back(&load);
        }
    }

    std::vector<OpenPoint> ask() {
        askAboutLoads();
        askAboutSamples();
        askAboutLayers();
        askAboutHeights();
        askAboutTractors();
        askAboutShifts();
        askAboutEntries();
        return std::move(m_asked);
    }

  private:
    template <class... Arguments>
    void ask(Code code, Arguments... arguments) {
        askAbout({}, code, std::move(arguments)...);
    }
    template <class... Arguments>
    void askAbout(Subject subject, Code code, Arguments... arguments) {
        OpenPoint point{{code, {}}, subject};
        (point.question.arguments.emplace_back(std::move(arguments)), ...);
        m_asked.push_back(std::move(point));
    }

    template <class Test>
    void askOfLoads(Code code, const Test& test) {
        const auto count = std::count_if(m_loads.begin(), m_loads.end(), test);
        if (count > 0) ask(code, std::int64_t{count}, static_cast<std::int64_t>(m_loads.size()));
    }

    void askAboutLoads() {
        askOfLoads(code::questionNotWeighed, [](const season::LoadTipped* load) {
            return load->load.source != entries::MassSource::weighed;
        });
        askOfLoads(code::questionNoField, [](const season::LoadTipped* load) { return !load->load.field; });
        askOfLoads(code::questionDryMatterAssumed, [](const season::LoadTipped* load) {
            return load->basis == season::DryMatterBasis::assumed;
        });
    }

    /// Gaps between samples, from the first load on, longer than the site asks for.
    void askAboutSamples() {
        if (m_loads.empty()) return;
        const Instant first = m_loads.front()->at;
        const Instant last = m_loads.back()->at;
        Seconds longest{};
        Instant before = first;
        for (const season::Sample& sample : m_view.day.samples) {
            if (sample.at > last) break;
            longest = std::max<Seconds>(longest, sample.at - before);
            before = std::max(before, sample.at);
        }
        longest = std::max<Seconds>(longest, last - before);
        const Seconds wanted = m_view.day.farm().rules.sampleInterval;
        if (longest > wanted) {
            ask(code::questionSampleOverdue, durationAmount(longest), durationAmount(wanted));
        }
    }

    void askAboutLayers() {
        std::set<farm::SiloId> silos;
        for (const season::LoadTipped* load : m_loads) silos.insert(load->load.silo);
        for (const season::LayerNote& layer : m_view.day.layers) {
            if (layer.at <= m_view.until) silos.erase(layer.what.silo);
        }
        for (const farm::SiloId& silo : silos) {
            askAbout(silo, code::questionLayerNotSeen, nameText(m_view.day.farm().silos, silo));
        }
    }

    /// Asked once the day is over: they are read in the evening.
    void askAboutHeights() {
        if (!m_closes) return;
        std::set<farm::SiloId> silos;
        for (const season::LoadTipped* load : m_loads) silos.insert(load->load.silo);
        for (const season::Survey& survey : m_view.day.surveys) {
            if (survey.at <= m_view.until) silos.erase(survey.what.silo);
        }
        for (const farm::SiloId& silo : silos) {
            askAbout(silo, code::questionHeightsNotRead, nameText(m_view.day.farm().silos, silo));
        }
    }

    void askAboutTractors() {
        std::set<farm::TractorId> atWork;
        for (const season::WorkSpan& span : m_view.day.work) {
            if (span.activity == farm::Activity::away || span.begin > m_view.until) continue;
            atWork.insert(span.tractor);
            const bool over = span.end && *span.end <= m_view.until;
            if (!over && m_closes) {
                askAbout(span.tractor, code::questionStillAtWork,
                         nameText(m_view.day.farm().tractors, span.tractor));
            }
        }
        const auto& tractors = m_view.day.farm().tractors;
        for (const farm::TractorId& id : atWork) {
            const auto found = tractors.find(id);
            if (found == tractors.end()) continue;
            const farm::Tractor& tractor = found->second;
            if (!tractor.massKnown)
                askAbout(id, code::questionMassAssumed, tractor.name, tractor.mass.amount());
            if (!tractor.hourlyCost) askAbout(id, code::questionNoCost, tractor.name);
        }
    }

    void askAboutShifts() {
        for (const auto& ended : m_view.day.shiftsNeverBegun) {
            if (ended.at <= m_view.until) ask(code::questionShiftNotBegun, ended.at);
        }
        if (!m_closes) return;
        for (const season::ShiftSpan& shift : m_view.day.shifts) {
            if (shift.begin > m_view.until || (shift.end && *shift.end <= m_view.until)) continue;
            askAbout(shift.person, code::questionStillOnShift, shift.onShiftSince);
        }
    }

    void askAboutEntries() {
        const auto& rows = m_view.day.records.of<entries::RowSetAside>();
        const auto aside =
            std::count_if(rows.begin(), rows.end(), [&](const auto& row) { return row.at <= m_view.until; });
        if (aside > 0) ask(code::questionRowsSetAside, std::int64_t{aside});
        if (m_view.day.unknownKinds > 0) ask(code::questionUnknownKinds, m_view.day.unknownKinds);
        const auto waiting = static_cast<std::int64_t>(m_view.season.waiting().size());
        if (waiting > 0) ask(code::questionWaiting, waiting);
    }

    const DayView& m_view;
    bool m_closes;  ///< what is to be over by then is asked for
    std::vector<const season::LoadTipped*> m_loads;
    std::vector<OpenPoint> m_asked;
};

}  // namespace

std::vector<OpenPoint> questionsBeforeClosing(const DayView& view) {
    return Questions{view, true}.ask();
}

std::int64_t openQuestions(const DayView& view) {
    return static_cast<std::int64_t>(Questions{view, view.day.closed.has_value()}.ask().size());
}

Section questionsOf(const DayView& view) {
    Section section{"questions", code::reviewQuestions, {}};
    for (OpenPoint& point : Questions{view, view.day.closed.has_value()}.ask())
        section.blocks.emplace_back(std::move(point.question));
    if (section.blocks.empty()) section.blocks.emplace_back(Message{code::reviewNoQuestions, {}});
    return section;
}

}  // namespace treadwell::review
