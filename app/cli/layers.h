#pragma once

#include "app/cli/command.h"
#include "core/season/season.h"

namespace treadwell::cli {

/// How a list is answered.
enum class ListForm : std::uint8_t { text, json, csv };

/// The layers of a silo at one moment, bottom up: what lies in each, who packed it and how long.
void printLayers(const season::Season& season, const farm::Silo& silo, Instant at, ListForm form,
                 const Answer& answer);

}  // namespace treadwell::cli
