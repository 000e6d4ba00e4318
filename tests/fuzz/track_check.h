#pragma once

#include "core/formats/fix.h"

#include <cmath>
#include <cstdlib>
#include <vector>

namespace fuzz {

inline void require(bool holds) {
    if (!holds) std::abort();
}

/// What a reader handed over.
struct ReadTrack {
    std::vector<treadwell::formats::Fix> fixes;
    std::vector<treadwell::formats::TrackFault> faults;
    bool failed = false;

    /// Lives no longer than this, which must not move.
    treadwell::formats::FixSink sink() {
        return {[this](const auto& fix) { fixes.push_back(fix); },
                [this](const auto& rejected) { faults.push_back(rejected.fault); }};
    }

    void check() const {
        for (const auto& fix : fixes) {
            require(std::abs(fix.latitude_deg) <= 90.0 && std::abs(fix.longitude_deg) <= 180.0);
            if (fix.height) require(std::isfinite(fix.height->si()));
            if (fix.hdop) require(std::isfinite(*fix.hdop));
        }
    }
};

}  // namespace fuzz
