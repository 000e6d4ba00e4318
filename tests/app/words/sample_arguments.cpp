#include "tests/app/words/sample_arguments.h"

#include "core/advice/codes.h"
#include "core/attention/codes.h"
#include "core/base/codes.h"
#include "core/crop/codes.h"
#include "core/density/codes.h"
#include "core/entries/codes.h"
#include "core/farm/codes.h"
#include "core/formats/codes.h"
#include "core/intake/codes.h"
#include "core/journal/codes.h"
#include "core/packing/codes.h"
#include "core/quantity/relations.h"
#include "core/quantity/weather.h"
#include "core/review/codes.h"
#include "core/samples/codes.h"
#include "core/session/codes.h"

#include <algorithm>
#include <stdexcept>

namespace treadwell::words {

namespace {

const Argument kText = std::string{"14x"};
const Argument kOther = std::string{"t, lb"};
const Argument kCount = std::int64_t{2};
const Argument kMore = std::int64_t{3};
const Argument kNumber = 1.5;
const Argument kAt = Instant{};
const Argument kDensity = DryDensity::fromSi(236).amount();
const Argument kDenser = DryDensity::fromSi(262).amount();
const Argument kDryMatter = DryMatter::fromPercent(35).amount();
const Argument kDrier = DryMatter::fromPercent(45).amount();
const Argument kLayer = Length::fromCentimetres(15).layerAmount();
const Argument kThicker = Length::fromCentimetres(50).layerAmount();
const Argument kDepth = Length::fromMetres(3).amount();
const Argument kHeavy = AsFedMass::fromTonnes(12.4).amount();
const Argument kHeavier = AsFedMass::fromTonnes(26.1).amount();
const Argument kDryMass = DryMass::fromTonnes(4.2).amount();
const Argument kVolume = Volume::fromCubicMetres(19).amount();
const Argument kMachine = MachineMass::fromTonnes(10).amount();
const Argument kHeavyMachine = MachineMass::fromTonnes(14).amount();
const Argument kTime = PackingIntensity::fromMinutesPerTonne(0.75).amount();
const Argument kLongerTime = PackingIntensity::fromMinutesPerTonne(1.1).amount();
const Argument kMinutes = durationAmount(std::chrono::minutes{90});
const Argument kFewerMinutes = durationAmount(std::chrono::minutes{60});
const Argument kShallow = Length::fromMetres(1).amount();
const Argument kSlope = Slope::fromRunPerRise(3).amount();
const Argument kSteeper = Slope::fromRunPerRise(2).amount();
const Argument kShare = Share::fromPercent(50).amount();
const Argument kRate = AsFedRate::fromTonnesPerHour(90).amount();
const Argument kFasterRate = AsFedRate::fromTonnesPerHour(130).amount();
const Argument kFaster = AsFedRate::fromTonnesPerHour(200).amount();
const Argument kCost = CostRate::fromPerHour(80).amount();
const Argument kBetter = Chance::fromFraction(0.61).amount();
const Argument kSmallShare = Share::fromPercent(4).amount();
const Argument kOtherShare = Share::fromPercent(9).amount();
const Argument kDensest = DryDensity::fromSi(480).amount();
const Argument kDryTonnes = DryMass::fromTonnes(430).amount();
const Argument kRoom = Volume::fromCubicMetres(1640).amount();
const Argument kMet = std::vector{code::yardstickFrance, code::yardstickBrittany};
const Argument kNotMet = std::vector{code::yardstickPasses};
const Argument kGrams = Amount{Dimension::dishMass, 0.0372};
const Argument kFewerGrams = Amount{Dimension::dishMass, 0.0351};
const Argument kChop = Length::fromMillimetres(8).chopAmount();
const Argument kLongChop = Length::fromMillimetres(19).chopAmount();
const Argument kWarm = Temperature::fromCelsius(24).amount();
const Argument kCold = Temperature::fromCelsius(11).amount();
const Argument kWarmth = DegreeDays::fromFahrenheit(750).amount();
const Argument kChance = Chance::fromFraction(0.36).amount();

struct Sample {
    Code code;
    std::vector<Argument> arguments;
};

const std::vector<Sample>& samples() {
    // A line a code, so that the table can be read.
    // clang-format off
    static const std::vector<Sample> kSamples{
        // base
        {code::valueMissing, {}},
        {code::valueNotFinite, {}},
        {code::valueOutOfRange, {kThicker, kLayer, kLayer}},
        {code::textEmpty, {}},
        {code::textNotNumber, {kText}},
        {code::unitMissing, {kText, kOther}},
        {code::unitUnknown, {kText, kOther}},
        {code::timeUnreadable, {kText}},
        {code::zoneUnknown, {kText}},
        {code::fileUnreadable, {kText, kOther}},
        {code::fileUnwritable, {kText, kOther}},
        // crop
        {code::densityImpossible, {kDenser, kDryMatter, kDensity}},
        // samples
        {code::weighingGained, {kGrams, kFewerGrams}},
        {code::dryMatterSlightlyWet, {kDryMatter, kDryMatter, kDrier}},
        {code::dryMatterWet, {kDryMatter, kDryMatter, kDrier}},
        {code::dryMatterDry, {kDrier, kDryMatter, kDryMatter}},
        {code::dryMatterVeryDry, {kDrier, kDryMatter, kDryMatter}},
        {code::sievesNotInOrder, {kChop, kLongChop}},
        {code::sieveCountWrong, {kCount, kMore}},
        {code::sieveEmpty, {kChop}},
        {code::panEmpty, {}},
        {code::sieveNothing, {}},
        {code::sieveLost, {kShare, kShare}},
        {code::sieveGained, {kFewerGrams, kGrams}},
        {code::sieveWet, {}},
        {code::percentSum, {kNumber}},
        {code::sieveStacksDiffer, {}},
        {code::topLengthMissing, {kChop}},
        {code::sievesTooFew, {kCount}},
        {code::screenMissing, {kChop}},
        {code::chopWithin, {}},
        {code::chopFine, {kShare, kChop, kShare}},
        {code::chopDusty, {kShare, kShare}},
        {code::chopCoarse, {kShare, kLongChop, kShare}},
        {code::chopUneven, {}},
        {code::chopLengthen, {kChop, kLongChop}},
        {code::chopShorten, {kLongChop, kChop}},
        {code::chopCheckKnives, {}},
        {code::starchImpossible, {kShare, kShare}},
        {code::kernelsOptimal, {}},
        {code::kernelsFermented, {}},
        {code::kernelsCloseRolls, {}},
        {code::kernelsNarrowGap, {kLongChop, kChop}},
        {code::kernelsCheckRolls, {kChop}},
        {code::temperaturesSwapped, {kWarm, kCold}},
        {code::dayTwice, {kText}},
        {code::daysReversed, {kText, kOther}},
        {code::warmthNotReached, {kWarmth, kCount}},
        {code::harvestTooLong, {kCount}},
        {code::orderWrong, {kCount}},
        {code::hybridOutsideWarmth, {kCount}},
        {code::temperaturesMissing, {kCount}},
        {code::warmthUnknown, {}},
        {code::sampleFieldNow, {kShare}},
        {code::readingsMissing, {}},
        {code::grossBelowTare, {kHeavy, kHeavier}},
        {code::dishImpossible, {kText, kOther}},
        // farm
        {code::nameEmpty, {}},
        {code::crownTooWide, {kLayer, kDepth}},
        {code::rampLongerThanSilo, {kDepth, kDepth}},
        // entries
        {code::payloadUnreadable, {kText}},
        {code::payloadFieldMissing, {}},
        {code::payloadFieldWrong, {}},
        {code::targetMissing, {kText}},
        {code::spanEmpty, {Argument{Instant{}}}},
        {code::dishDisagrees, {kDryMatter, kDrier}},
        {code::coreHeightUnclear, {}},
        {code::coreDensityUnclear, {}},
        {code::stretchEmpty, {kDepth}},
        {code::documentUnreadable, {kText}},
        {code::documentForeign, {}},
        {code::documentNewer, {kMore, kCount}},
        {code::fieldUnknown, {}},
        // journal
        {code::journalExists, {kText}},
        {code::journalForeign, {kText}},
        {code::journalDamaged, {kText, kOther}},
        {code::journalNewer, {kText, kCount, kMore}},
        {code::journalTooNew, {kText, kCount, kMore}},
        {code::journalHeld, {kText, kCount, kOther, Argument{Instant{}}, kText}},
        {code::journalMediumReadOnly, {kText}},
        {code::journalNeedsFolder, {kText}},
        {code::journalReadOnly, {kText}},
        {code::journalOnNetwork, {kText}},
        {code::journalOpenedDamaged, {kText}},
        {code::journalBehind, {kText}},
        {code::journalWriteFailed, {kText, kOther}},
        {code::entryAltered, {kCount, kText, kMore}},
        {code::entriesMissing, {kCount, kText, kMore}},
        {code::rowUnreadable, {kCount, kText}},
        {code::structureBroken, {kText}},
        {code::entryOutOfOrder, {kText, kCount}},
        // formats
        {code::textIsUtf16, {}},
        {code::encodingAmbiguous, {kText, kOther}},
        {code::encodingWrong, {}},
        {code::delimiterAmbiguous, {kText, kOther}},
        {code::headerMissing, {}},
        {code::quoteOpen, {}},
        {code::decimalAmbiguous, {kText}},
        {code::decimalMixed, {kText, kOther}},
        {code::frameUnreadable, {kText}},
        {code::frameCut, {kText}},
        {code::frameTooLong, {kCount}},
        {code::frameSumWrong, {kText}},
        {code::gpxUnreadable, {kText}},
        {code::gpxDoctype, {}},
        {code::gpxRootWrong, {kText}},
        // packing
        {code::yardstickNorthAmerica, {}},
        {code::yardstickThirdOfHourlyMass, {}},
        {code::yardstickQuarterOfHourlyMass, {}},
        {code::yardstickFrance, {}},
        {code::yardstickBrittany, {}},
        // density
        {code::tooFewLoads, {kCount, kMore}},
        {code::noLoads, {}},
        {code::siloUnknown, {}},
        {code::packingTimesMismatch, {kCount, kMore}},
        {code::heightOutsideSilo, {kDepth, kShallow}},
        {code::heightAboveSilo, {kDepth, kShallow}},
        {code::heightsWithoutCrop, {}},
        {code::surveyWithoutLoads, {}},
        {code::surveyWithoutRoom, {kHeavy}},
        {code::surveyImpossible, {kDenser, kDryTonnes, kRoom, kDensity, kDensest}},
        {code::layerAssumed, {kLayer}},
        {code::layerHeldToRange, {kThicker, kLayer}},
        {code::dryMatterOutsideCrop, {kDryMatter, kDrier, kDrier}},
        {code::noMachines, {}},
        {code::noPackingTime, {}},
        {code::machineAddsNothing, {kCount, kMachine}},
        {code::saturated, {kDensity}},
        {code::saturationUnknown, {kDryMatter, kDrier, kDrier}},
        {code::targetAboveSaturation, {kDenser, kDensity}},
        {code::densityOutsideSurvey, {kDensity, kDenser, kDenser}},
        {code::yardsticksDisagree, {kMet, kNotMet}},
        {code::yardstickPasses, {}},
        {code::yardstickTarget, {}},
        {code::weakStretch, {kMinutes, kRate, kCount}},
        {code::weakNotPacked, {}},
        {code::weakFewMinutes, {kTime, kLongerTime}},
        {code::weakLightTractors, {kMachine, kHeavyMachine}},
        {code::weakThickLayer, {kThicker, kLayer}},
        {code::weakWetCrop, {kDryMatter, kDrier}},
        {code::weakNearSurface, {kDepth}},
        {code::workingOneLayer, {kCount, kDryMass, Argument{Instant{}}, Argument{Instant{}}}},
        {code::workingLayers, {kCount, kDryMass, kVolume, kNumber}},
        {code::workingLayer, {kLayer}},
        {code::workingPackingTime, {kTime, kTime, kCount, kMore}},
        {code::workingPackingFactor, {kNumber, kNumber, kDryMatter}},
        {code::workingBracket, {kDensity}},
        {code::workingDepthFactor, {kDepth, kNumber}},
        {code::workingDepthWhenFull, {kDepth, kNumber}},
        {code::workingDepthAsItLies, {kDepth, kNumber}},
        {code::workingSaturation, {kDensity, kDryMatter}},
        {code::workingPoreFree, {kDensity, kDryMatter}},
        {code::workingLevel, {kNumber}},
        {code::workingMedian, {kDensity}},
        {code::workingBand, {kDensity, kDenser, kNumber}},
        {code::workingTarget, {kDensity, kDensity, kDensity, kDenser}},
        {code::workingChance, {kChance}},
        {code::calibrationGain, {kCount, kDensity, kDenser}},
        {code::calibrationGainMixed, {kCount, kMore, kMore, kDensity, kDenser}},
        {code::calibrationWidened, {kCount, kDensity, kDenser}},
        {code::coreIsLoose, {}},
        {code::coreOutsideLayers, {}},
        {code::doubtSite, {kShare}},
        {code::doubtSilo, {kShare}},
        {code::doubtFace, {kShare}},
        {code::doubtPlace, {kShare}},
        {code::doubtDepthSlope, {kShare}},
        {code::doubtMachineMass, {kShare}},
        {code::doubtLayerAssumed, {kShare}},
        {code::doubtLayerSeen, {kShare, Argument{Instant{}}}},
        {code::doubtLayer, {kShare}},
        {code::doubtPackingTime, {kShare}},
        {code::doubtLoadMass, {kShare}},
        {code::doubtSample, {kShare, Argument{Instant{}}}},
        {code::doubtDryMatter, {kShare}},
        {code::doubtOtherEntries, {kShare}},
        {code::measureHeights, {kCount, kDenser, kDensity}},
        {code::measureDryMatter, {kDenser, kDensity}},
        {code::measureLayer, {kDenser, kDensity}},
        {code::measureTractors, {kDenser, kDensity}},
        {code::measureLoads, {kCount, kDenser, kDensity}},
        {code::learntFromHeights, {Argument{Instant{}}, kDenser, kDensity}},
        {code::learntFromFarm, {kDenser, kDensity}},
        {code::learntSlope, {kShare, kSmallShare, kOtherShare, kSmallShare}},
        {code::measuredWhole, {Argument{Instant{}}, kDensity, kDensity, kDenser}},
        {code::measuredPlaced, {kDensity, kDensity, kDenser}},
        {code::movedFasterLoads, {kCount, kRate, kFasterRate}},
        {code::movedSlowerLoads, {kCount, kFasterRate, kRate}},
        {code::movedNoLoad, {kFasterRate, kRate}},
        {code::movedPackingTime, {kTime, kLongerTime}},
        {code::movedMachines, {kMachine, kHeavyMachine}},
        {code::movedLayer, {kLayer, kThicker}},
        {code::movedSample, {kDryMatter, Argument{Instant{}}, kDrier, kDryMatter}},
        {code::movedDryMatter, {kDryMatter, kDrier}},
        {code::movedDepth, {kShallow, kDepth}},
        {code::movedHeights, {Argument{Instant{}}}},
        {code::movedMeasurement, {}},
        {code::movedLimit, {kDensity, kDenser}},
        {code::movedOther, {}},
        // advice
        {code::tractorNameTwice, {kText}},
        {code::adviceAsNow, {}},
        {code::advicePack, {kText}},
        {code::advicePackPart, {kText, kShare}},
        {code::adviceSpread, {kText}},
        {code::adviceLeave, {kText}},
        {code::adviceLayer, {kLayer}},
        {code::adviceDelivery, {kRate}},
        {code::adviceGain, {kDensity, kDenser, kDensity, kChance, kBetter}},
        {code::adviceThinnerGain, {kNumber, kNumber, kDenser}},
        {code::adviceCosts, {kCost}},
        {code::adviceSaves, {kCost}},
        {code::adviceKeeps, {kDensity, kChance}},
        {code::adviceAllIsWell, {kDensity, kBetter, kChance}},
        {code::adviceSaturated, {kDensity}},
        {code::adviceClosest, {kChance}},
        {code::adviceNothingHelps, {kDensity, kChance}},
        {code::adviceChosen, {}},
        {code::adviceChangesNothing, {}},
        {code::adviceTooSlow, {kRate, kFaster}},
        {code::adviceFallsShort, {kChance, kBetter}},
        {code::adviceFewPasses, {kNumber, kNumber}},
        {code::adviceDearer, {}},
        {code::adviceNotNeeded, {}},
        {code::advicePackSome, {kText}},
        {code::adviceThinner, {}},
        {code::adviceSlower, {}},
        // attention
        {code::cautionRampSlope, {kSlope}},
        {code::cautionRampSteep, {kSteeper, kSlope}},
        {code::cautionCrossSlope, {kSlope}},
        {code::cautionCrownSteep, {kSteeper, kSlope}},
        {code::cautionFillAboveWall, {kDepth, kShallow}},
        {code::cautionWorkingWidth, {kNumber}},
        {code::cautionWidthNarrow, {kDepth, kShallow, kNumber}},
        {code::cautionFaceDistance, {kNumber, kDepth}},
        {code::cautionCores, {}},
        {code::cautionPeopleOnFoot, {}},
        {code::cautionSiloGas, {kCount, kNumber}},
        {code::cautionShiftHours, {kNumber, kNumber}},
        {code::cautionPowerLines, {kDepth, kShallow}},
        {code::cautionDriverAge, {kNumber}},
        {code::cautionWalls, {}},
        {code::cautionDrySilage, {kDryMatter, kDrier}},
        {code::cautionStanding, {}},
        {code::packingBehind, {kFaster, kRate}},
        {code::layerThick, {kThicker, kLayer}},
        {code::siloNearlyFull, {kShare}},
        {code::sampleOverdue, {kMinutes}},
        {code::sampleMissing, {}},
        {code::hoursOnShift, {kMinutes}},
        {code::readyToCover, {kDepth}},
        {code::knownDryMatter, {kDryMatter, kAt}},
        {code::assumedDryMatter, {kDryMatter}},
        {code::otherFieldsDryMatter, {kDryMatter, kAt}},
        {code::knownLayer, {kLayer, kAt}},
        {code::assumedLayer, {kLayer}},
        {code::knownLoads, {kCount}},
        {code::assumedLoads, {kCount, kMore}},
        {code::assumedMasses, {kText, kMachine}},
        {code::knownMasses, {}},
        {code::knownHeights, {kAt}},
        {code::missingHeights, {}},
        {code::missingPace, {kCount, kMore}},
        // intake
        {code::columnMissing, {kText}},
        {code::columnTwice, {kText, kOther}},
        {code::columnNotThere, {kText, kOther}},
        {code::rowRagged, {kCount, kMore}},
        {code::numberUnreadable, {kText}},
        {code::wordUnknown, {kText, kOther}},
        {code::nameUnknown, {kText}},
        {code::nameShared, {kText}},
        {code::wallTimeUnreadable, {kText}},
        {code::dateOrderAmbiguous, {kText}},
        {code::clockChanged, {Argument{Instant{}}}},
        {code::massUnitMissing, {}},
        {code::massUnitUnknown, {kText}},
        {code::weighingsSwapped, {kHeavy, kHeavier}},
        {code::netDisagrees, {kHeavy, kHeavier}},
        {code::ticketRepeated, {kText}},
        {code::ticketMeetsLoad, {Argument{Instant{}}, kHeavy, kHeavier, kMinutes}},
        {code::loadWithoutTicket, {Argument{Instant{}}, kHeavy}},
        {code::ticketSumDiffers, {std::int64_t{139}, kHeavier, kHeavy, kHeavy}},
        {code::importMapsUnreadable, {kText}},
        {code::scaleShowsTare, {kHeavy}},
        {code::scaleTareNeeded, {kHeavy}},
        {code::scaleNetNegative, {kHeavy}},
        {code::scaleUnreachable, {kText, kOther}},
        {code::scaleLineEnded, {kText}},
        {code::scaleSilent, {kText, kMinutes}},
        {code::scaleUnsteady, {kText, kMinutes, kCount, kMore}},
        {code::temperatureUnitMissing, {}},
        {code::farmFileVersion, {kCount}},
        {code::typedFieldUnknown, {kOther}},
        {code::typedFieldTwice, {}},
        {code::kindUnknown, {kText, kOther}},
        {code::caughtUpCount, {kCount, kMore}},
        {code::caughtUpSpan, {kAt, kAt}},
        {code::caughtUpAhead, {kAt}},
        // review
        {code::dayUnknown, {kText}},
        {code::reviewDaySheet, {kText, kOther}},
        {code::reviewState, {}},
        {code::reviewClosed, {Argument{Instant{}}}},
        {code::reviewNotClosed, {Argument{Instant{}}}},
        {code::reviewNothing, {}},
        {code::reviewNotNamed, {}},
        {code::reviewTotal, {}},
        {code::reviewGoesOn, {}},
        {code::reviewDeliveries, {}},
        {code::reviewDryMatter, {}},
        {code::reviewMeanDryMatter, {kDryMatter, kCount}},
        {code::reviewChop, {}},
        {code::columnTests, {}},
        {code::columnMeanLength, {}},
        {code::columnOn19, {}},
        {code::columnOn8, {}},
        {code::columnOn4, {}},
        {code::columnBelow4, {}},
        {code::columnCut, {}},
        {code::columnMaterial, {}},
        {code::columnKernels, {}},
        {code::columnScore, {}},
        {code::columnProcessing, {}},
        {code::materialFresh, {}},
        {code::materialFermented, {}},
        {code::processingOptimal, {}},
        {code::processingAdequate, {}},
        {code::processingInadequate, {}},
        {code::reviewTractors, {}},
        {code::reviewDensity, {}},
        {code::reviewOfSilo, {kText}},
        {code::reviewNoEstimate, {Argument{code::readingToday}}},
        {code::readingToday, {}},
        {code::readingSilo, {}},
        {code::reviewAdvice, {}},
        {code::adviceWasShown, {}},
        {code::adviceWasAccepted, {}},
        {code::adviceWasDeclined, {}},
        {code::reviewPauses, {}},
        {code::reviewLayers, {}},
        {code::reviewLaidLayers, {}},
        {code::reviewLayerRange, {kCount, kMore}},
        {code::reviewLoosestLayers, {}},
        {code::layerMeasured, {}},
        {code::layerByLoads, {}},
        {code::reviewHeights, {}},
        {code::reviewNotes, {}},
        {code::reviewCautions, {}},
        {code::reviewQuestions, {}},
        {code::reviewNoQuestions, {}},
        {code::methodOven, {}},
        {code::methodMicrowave, {}},
        {code::methodMeter, {}},
        {code::methodEstimate, {}},
        {code::columnSilo, {}},
        {code::columnTruck, {}},
        {code::columnField, {}},
        {code::columnHour, {}},
        {code::columnLoads, {}},
        {code::columnMass, {}},
        {code::columnDryMass, {}},
        {code::columnDryMatter, {}},
        {code::columnDelivery, {}},
        {code::columnTime, {}},
        {code::columnMethod, {}},
        {code::columnTractor, {}},
        {code::columnMachineMass, {}},
        {code::columnPackingHours, {}},
        {code::columnSpreadingHours, {}},
        {code::columnCost, {}},
        {code::columnReading, {}},
        {code::columnMedian, {}},
        {code::columnLow, {}},
        {code::columnHigh, {}},
        {code::columnTarget, {}},
        {code::columnChance, {}},
        {code::columnPorosity, {}},
        {code::columnPorosityLow, {}},
        {code::columnPorosityHigh, {}},
        {code::columnPackingTime, {}},
        {code::columnAdvice, {}},
        {code::columnDecision, {}},
        {code::columnBefore, {}},
        {code::columnAfter, {}},
        {code::columnChanceBefore, {}},
        {code::columnChanceAfter, {}},
        {code::columnBegin, {}},
        {code::columnEnd, {}},
        {code::columnReason, {}},
        {code::columnThickness, {}},
        {code::columnLayer, {}},
        {code::columnPasses, {}},
        {code::columnReadings, {}},
        {code::columnLowest, {}},
        {code::columnMean, {}},
        {code::columnHighest, {}},
        {code::columnNote, {}},
        {code::columnCaution, {}},
        {code::questionNotWeighed, {kCount, kMore}},
        {code::questionNoField, {kCount, kMore}},
        {code::questionDryMatterAssumed, {kCount, kMore}},
        {code::questionSampleOverdue, {kMinutes, kFewerMinutes}},
        {code::questionLayerNotSeen, {kText}},
        {code::questionStillAtWork, {kText}},
        {code::questionMassAssumed, {kText, kMachine}},
        {code::questionNoCost, {kText}},
        {code::questionUnknownKinds, {kCount}},
        {code::questionRowsSetAside, {kCount}},
        {code::questionWaiting, {kCount}},
        {code::reviewWeather, {}},
        {code::reviewAdditives, {}},
        {code::reviewCover, {}},
        {code::reviewIncidents, {}},
        {code::reviewShifts, {}},
        {code::questionStillOnShift, {Argument{Instant{}}}},
        {code::columnSky, {}},
        {code::columnRain, {}},
        {code::columnWind, {}},
        {code::columnStep, {}},
        {code::columnFrom, {}},
        {code::columnTo, {}},
        {code::columnSort, {}},
        {code::columnWhatHappened, {}},
        {code::columnProduct, {}},
        {code::columnProductMass, {}},
        {code::columnProductVolume, {}},
        {code::columnGramsPerTonne, {}},
        {code::columnLitresPerTonne, {}},
        {code::columnDuty, {}},
        {code::columnTablet, {}},
        {code::columnHoursOnShift, {}},
        {code::columnTemperature, {}},
        // session
        {code::seasonEmpty, {kText}},
        {code::entryVoided, {kText}},
        {code::correctionChangesKind, {kText, kOther}},
        {code::deviceRenewed, {kText}},
        {code::entryUnreadable, {kText, kCount}},
        {code::entryKeptAside, {kText, kOther}},
        {code::entryKeptInMemory, {kText}},
        {code::keptEntriesRecorded, {kCount}},
        {code::keptEntriesUnreadable, {kText, kCount}},
        {code::clockBehind, {Argument{Instant{}}, Argument{Instant{std::chrono::hours{1}}}}},
        {code::clockMoved, {kMinutes}},
        {code::secondPlaceFailed, {kText, kOther}},
        {code::personNamedTwice, {kText}},
        {code::documentHeadDiffers, {kText, kOther}},
    };
    // clang-format on
    return kSamples;
}

}  // namespace

std::vector<Argument> sampleArguments(Code code) {
    const auto found = std::ranges::find(samples(), code, &Sample::code);
    if (found == samples().end()) throw std::logic_error("a code without sample arguments");
    return found->arguments;
}

}  // namespace treadwell::words
