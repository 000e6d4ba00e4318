#include "tests/app/words/sample_arguments.h"

#include "core/quantity/relations.h"
#include "core/quantity/weather.h"

#include <stdexcept>

namespace treadwell::words {

namespace {

const Argument kText = std::string{"14x"};
const Argument kOther = std::string{"t, lb"};
const Argument kCount = std::int64_t{2};
const Argument kMore = std::int64_t{3};
const Argument kNumber = 1.5;
const Argument kDensity = DryDensity::fromSi(236).amount();
const Argument kDenser = DryDensity::fromSi(262).amount();
const Argument kDryMatter = DryMatter::fromPercent(35).amount();
const Argument kDrier = DryMatter::fromPercent(45).amount();
const Argument kLayer = Length::fromCentimetres(15).layerAmount();
const Argument kThicker = Length::fromCentimetres(50).layerAmount();
const Argument kDepth = Length::fromMetres(3).amount();
const Argument kHeavy = AsFedMass::fromTonnes(12.4).amount();
const Argument kHeavier = AsFedMass::fromTonnes(26.1).amount();
const Argument kMachine = MachineMass::fromTonnes(10).amount();
const Argument kTime = PackingIntensity::fromMinutesPerTonne(0.75).amount();
const Argument kMinutes = durationAmount(std::chrono::minutes{90});
const Argument kFewerMinutes = durationAmount(std::chrono::minutes{60});
const Argument kShallow = Length::fromMetres(1).amount();
const Argument kSlope = Slope::fromRunPerRise(3).amount();
const Argument kSteeper = Slope::fromRunPerRise(2).amount();
const Argument kShare = Share::fromPercent(50).amount();
const Argument kRate = AsFedRate::fromTonnesPerHour(90).amount();
const Argument kFaster = AsFedRate::fromTonnesPerHour(200).amount();
const Argument kCost = CostRate::fromPerHour(80).amount();
const Argument kBetter = Chance::fromFraction(0.61).amount();
const Argument kDensest = DryDensity::fromSi(480).amount();
const Argument kDryTonnes = DryMass::fromTonnes(430).amount();
const Argument kRoom = Volume::fromCubicMetres(1640).amount();
const Argument kMet = std::vector{Code::yardstickFrance, Code::yardstickBrittany};
const Argument kNotMet = std::vector{Code::yardstickPasses};
const Argument kGrams = Amount{Dimension::dishMass, 0.0372};
const Argument kFewerGrams = Amount{Dimension::dishMass, 0.0351};
const Argument kChop = Length::fromMillimetres(8).chopAmount();
const Argument kLongChop = Length::fromMillimetres(19).chopAmount();
const Argument kWarm = Temperature::fromCelsius(24).amount();
const Argument kCold = Temperature::fromCelsius(11).amount();
const Argument kWarmth = DegreeDays::fromFahrenheit(750).amount();
const Argument kChance = Chance::fromFraction(0.36).amount();

}  // namespace

std::vector<Argument> sampleArguments(Code code) {
    // A line a code, so that the table can be read.
    // clang-format off
    switch (code) {
        // base, quantity
        case Code::valueMissing: return {};
        case Code::valueNotFinite: return {};
        case Code::valueOutOfRange: return {kThicker, kLayer, kLayer};
        case Code::textEmpty: return {};
        case Code::textNotNumber: return {kText};
        case Code::unitMissing: return {kText, kOther};
        case Code::unitUnknown: return {kText, kOther};
        case Code::timeUnreadable: return {kText};
        case Code::zoneUnknown: return {kText};
        case Code::fileUnreadable: return {kText, kOther};
        case Code::fileUnwritable: return {kText, kOther};
        // farm
        case Code::nameEmpty: return {};
        case Code::crownTooWide: return {kLayer, kDepth};
        case Code::rampLongerThanSilo: return {kDepth, kDepth};
        // entries
        case Code::payloadUnreadable: return {kText};
        case Code::payloadFieldMissing: return {};
        case Code::payloadFieldWrong: return {};
        case Code::targetMissing: return {kText};
        case Code::readingsMissing: return {};
        case Code::spanEmpty: return {Argument{Instant{}}};
        case Code::coreHeightUnclear: return {};
        case Code::coreDensityUnclear: return {};
        case Code::dishDisagrees: return {kDryMatter, kDrier};
        // journal
        case Code::journalExists: return {kText};
        case Code::journalForeign: return {kText};
        case Code::journalDamaged: return {kText, kOther};
        case Code::journalNewer: return {kText, kCount, kMore};
        case Code::journalTooNew: return {kText, kCount, kMore};
        case Code::journalHeld: return {kText, kCount, kOther, Argument{Instant{}}};
        case Code::journalMediumReadOnly: return {kText};
        case Code::journalNeedsFolder: return {kText};
        case Code::journalReadOnly: return {kText};
        case Code::journalWriteFailed: return {kText, kOther};
        case Code::chainBroken: return {kText, kCount};
        case Code::entryOutOfOrder: return {kText, kCount};
        // session
        case Code::seasonEmpty: return {kText};
        case Code::entryVoided: return {kText};
        case Code::correctionChangesKind: return {kText, kOther};
        case Code::deviceRenewed: return {kText};
        case Code::entryUnreadable: return {kText, kCount};
        case Code::entryKeptAside: return {kText, kOther};
        case Code::keptEntriesRecorded: return {kCount};
        case Code::keptEntriesUnreadable: return {kText, kCount};
        // formats
        case Code::textIsUtf16: return {};
        case Code::headerMissing: return {};
        case Code::quoteOpen: return {};
        case Code::decimalAmbiguous: return {kText};
        case Code::decimalMixed: return {kText, kOther};
        case Code::frameUnreadable: return {kText};
        case Code::frameCut: return {kText};
        case Code::frameTooLong: return {kCount};
        case Code::frameSumWrong: return {kText};
        // crop
        case Code::densityImpossible: return {kDenser, kDryMatter, kDensity};
        // samples
        case Code::weighingGained: return {kGrams, kFewerGrams};
        case Code::dryMatterSlightlyWet: return {kDryMatter, kDryMatter, kDrier};
        case Code::dryMatterWet: return {kDryMatter, kDryMatter, kDrier};
        case Code::dryMatterDry: return {kDrier, kDryMatter, kDryMatter};
        case Code::dryMatterVeryDry: return {kDrier, kDryMatter, kDryMatter};
        case Code::sievesNotInOrder: return {kChop, kLongChop};
        case Code::sieveCountWrong: return {kCount, kMore};
        case Code::sieveEmpty: return {kChop};
        case Code::panEmpty: return {};
        case Code::sieveNothing: return {};
        case Code::sieveLost: return {kShare, kShare};
        case Code::sieveGained: return {kFewerGrams, kGrams};
        case Code::sieveWet: return {};
        case Code::percentSum: return {kNumber};
        case Code::sieveStacksDiffer: return {};
        case Code::topLengthMissing: return {kChop};
        case Code::sievesTooFew: return {kCount};
        case Code::screenMissing: return {kChop};
        case Code::chopWithin: return {};
        case Code::chopFine: return {kShare, kChop, kShare};
        case Code::chopDusty: return {kShare, kShare};
        case Code::chopCoarse: return {kShare, kLongChop, kShare};
        case Code::chopUneven: return {};
        case Code::chopLengthen: return {kChop, kLongChop};
        case Code::chopShorten: return {kLongChop, kChop};
        case Code::chopCheckKnives: return {};
        case Code::starchImpossible: return {kShare, kShare};
        case Code::kernelsOptimal: return {};
        case Code::kernelsFermented: return {};
        case Code::kernelsCloseRolls: return {};
        case Code::kernelsNarrowGap: return {kLongChop, kChop};
        case Code::kernelsCheckRolls: return {kChop};
        case Code::temperaturesSwapped: return {kWarm, kCold};
        case Code::dayTwice: return {kText};
        case Code::daysReversed: return {kText, kOther};
        case Code::warmthNotReached: return {kWarmth, kCount};
        case Code::harvestTooLong: return {kCount};
        case Code::orderWrong: return {kCount};
        // density
        case Code::tooFewLoads: return {kCount, kMore};
        case Code::noLoads: return {};
        case Code::siloUnknown: return {};
        case Code::packingTimesMismatch: return {kCount, kMore};
        case Code::heightOutsideSilo: return {kDepth, kShallow};
        case Code::heightAboveSilo: return {kDepth, kShallow};
        case Code::heightsWithoutCrop: return {};
        case Code::surveyWithoutLoads: return {};
        case Code::surveyWithoutRoom: return {kHeavy};
        case Code::surveyImpossible: return {kDenser, kDryTonnes, kRoom, kDensity, kDensest};
        case Code::layerAssumed: return {kLayer};
        case Code::layerHeldToRange: return {kThicker, kLayer};
        case Code::dryMatterOutsideCrop: return {kDryMatter, kDrier, kDrier};
        case Code::noMachines: return {};
        case Code::noPackingTime: return {};
        case Code::machineAddsNothing: return {kCount, kMachine};
        case Code::saturated: return {kDensity};
        case Code::saturationUnknown: return {kDryMatter, kDrier, kDrier};
        case Code::targetAboveSaturation: return {kDenser, kDensity};
        case Code::densityOutsideSurvey: return {kDensity, kDenser, kDenser};
        case Code::yardsticksDisagree: return {kMet, kNotMet};
        case Code::yardstickNorthAmerica: return {};
        case Code::yardstickThirdOfHourlyMass: return {};
        case Code::yardstickQuarterOfHourlyMass: return {};
        case Code::yardstickFrance: return {};
        case Code::yardstickBrittany: return {};
        case Code::yardstickPasses: return {};
        case Code::yardstickTarget: return {};
        case Code::workingLayer: return {kLayer};
        case Code::workingPackingTime: return {kTime, kTime, kCount, kMore};
        case Code::workingPackingFactor: return {kNumber, kNumber, kDryMatter};
        case Code::workingBracket: return {kDensity};
        case Code::workingDepthFactor: return {kDepth, kNumber};
        case Code::workingSaturation: return {kDensity, kDryMatter};
        case Code::workingPoreFree: return {kDensity, kDryMatter};
        case Code::workingLevel: return {kNumber};
        case Code::workingMedian: return {kDensity};
        case Code::workingBand: return {kDensity, kDenser, kNumber};
        case Code::workingTarget: return {kDensity, kDensity, kDensity, kDenser};
        case Code::workingChance: return {kChance};
        case Code::calibrationGain: return {kCount, kDensity, kDenser};
        case Code::calibrationGainMixed: return {kCount, kMore, kMore, kDensity, kDenser};
        case Code::calibrationWidened: return {kCount, kDensity, kDenser};
        case Code::coreIsLoose: return {};
        case Code::coreOutsideLayers: return {};
        // advice
        case Code::tractorNameTwice: return {kText};
        case Code::adviceAsNow: return {};
        case Code::advicePack: return {kText};
        case Code::advicePackPart: return {kText, kShare};
        case Code::adviceSpread: return {kText};
        case Code::adviceLeave: return {kText};
        case Code::adviceLayer: return {kLayer};
        case Code::adviceDelivery: return {kRate};
        case Code::adviceGain: return {kDensity, kDenser, kDensity, kChance, kBetter};
        case Code::adviceThinnerGain: return {kNumber, kNumber, kDenser};
        case Code::adviceCosts: return {kCost};
        case Code::adviceSaves: return {kCost};
        case Code::adviceKeeps: return {kDensity, kChance};
        case Code::adviceAllIsWell: return {kDensity, kBetter, kChance};
        case Code::adviceSaturated: return {kDensity};
        case Code::adviceClosest: return {kChance};
        case Code::adviceNothingHelps: return {kDensity, kChance};
        case Code::adviceChosen: return {};
        case Code::adviceChangesNothing: return {};
        case Code::adviceTooSlow: return {kRate, kFaster};
        case Code::adviceFallsShort: return {kChance, kBetter};
        case Code::adviceFewPasses: return {kNumber, kNumber};
        case Code::adviceDearer: return {};
        case Code::adviceNotNeeded: return {};
        // attention
        case Code::cautionRampSlope: return {kSlope};
        case Code::cautionRampSteep: return {kSteeper, kSlope};
        case Code::cautionCrossSlope: return {kSlope};
        case Code::cautionCrownSteep: return {kSteeper, kSlope};
        case Code::cautionFillAboveWall: return {kDepth, kShallow};
        case Code::cautionWorkingWidth: return {kNumber};
        case Code::cautionWidthNarrow: return {kDepth, kShallow, kNumber};
        case Code::cautionFaceDistance: return {kNumber, kDepth};
        case Code::cautionCores: return {};
        case Code::cautionPeopleOnFoot: return {};
        case Code::cautionSiloGas: return {kNumber, kNumber};
        case Code::cautionShiftHours: return {kNumber, kNumber};
        case Code::cautionPowerLines: return {kDepth, kShallow};
        case Code::cautionDriverAge: return {kNumber};
        case Code::cautionWalls: return {};
        case Code::cautionDrySilage: return {kDryMatter, kDrier};
        case Code::cautionStanding: return {};
        // intake
        case Code::columnMissing: return {kText};
        case Code::columnTwice: return {kText, kOther};
        case Code::rowRagged: return {kCount, kMore};
        case Code::numberUnreadable: return {kText};
        case Code::wordUnknown: return {kText, kOther};
        case Code::nameUnknown: return {kText};
        case Code::nameShared: return {kText};
        case Code::wallTimeUnreadable: return {kText};
        case Code::dateOrderAmbiguous: return {kText};
        case Code::clockChanged: return {Argument{Instant{}}};
        case Code::massUnitMissing: return {};
        case Code::massUnitUnknown: return {kText};
        case Code::grossBelowTare: return {kHeavy, kHeavier};
        case Code::weighingsSwapped: return {kHeavy, kHeavier};
        case Code::netDisagrees: return {kHeavy, kHeavier};
        case Code::ticketRepeated: return {kText};
        case Code::dishImpossible: return {kText, kOther};
        case Code::fieldUnknown: return {};
        case Code::farmFileVersion: return {kCount};
        // review
        case Code::dayUnknown: return {kText};
        case Code::reviewDaySheet: return {kText, kOther};
        case Code::reviewState: return {};
        case Code::reviewClosed: return {Argument{Instant{}}};
        case Code::reviewNotClosed: return {Argument{Instant{}}};
        case Code::reviewNothing: return {};
        case Code::reviewNotNamed: return {};
        case Code::reviewTotal: return {};
        case Code::reviewGoesOn: return {};
        case Code::reviewDeliveries: return {};
        case Code::reviewDryMatter: return {};
        case Code::reviewMeanDryMatter: return {kDryMatter, kCount};
        case Code::reviewTractors: return {};
        case Code::reviewDensity: return {};
        case Code::reviewOfSilo: return {kText};
        case Code::reviewNoEstimate: return {Argument{Code::readingToday}};
        case Code::readingToday: return {};
        case Code::readingSilo: return {};
        case Code::reviewAdvice: return {};
        case Code::adviceWasShown: return {};
        case Code::adviceWasAccepted: return {};
        case Code::adviceWasDeclined: return {};
        case Code::reviewPauses: return {};
        case Code::reviewLayers: return {};
        case Code::layerMeasured: return {};
        case Code::layerByLoads: return {};
        case Code::reviewHeights: return {};
        case Code::reviewNotes: return {};
        case Code::reviewCautions: return {};
        case Code::reviewQuestions: return {};
        case Code::reviewNoQuestions: return {};
        case Code::methodOven: return {};
        case Code::methodMicrowave: return {};
        case Code::methodMeter: return {};
        case Code::methodEstimate: return {};
        case Code::columnSilo: return {};
        case Code::columnTruck: return {};
        case Code::columnField: return {};
        case Code::columnHour: return {};
        case Code::columnLoads: return {};
        case Code::columnMass: return {};
        case Code::columnDryMass: return {};
        case Code::columnDryMatter: return {};
        case Code::columnDelivery: return {};
        case Code::columnTime: return {};
        case Code::columnMethod: return {};
        case Code::columnTractor: return {};
        case Code::columnMachineMass: return {};
        case Code::columnPackingHours: return {};
        case Code::columnSpreadingHours: return {};
        case Code::columnCost: return {};
        case Code::columnReading: return {};
        case Code::columnMedian: return {};
        case Code::columnLow: return {};
        case Code::columnHigh: return {};
        case Code::columnTarget: return {};
        case Code::columnChance: return {};
        case Code::columnPorosity: return {};
        case Code::columnPorosityLow: return {};
        case Code::columnPorosityHigh: return {};
        case Code::columnPackingTime: return {};
        case Code::columnAdvice: return {};
        case Code::columnDecision: return {};
        case Code::columnBefore: return {};
        case Code::columnAfter: return {};
        case Code::columnChanceBefore: return {};
        case Code::columnChanceAfter: return {};
        case Code::columnBegin: return {};
        case Code::columnEnd: return {};
        case Code::columnReason: return {};
        case Code::columnThickness: return {};
        case Code::columnReadings: return {};
        case Code::columnLowest: return {};
        case Code::columnMean: return {};
        case Code::columnHighest: return {};
        case Code::columnNote: return {};
        case Code::columnCaution: return {};
        case Code::questionNotWeighed: return {kCount, kMore};
        case Code::questionNoField: return {kCount, kMore};
        case Code::questionDryMatterAssumed: return {kCount, kMore};
        case Code::questionSampleOverdue: return {kMinutes, kFewerMinutes};
        case Code::questionLayerNotSeen: return {kText};
        case Code::questionStillAtWork: return {kText};
        case Code::questionMassAssumed: return {kText, kMachine};
        case Code::questionNoCost: return {kText};
        case Code::questionUnknownKinds: return {kCount};
        case Code::questionWaiting: return {kCount};
    }
    // clang-format on
    throw std::logic_error("a code without sample arguments");
}

}  // namespace treadwell::words
