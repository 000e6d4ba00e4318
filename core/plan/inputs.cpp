#include "core/plan/inputs.h"

#include "core/entries/known_fields.h"

namespace treadwell::plan {

std::string toJson(const Inputs& inputs) {
    entries::PayloadWriter writer;
    Inputs::fields(writer, inputs);
    return writer.text();
}

Result<Inputs> inputsFromJson(std::string_view json) {
    entries::PayloadDocument document;
    const auto object = document.read(json);
    if (!object) return Unexpected{object.error()};
    Inputs inputs;
    entries::KnownFields known{**object};
    Inputs::fields(known, inputs);
    if (auto checked = known.result(); !checked) return Unexpected{checked.error()};
    entries::PayloadReader reader{**object};
    Inputs::fields(reader, inputs);
    if (auto read = reader.result(); !read) return Unexpected{read.error()};
    if (auto valid = validate(inputs); !valid) return Unexpected{valid.error()};
    return inputs;
}

Inputs exampleInputs() {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    Inputs inputs;
    inputs.name = "As last year";
    inputs.silos = {
        {"Long bunker",
         {.width = metres(14), .length = metres(60), .height = metres(3.5), .wallHeight = metres(3.5)}},
        {"Yard pile",
         {.kind = farm::ShapeKind::pile,
          .width = metres(24),
          .length = metres(50),
          .height = metres(3),
          .wallHeight = {},
          .rampEnds = 2}}};
    inputs.grounds = {{"Mill field", AsFedMass::fromTonnes(1400), metres(1500)},
                      {"Far heath", AsFedMass::fromTonnes(1100), metres(5000)}};
    inputs.harvester = {.rate = AsFedRate::fromTonnesPerHour(180), .hourlyCost = CostRate::fromPerHour(380)};
    inputs.haulage.hourlyCost = CostRate::fromPerHour(65);
    inputs.tractors = {{.name = "Auerochse", .mass = MachineMass::fromTonnes(18), .price = {}},
                       {.name = "Bison", .mass = MachineMass::fromTonnes(14), .price = {}},
                       {.name = "Widder", .mass = MachineMass::fromTonnes(10), .price = {}}};
    return inputs;
}

}  // namespace treadwell::plan
