#include "core/intake/file_kind.h"

#include "core/intake/logs.h"
#include "core/intake/sample_logs.h"
#include "core/intake/tickets.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace treadwell::intake {

namespace {

constexpr std::array<FileKind, 13> kKinds{{{"tickets", readTickets},
                                           {"tractors", readTractorLog},
                                           {"samples", readSamples},
                                           {"heights", readHeights},
                                           {"layers", readLayers},
                                           {"cores", readCores},
                                           {"sieves", readSieveTests},
                                           {"kernels", readKernelTests},
                                           {"temperatures", readTemperatures},
                                           {"fields", readFieldVisits},
                                           {"chop", readChopSettings},
                                           {"removals", readRemovals},
                                           {"face temperatures", readFaceTemperatures}}};

}  // namespace

std::span<const FileKind> fileKinds() noexcept {
    return kKinds;
}

const FileKind& fileKindCalled(std::string_view name) {
    const auto* found = std::ranges::find(kKinds, name, &FileKind::name);
    if (found == kKinds.end()) throw std::invalid_argument("no kind of list has this name");
    return *found;
}

const FileKind& likeliestKind(std::string_view bytes, const Context& context) {
    const FileKind* likeliest = &kKinds.front();
    std::optional<std::size_t> unread;
    for (const FileKind& kind : kKinds) {
        const auto intake = kind.read(bytes, context);
        if (!intake || (unread && *unread <= intake->ignoredColumns.size())) continue;
        unread = intake->ignoredColumns.size();
        likeliest = &kind;
    }
    return *likeliest;
}

}  // namespace treadwell::intake
