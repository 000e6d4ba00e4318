#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/plots/dry_matter_chart.h"
#include "app/desktop/plots/sieve_chart.h"
#include "core/season/dry_matter.h"
#include "core/season/sampled.h"

namespace treadwell::samples_page {

// From a season at a moment to what the page shows. All are pure; nothing later than `now` is seen.

struct Line {
    QString text;
    bool caution = false;

    friend bool operator==(const Line&, const Line&) = default;
};
using Lines = std::vector<Line>;

/// A load that a sample may have been taken from.
struct LoadToSample {
    entries::EntryId entry;
    std::optional<farm::FieldId> field;
    QString name;  ///< `Tue 10:24 Amsel, 12.4 t`
    friend bool operator==(const LoadToSample&, const LoadToSample&) = default;
};

/// Those of today and of the day before, since an oven takes a night; the newest first.
[[nodiscard]] std::vector<LoadToSample> loadsToSample(const season::Season& season, Instant now,
                                                      const fill::Speech& speech);

struct SamplesView {
    Lines dryMatter;
    Lines chop;
    Lines kernels;
    Lines setting;
    Lines fields;
    plots::DryMatterView chart;
    plots::SieveView sieve;
    samples::MeterBias meter;
};

/// Of the local day of `now`; the chop is that of the last test of the field, or of any where none is named.
[[nodiscard]] SamplesView samplesAt(const season::Season& season, const std::optional<farm::FieldId>& field,
                                    Instant now, const fill::Speech& speech);

/// What should lie on the sieves of this field's crop behind the processor in force.
[[nodiscard]] samples::ChopRanges rangesFor(const season::Season& season,
                                            const std::optional<farm::FieldId>& field, Instant now);

[[nodiscard]] QString processingName(samples::Processing processing);

}  // namespace treadwell::samples_page
