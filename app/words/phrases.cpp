#include "app/words/phrases.h"

#include <stdexcept>

// Marks a text for lupdate, without Qt.
#define QT_TRANSLATE_NOOP(context, text) text

namespace treadwell::words {

const char* phraseTemplate(Code code) {
    // Without a default, so that the compiler asks for every phrase; sorted by room as core/base/code.h. A
    // line a code, so that the table can be read.
    // clang-format off
    switch (code) {
        // base, quantity
        case Code::valueMissing: return QT_TRANSLATE_NOOP("Phrase", "Nothing is given here: give a value");
        case Code::valueNotFinite: return QT_TRANSLATE_NOOP("Phrase", "This is not a finite number: give a plain number");
        case Code::valueOutOfRange: return QT_TRANSLATE_NOOP("Phrase", "{1} is outside {2} to {3}: check the value and its unit");
        case Code::textEmpty: return QT_TRANSLATE_NOOP("Phrase", "Nothing is written here: fill it in");
        case Code::textNotNumber: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a number with a unit: write it with a point as decimal sign, like 3.5");
        case Code::unitMissing: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" has no unit: add one of {2}");
        case Code::unitUnknown: return QT_TRANSLATE_NOOP("Phrase", "The unit of \"{1}\" is not one of those known here: use {2}");
        case Code::timeUnreadable: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a time: write it like 2026-09-15T14:25:30-03:00");
        case Code::zoneUnknown: return QT_TRANSLATE_NOOP("Phrase", "No time zone is called \"{1}\": use a name like America/Sao_Paulo");
        case Code::fileUnreadable: return QT_TRANSLATE_NOOP("Phrase", "{1} cannot be read ({2}): check the name and the rights to it");
        case Code::fileUnwritable: return QT_TRANSLATE_NOOP("Phrase", "{1} cannot be written ({2}): check the folder, its rights and the free space");
        // farm
        case Code::nameEmpty: return QT_TRANSLATE_NOOP("Phrase", "It has no name: give one");
        case Code::crownTooWide: return QT_TRANSLATE_NOOP("Phrase", "A crown of {1} does not fit a width of {2}: six times the crown must fit");
        case Code::rampLongerThanSilo: return QT_TRANSLATE_NOOP("Phrase", "The ramps take {1} of a silo {2} long: check the slope and the length");
        // entries
        case Code::payloadUnreadable: return QT_TRANSLATE_NOOP("Phrase", "The entry's content cannot be read ({1})");
        case Code::payloadFieldMissing: return QT_TRANSLATE_NOOP("Phrase", "This field is missing: add it");
        case Code::payloadFieldWrong: return QT_TRANSLATE_NOOP("Phrase", "This field holds a value of the wrong sort: correct it");
        case Code::targetMissing: return QT_TRANSLATE_NOOP("Phrase", "The entry that is meant, {1}, is not in this season");
        case Code::readingsMissing: return QT_TRANSLATE_NOOP("Phrase", "There are no readings: enter at least one");
        case Code::spanEmpty: return QT_TRANSLATE_NOOP("Phrase", "The end must lie after the begin, {1}");
        case Code::coreHeightUnclear: return QT_TRANSLATE_NOOP("Phrase", "Give a core its depth below the surface or its height above the floor, one of the two");
        case Code::coreDensityUnclear: return QT_TRANSLATE_NOOP("Phrase", "Give a core one way to its density: dry matter and mass with diameter and length, or with the volume, or the density itself");
        case Code::dishDisagrees: return QT_TRANSLATE_NOOP("Phrase", "{1} is entered, but the dish gives {2}: check the weights");
        // journal
        case Code::journalExists: return QT_TRANSLATE_NOOP("Phrase", "{1} is there already: choose another name, or move it away");
        case Code::journalForeign: return QT_TRANSLATE_NOOP("Phrase", "{1} is not a season of Treadwell: choose another file");
        case Code::journalDamaged: return QT_TRANSLATE_NOOP("Phrase", "{1} is damaged ({2}): keep it, and open its latest backup");
        case Code::journalNewer: return QT_TRANSLATE_NOOP("Phrase", "{1} is of layout {2} and this version writes {3}: open for reading only; a newer version of Treadwell writes it");
        case Code::journalTooNew: return QT_TRANSLATE_NOOP("Phrase", "{1} is of layout {2} and this version knows up to {3}: open it with a newer version of Treadwell");
        case Code::journalHeld: return QT_TRANSLATE_NOOP("Phrase", "Process {2} on {3} has been writing {1} since {4}: open for reading only; close it there to write here");
        case Code::journalMediumReadOnly: return QT_TRANSLATE_NOOP("Phrase", "{1} or its folder cannot be written: open for reading only; copy it to this machine to write");
        case Code::journalNeedsFolder: return QT_TRANSLATE_NOOP("Phrase", "Entries of {1} still lie in the file beside it that ends in -wal, and the folder cannot be written: copy both together into a folder of this machine and open it there");
        case Code::journalReadOnly: return QT_TRANSLATE_NOOP("Phrase", "Nothing is recorded: {1} is open for reading only");
        case Code::journalWriteFailed: return QT_TRANSLATE_NOOP("Phrase", "The entry is not recorded: {1} cannot be written ({2}); check the disk and its free space");
        case Code::chainBroken: return QT_TRANSLATE_NOOP("Phrase", "The record does not hold together from entry {2} of device {1} on: something was changed or lost outside Treadwell; compare it with a backup");
        case Code::entryOutOfOrder: return QT_TRANSLATE_NOOP("Phrase", "Entry {2} of device {1} does not follow the last one here: the entries between them, or the right copy of the file, are needed");
        // session
        case Code::seasonEmpty: return QT_TRANSLATE_NOOP("Phrase", "{1} holds no entry: start the season in a new file");
        case Code::entryVoided: return QT_TRANSLATE_NOOP("Phrase", "The entry {1} has been taken back: enter it anew");
        case Code::correctionChangesKind: return QT_TRANSLATE_NOOP("Phrase", "An entry of the kind {1} cannot be corrected by one of the kind {2}: take it back and enter the other");
        case Code::deviceRenewed: return QT_TRANSLATE_NOOP("Phrase", "{1} is an older copy: entries that this machine has written since are missing in it; look for the newer file. This machine goes on in it as a new device");
        case Code::entryUnreadable: return QT_TRANSLATE_NOOP("Phrase", "The content of entry {2} of device {1} cannot be read: it is kept and not counted; compare the file with a backup");
        case Code::entryKeptAside: return QT_TRANSLATE_NOOP("Phrase", "Not recorded in the season: {2}. What was entered is kept in {1} and will be recorded when the season is opened again");
        case Code::keptEntriesRecorded: return QT_TRANSLATE_NOOP("Phrase", "Entries that could not be recorded earlier are recorded now ({1}): look them through");
        case Code::keptEntriesUnreadable: return QT_TRANSLATE_NOOP("Phrase", "Entries that could not be recorded earlier wait in {1}, and line {2} cannot be read: mend the line, or move the file away and enter them anew");
        // formats
        case Code::textIsUtf16: return QT_TRANSLATE_NOOP("Phrase", "The file is written in UTF-16: save it as text in UTF-8");
        case Code::headerMissing: return QT_TRANSLATE_NOOP("Phrase", "The file has no header row: its first line must name the columns");
        case Code::quoteOpen: return QT_TRANSLATE_NOOP("Phrase", "A quotation mark opens here and never closes: check the quotation marks from this line on");
        case Code::decimalAmbiguous: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" can be read in two ways: say which decimal sign the file uses (decimalSign: point or comma)");
        case Code::decimalMixed: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" has a point and \"{2}\" a comma as decimal sign: say which the file uses (decimalSign: point or comma)");
        case Code::frameUnreadable: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is no frame of this scale: check the profile, the baud rate and the parity");
        case Code::frameCut: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" may be the rest of a frame: the next one is awaited");
        case Code::frameTooLong: return QT_TRANSLATE_NOOP("Phrase", "No end of a frame came within {1} characters: check the profile, the baud rate and the parity");
        case Code::frameSumWrong: return QT_TRANSLATE_NOOP("Phrase", "The sum of the frame \"{1}\" is wrong: check the wire");
        // crop
        case Code::densityImpossible: return QT_TRANSLATE_NOOP("Phrase", "{1} at {2} dry matter is more than the pore-free {3}: check both");
        // samples
        case Code::weighingGained: return QT_TRANSLATE_NOOP("Phrase", "{1} after {2}: a sample gains no weight while it dries; weigh it again");
        case Code::dryMatterSlightlyWet: return QT_TRANSLATE_NOOP("Phrase", "Slightly wet: {1} dry matter, the goal is {2} to {3}");
        case Code::dryMatterWet: return QT_TRANSLATE_NOOP("Phrase", "Wet: {1} dry matter, the goal is {2} to {3}; expect effluent, and cut a drier field first if there is one");
        case Code::dryMatterDry: return QT_TRANSLATE_NOOP("Phrase", "Dry: {1} dry matter, the goal is {2} to {3}; chop shorter, spread thinner and pack longer");
        case Code::dryMatterVeryDry: return QT_TRANSLATE_NOOP("Phrase", "Far too dry: {1} dry matter, the goal is {2} to {3}; it packs badly and heats. Chop shorter, pack every layer longer, cover at once, and cut wetter fields between");
        case Code::sievesNotInOrder: return QT_TRANSLATE_NOOP("Phrase", "A sieve of {1} stands below one of {2}: list the sieves from the widest down");
        case Code::sieveCountWrong: return QT_TRANSLATE_NOOP("Phrase", "{1} readings for {2} sieves: give one for each sieve and one for the pan");
        case Code::sieveEmpty: return QT_TRANSLATE_NOOP("Phrase", "Nothing lay on the sieve of {1}: it is left out of the fit");
        case Code::panEmpty: return QT_TRANSLATE_NOOP("Phrase", "Nothing lay in the pan");
        case Code::sieveNothing: return QT_TRANSLATE_NOOP("Phrase", "All sieves are empty: weigh what lies on each");
        case Code::sieveLost: return QT_TRANSLATE_NOOP("Phrase", "{1} of the sample is missing after sieving, usual is up to {2}: weigh again, or sieve a new sample");
        case Code::sieveGained: return QT_TRANSLATE_NOOP("Phrase", "The sample weighed {1} before and {2} after: check the weights and the empty sieves");
        case Code::sieveWet: return QT_TRANSLATE_NOOP("Phrase", "The sample was wet from rain or dew: fine parts stick to coarse ones, and it looks coarser than it is");
        case Code::percentSum: return QT_TRANSLATE_NOOP("Phrase", "The parts make {1} %: they must make 100");
        case Code::sieveStacksDiffer: return QT_TRANSLATE_NOOP("Phrase", "These tests were made with other sieves: pool only those of one stack");
        case Code::topLengthMissing: return QT_TRANSLATE_NOOP("Phrase", "Something lies on the top sieve of {1}: measure its mean length and give it");
        case Code::sievesTooFew: return QT_TRANSLATE_NOOP("Phrase", "{1} sieves say something: a line needs two of them, with more passing the wider one");
        case Code::screenMissing: return QT_TRANSLATE_NOOP("Phrase", "The stack has no sieve of {1}: this figure cannot be read from it");
        case Code::chopWithin: return QT_TRANSLATE_NOOP("Phrase", "The chop lies within its ranges");
        case Code::chopFine: return QT_TRANSLATE_NOOP("Phrase", "Fine: {1} below {2}, the most is {3}");
        case Code::chopDusty: return QT_TRANSLATE_NOOP("Phrase", "{1} below the last bound, the most is {2}");
        case Code::chopCoarse: return QT_TRANSLATE_NOOP("Phrase", "Coarse: {1} above {2}, the most is {3}");
        case Code::chopUneven: return QT_TRANSLATE_NOOP("Phrase", "Both too fine and too coarse: the cut is uneven, and another length does not mend it");
        case Code::chopLengthen: return QT_TRANSLATE_NOOP("Phrase", "Lengthen the cut from {1} to {2}");
        case Code::chopShorten: return QT_TRANSLATE_NOOP("Phrase", "Shorten the cut from {1} to {2}");
        case Code::chopCheckKnives: return QT_TRANSLATE_NOOP("Phrase", "Check the knives and the shear bar");
        case Code::starchImpossible: return QT_TRANSLATE_NOOP("Phrase", "The coarse part holds {1} starch and the whole {2}: more than there is; check both");
        case Code::kernelsOptimal: return QT_TRANSLATE_NOOP("Phrase", "The kernels are broken as they should be");
        case Code::kernelsFermented: return QT_TRANSLATE_NOOP("Phrase", "Kernels from the silo are not broken enough: bear it in mind for feeding; nothing at the harvester mends it now");
        case Code::kernelsCloseRolls: return QT_TRANSLATE_NOOP("Phrase", "Too many whole kernels: narrow the gap of the rolls");
        case Code::kernelsNarrowGap: return QT_TRANSLATE_NOOP("Phrase", "Too many whole kernels: narrow the gap of the rolls from {1} to {2}");
        case Code::kernelsCheckRolls: return QT_TRANSLATE_NOOP("Phrase", "Too many whole kernels at a gap of {1}: check the rolls for wear, their difference in speed, and the throughput");
        case Code::temperaturesSwapped: return QT_TRANSLATE_NOOP("Phrase", "The low of {1} is above the high of {2}: check whether the two are swapped");
        case Code::dayTwice: return QT_TRANSLATE_NOOP("Phrase", "{1} stands here twice: keep one");
        case Code::daysReversed: return QT_TRANSLATE_NOOP("Phrase", "{2} lies before {1}: check both days");
        case Code::warmthNotReached: return QT_TRANSLATE_NOOP("Phrase", "{1} are not reached within {2} days: check the temperatures and the day of silking");
        case Code::harvestTooLong: return QT_TRANSLATE_NOOP("Phrase", "The fields are not cut within {1} days: check the capacity and the days of rain");
        case Code::orderWrong: return QT_TRANSLATE_NOOP("Phrase", "The order must name each of the {1} fields once");
        // density
        case Code::tooFewLoads: return QT_TRANSLATE_NOOP("Phrase", "Too few loads yet for a pace: {1} of {2}");
        case Code::noLoads: return QT_TRANSLATE_NOOP("Phrase", "No load has come yet");
        case Code::siloUnknown: return QT_TRANSLATE_NOOP("Phrase", "This silo is not defined: define it first");
        case Code::packingTimesMismatch: return QT_TRANSLATE_NOOP("Phrase", "{1} packing times for {2} machines: give one for each machine");
        case Code::heightOutsideSilo: return QT_TRANSLATE_NOOP("Phrase", "A height was read at {1}, and the silo ends at {2}: correct the place, or the silo's dimensions");
        case Code::heightAboveSilo: return QT_TRANSLATE_NOOP("Phrase", "A height of {1} was read, and wall and crown end at {2}: correct the reading, or the silo's dimensions");
        case Code::heightsWithoutCrop: return QT_TRANSLATE_NOOP("Phrase", "No height shows any crop: read the heights where crop lies");
        case Code::surveyWithoutLoads: return QT_TRANSLATE_NOOP("Phrase", "Heights were read, but no load came before them");
        case Code::surveyWithoutRoom: return QT_TRANSLATE_NOOP("Phrase", "{1} came since the heights before, and the surface has not risen: check both readings and the loads");
        case Code::surveyImpossible: return QT_TRANSLATE_NOOP("Phrase", "{2} in {3} would be {1}, outside {4} to {5}: check the heights and the loads");
        case Code::layerAssumed: return QT_TRANSLATE_NOOP("Phrase", "Layer not seen: {1} assumed");
        case Code::layerHeldToRange: return QT_TRANSLATE_NOOP("Phrase", "A layer of {1} is outside the equation: counted as {2}");
        case Code::dryMatterOutsideCrop: return QT_TRANSLATE_NOOP("Phrase", "Dry matter {1} is outside the survey's {2} to {3}");
        case Code::noMachines: return QT_TRANSLATE_NOOP("Phrase", "No machine");
        case Code::noPackingTime: return QT_TRANSLATE_NOOP("Phrase", "No machine is packing");
        case Code::machineAddsNothing: return QT_TRANSLATE_NOOP("Phrase", "Machine {1} ({2}) adds nothing by this equation; it serves better at spreading");
        case Code::saturated: return QT_TRANSLATE_NOOP("Phrase", "Saturated at {1}: more packing does not help; expect effluent");
        case Code::saturationUnknown: return QT_TRANSLATE_NOOP("Phrase", "No saturation limit is known at {1} (known from {2} to {3})");
        case Code::targetAboveSaturation: return QT_TRANSLATE_NOOP("Phrase", "The wanted {1} cannot be reached; the limit is {2}");
        case Code::densityOutsideSurvey: return QT_TRANSLATE_NOOP("Phrase", "{1} is outside the survey's {2} to {3}");
        case Code::yardsticksDisagree: return QT_TRANSLATE_NOOP("Phrase", "The yardsticks disagree. Met: {1}. Not met: {2}");
        case Code::yardstickNorthAmerica: return QT_TRANSLATE_NOOP("Phrase", "the packing mass of North America, as fed");
        case Code::yardstickThirdOfHourlyMass: return QT_TRANSLATE_NOOP("Phrase", "a third of the hourly mass, as fed");
        case Code::yardstickQuarterOfHourlyMass: return QT_TRANSLATE_NOOP("Phrase", "a quarter of the hourly mass, as fed");
        case Code::yardstickFrance: return QT_TRANSLATE_NOOP("Phrase", "the packing mass of France, in dry matter");
        case Code::yardstickBrittany: return QT_TRANSLATE_NOOP("Phrase", "the packing mass of Brittany, in dry matter");
        case Code::yardstickPasses: return QT_TRANSLATE_NOOP("Phrase", "three passes over each layer");
        case Code::yardstickTarget: return QT_TRANSLATE_NOOP("Phrase", "the target, by the estimate");
        case Code::workingLayer: return QT_TRANSLATE_NOOP("Phrase", "Layer {1}");
        case Code::workingPackingTime: return QT_TRANSLATE_NOOP("Phrase", "Packing time {1} counted, {2} in all; {3} of {4} machines count");
        case Code::workingPackingFactor: return QT_TRANSLATE_NOOP("Phrase", "Packing factor {1} (US {2}) at {3} dry matter");
        case Code::workingBracket: return QT_TRANSLATE_NOOP("Phrase", "First bracket {1}");
        case Code::workingDepthFactor: return QT_TRANSLATE_NOOP("Phrase", "Depth factor at {1}: {2}");
        case Code::workingSaturation: return QT_TRANSLATE_NOOP("Phrase", "Saturation {1} at {2}");
        case Code::workingPoreFree: return QT_TRANSLATE_NOOP("Phrase", "Pore-free {1} at {2}");
        case Code::workingLevel: return QT_TRANSLATE_NOOP("Phrase", "Site level x {1}");
        case Code::workingMedian: return QT_TRANSLATE_NOOP("Phrase", "Estimate {1}");
        case Code::workingBand: return QT_TRANSLATE_NOOP("Phrase", "80 % band {1} to {2}, s = {3}");
        case Code::workingTarget: return QT_TRANSLATE_NOOP("Phrase", "Target {1} (minimum {2}, porosity {3}, limit {4})");
        case Code::workingChance: return QT_TRANSLATE_NOOP("Phrase", "Chance of the target {1}");
        case Code::calibrationGain: return QT_TRANSLATE_NOOP("Phrase", "Cores narrowed the band: {1} of them, from +-{2} to +-{3}");
        case Code::calibrationGainMixed: return QT_TRANSLATE_NOOP("Phrase", "Cores ({1}), face balances ({2}) and height surveys ({3}) narrowed the band from +-{4} to +-{5}");
        case Code::calibrationWidened: return QT_TRANSLATE_NOOP("Phrase", "The measurements ({1}) differ by more than was taken for usual: the band went from +-{2} to +-{3}");
        case Code::coreIsLoose: return QT_TRANSLATE_NOOP("Phrase", "Loose material from the loader gives dry matter, chop and feed value, no density: cut a block, or core by machine");
        case Code::coreOutsideLayers: return QT_TRANSLATE_NOOP("Phrase", "Nothing recorded lies where this core came from: check its position and the loads");
        // advice
        case Code::tractorNameTwice: return QT_TRANSLATE_NOOP("Phrase", "Two tractors are called {1}: give each a name of its own");
        case Code::adviceAsNow: return QT_TRANSLATE_NOOP("Phrase", "Go on as now");
        case Code::advicePack: return QT_TRANSLATE_NOOP("Phrase", "Let {1} pack all the time");
        case Code::advicePackPart: return QT_TRANSLATE_NOOP("Phrase", "Let {1} pack {2} of its time");
        case Code::adviceSpread: return QT_TRANSLATE_NOOP("Phrase", "Let {1} spread");
        case Code::adviceLeave: return QT_TRANSLATE_NOOP("Phrase", "Let {1} go");
        case Code::adviceLayer: return QT_TRANSLATE_NOOP("Phrase", "Spread layers of {1}");
        case Code::adviceDelivery: return QT_TRANSLATE_NOOP("Phrase", "Slow the delivery to {1}");
        case Code::adviceGain: return QT_TRANSLATE_NOOP("Phrase", "{1} -> {2}, chance of {3} from {4} to {5}");
        case Code::adviceThinnerGain: return QT_TRANSLATE_NOOP("Phrase", "{1} -> {2} passes over each layer; by the equation up to {3}, of which nothing is counted");
        case Code::adviceCosts: return QT_TRANSLATE_NOOP("Phrase", "costs {1} more");
        case Code::adviceSaves: return QT_TRANSLATE_NOOP("Phrase", "saves {1}");
        case Code::adviceKeeps: return QT_TRANSLATE_NOOP("Phrase", "the chance of {1} is then still {2}");
        case Code::adviceAllIsWell: return QT_TRANSLATE_NOOP("Phrase", "The chance of {1} is {2}, {3} wanted: nothing to change");
        case Code::adviceSaturated: return QT_TRANSLATE_NOOP("Phrase", "The pores are full at {1}: more packing does not help");
        case Code::adviceClosest: return QT_TRANSLATE_NOOP("Phrase", "the closest that can be had to a chance of {1}");
        case Code::adviceNothingHelps: return QT_TRANSLATE_NOOP("Phrase", "The chance of {1} is {2}, and nothing at hand brings it closer");
        case Code::adviceChosen: return QT_TRANSLATE_NOOP("Phrase", "Chosen");
        case Code::adviceChangesNothing: return QT_TRANSLATE_NOOP("Phrase", "Changes nothing");
        case Code::adviceTooSlow: return QT_TRANSLATE_NOOP("Phrase", "{1} is less than half of the present {2}");
        case Code::adviceFallsShort: return QT_TRANSLATE_NOOP("Phrase", "The chance stays at {1}, {2} wanted");
        case Code::adviceFewPasses: return QT_TRANSLATE_NOOP("Phrase", "{1} passes over each layer, at least {2} asked");
        case Code::adviceDearer: return QT_TRANSLATE_NOOP("Phrase", "Would do too, at more cost or with more change");
        case Code::adviceNotNeeded: return QT_TRANSLATE_NOOP("Phrase", "Not needed for the target");
        // attention
        case Code::cautionRampSlope: return QT_TRANSLATE_NOOP("Phrase", "Packing slope: not steeper than {1}");
        case Code::cautionRampSteep: return QT_TRANSLATE_NOOP("Phrase", "The ramp of {1} is steeper than {2}: machines can tip or slide");
        case Code::cautionCrossSlope: return QT_TRANSLATE_NOOP("Phrase", "Slope across the direction of travel: not steeper than {1}");
        case Code::cautionCrownSteep: return QT_TRANSLATE_NOOP("Phrase", "The crown falls to the walls at {1}, steeper than {2} across the direction of travel: machines can tip over the wall");
        case Code::cautionFillAboveWall: return QT_TRANSLATE_NOOP("Phrase", "Fill {1} above the wall, where the limit is {2}: walls can give way and machines go over the edge");
        case Code::cautionWorkingWidth: return QT_TRANSLATE_NOOP("Phrase", "Working width at the top: at least {1} machine widths, duals included");
        case Code::cautionWidthNarrow: return QT_TRANSLATE_NOOP("Phrase", "A width of {1} is less than {3} times the {2} of the widest machine");
        case Code::cautionFaceDistance: return QT_TRANSLATE_NOOP("Phrase", "Stay back from the face {1} times its height, here {2}: it can fall without warning");
        case Code::cautionCores: return QT_TRANSLATE_NOOP("Phrase", "No person takes cores at the face: sample what a loader has taken down");
        case Code::cautionPeopleOnFoot: return QT_TRANSLATE_NOOP("Phrase", "Nobody on foot while machines pack; a spotter has no other duty and wears high-visibility clothing");
        case Code::cautionSiloGas: return QT_TRANSLATE_NOOP("Phrase", "Silo gas: {1} days since the last load, it is expected for {2}; it can kill before it is seen or smelled");
        case Code::cautionShiftHours: return QT_TRANSLATE_NOOP("Phrase", "{1} h at work, where the limit is {2} h: tired drivers have more accidents");
        case Code::cautionPowerLines: return QT_TRANSLATE_NOOP("Phrase", "Power lines: raised bodies keep {1} away up to 50 kV and {2} more for each 10 kV beyond; the local rule comes first");
        case Code::cautionDriverAge: return QT_TRANSLATE_NOOP("Phrase", "Drivers of packing tractors: at least {1} years old; local law comes first");
        case Code::cautionWalls: return QT_TRANSLATE_NOOP("Phrase", "No limit of the walls is entered: copy it from their plate or the designer's letter; nobody can judge a wall by eye");
        case Code::cautionDrySilage: return QT_TRANSLATE_NOOP("Phrase", "Dry matter {1}, above {2}: silage this dry can heat and burn");
        case Code::cautionStanding: return QT_TRANSLATE_NOOP("Phrase", "General published precautions: they do not replace a risk assessment, local law and codes, the machine's manual or a licensed engineer or safety professional. If anything looks wrong, stop work.");
        // intake
        case Code::columnMissing: return QT_TRANSLATE_NOOP("Phrase", "No column tells this; the columns are {1}: name one after it");
        case Code::columnTwice: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" and \"{2}\" both tell this: rename the one that does not");
        case Code::rowRagged: return QT_TRANSLATE_NOOP("Phrase", "The row has {1} cells and the header {2}: check its delimiters and quotation marks");
        case Code::numberUnreadable: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a number in this file: write digits and the file's decimal sign alone");
        case Code::wordUnknown: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a word known here: use one of {2}");
        case Code::nameUnknown: return QT_TRANSLATE_NOOP("Phrase", "Nothing on this farm is called \"{1}\": define it, or correct the name");
        case Code::nameShared: return QT_TRANSLATE_NOOP("Phrase", "Several things on this farm are called \"{1}\": give them names that differ");
        case Code::wallTimeUnreadable: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a date and time: write it like 15.09.2026 14:25 or 2026-09-15 14:25:30");
        case Code::dateOrderAmbiguous: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" can be read day first or month first: say which (dateOrder: dayFirst or monthFirst)");
        case Code::clockChanged: return QT_TRANSLATE_NOOP("Phrase", "The clocks changed then: the first time that fits, {1}, is taken");
        case Code::massUnitMissing: return QT_TRANSLATE_NOOP("Phrase", "The weights have no unit: put it into the header, like net_kg, or say it (massUnit: kg, t, lb or ton)");
        case Code::massUnitUnknown: return QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is not a unit for a truck's weight: use kg, t, lb or ton");
        case Code::grossBelowTare: return QT_TRANSLATE_NOOP("Phrase", "Gross {1} is less than tare {2}: check whether the two are swapped");
        case Code::weighingsSwapped: return QT_TRANSLATE_NOOP("Phrase", "Gross {1} and tare {2} stood in each other's column; the net weight bears it out");
        case Code::netDisagrees: return QT_TRANSLATE_NOOP("Phrase", "The net weight is {1}, but gross less tare is {2}: check the ticket");
        case Code::ticketRepeated: return QT_TRANSLATE_NOOP("Phrase", "Ticket {1} is there already on that day, with other figures: correct the load that is recorded, or leave this row out");
        case Code::dishImpossible: return QT_TRANSLATE_NOOP("Phrase", "A dish cannot weigh {1} wet and {2} dry: check the weights");
        case Code::fieldUnknown: return QT_TRANSLATE_NOOP("Phrase", "No field of this name is known here: correct the name or take it out");
        case Code::farmFileVersion: return QT_TRANSLATE_NOOP("Phrase", "The farm file is of version {1}; this program reads version 1");
        // review
        case Code::dayUnknown: return QT_TRANSLATE_NOOP("Phrase", "Nothing is recorded on {1}: choose a day of the season");
        case Code::reviewDaySheet: return QT_TRANSLATE_NOOP("Phrase", "Day sheet of {1}, {2}");
        case Code::reviewState: return QT_TRANSLATE_NOOP("Phrase", "State");
        case Code::reviewClosed: return QT_TRANSLATE_NOOP("Phrase", "Closed at {1}");
        case Code::reviewNotClosed: return QT_TRANSLATE_NOOP("Phrase", "The day is not closed; figures up to {1}");
        case Code::reviewNothing: return QT_TRANSLATE_NOOP("Phrase", "Nothing recorded");
        case Code::reviewNotNamed: return QT_TRANSLATE_NOOP("Phrase", "(not named)");
        case Code::reviewTotal: return QT_TRANSLATE_NOOP("Phrase", "Total");
        case Code::reviewGoesOn: return QT_TRANSLATE_NOOP("Phrase", "goes on");
        case Code::reviewDeliveries: return QT_TRANSLATE_NOOP("Phrase", "What came in");
        case Code::reviewDryMatter: return QT_TRANSLATE_NOOP("Phrase", "Dry-matter samples");
        case Code::reviewMeanDryMatter: return QT_TRANSLATE_NOOP("Phrase", "Mean of what came in, by mass: {1}, on {2} samples");
        case Code::reviewTractors: return QT_TRANSLATE_NOOP("Phrase", "Tractors");
        case Code::reviewDensity: return QT_TRANSLATE_NOOP("Phrase", "Density when full, at opening");
        case Code::reviewOfSilo: return QT_TRANSLATE_NOOP("Phrase", "Of {1}:");
        case Code::reviewNoEstimate: return QT_TRANSLATE_NOOP("Phrase", "No estimate for: {1}");
        case Code::readingToday: return QT_TRANSLATE_NOOP("Phrase", "the day's crop");
        case Code::readingSilo: return QT_TRANSLATE_NOOP("Phrase", "all in the silo");
        case Code::reviewAdvice: return QT_TRANSLATE_NOOP("Phrase", "Advice");
        case Code::adviceWasShown: return QT_TRANSLATE_NOOP("Phrase", "shown");
        case Code::adviceWasAccepted: return QT_TRANSLATE_NOOP("Phrase", "taken");
        case Code::adviceWasDeclined: return QT_TRANSLATE_NOOP("Phrase", "declined");
        case Code::reviewPauses: return QT_TRANSLATE_NOOP("Phrase", "Pauses");
        case Code::reviewLayers: return QT_TRANSLATE_NOOP("Phrase", "Layers seen");
        case Code::layerMeasured: return QT_TRANSLATE_NOOP("Phrase", "measured");
        case Code::layerByLoads: return QT_TRANSLATE_NOOP("Phrase", "by loads to cover");
        case Code::reviewHeights: return QT_TRANSLATE_NOOP("Phrase", "Heights");
        case Code::reviewNotes: return QT_TRANSLATE_NOOP("Phrase", "Notes");
        case Code::reviewCautions: return QT_TRANSLATE_NOOP("Phrase", "Cautions shown");
        case Code::reviewQuestions: return QT_TRANSLATE_NOOP("Phrase", "Still open");
        case Code::reviewNoQuestions: return QT_TRANSLATE_NOOP("Phrase", "No open question");
        case Code::methodOven: return QT_TRANSLATE_NOOP("Phrase", "oven");
        case Code::methodMicrowave: return QT_TRANSLATE_NOOP("Phrase", "microwave");
        case Code::methodMeter: return QT_TRANSLATE_NOOP("Phrase", "meter");
        case Code::methodEstimate: return QT_TRANSLATE_NOOP("Phrase", "by eye");
        case Code::columnSilo: return QT_TRANSLATE_NOOP("Phrase", "Silo");
        case Code::columnTruck: return QT_TRANSLATE_NOOP("Phrase", "Truck");
        case Code::columnField: return QT_TRANSLATE_NOOP("Phrase", "Field");
        case Code::columnHour: return QT_TRANSLATE_NOOP("Phrase", "From");
        case Code::columnLoads: return QT_TRANSLATE_NOOP("Phrase", "Loads");
        case Code::columnMass: return QT_TRANSLATE_NOOP("Phrase", "As fed");
        case Code::columnDryMass: return QT_TRANSLATE_NOOP("Phrase", "Dry");
        case Code::columnDryMatter: return QT_TRANSLATE_NOOP("Phrase", "DM");
        case Code::columnDelivery: return QT_TRANSLATE_NOOP("Phrase", "Delivery");
        case Code::columnTime: return QT_TRANSLATE_NOOP("Phrase", "Time");
        case Code::columnMethod: return QT_TRANSLATE_NOOP("Phrase", "Method");
        case Code::columnTractor: return QT_TRANSLATE_NOOP("Phrase", "Tractor");
        case Code::columnMachineMass: return QT_TRANSLATE_NOOP("Phrase", "Mass");
        case Code::columnPackingHours: return QT_TRANSLATE_NOOP("Phrase", "Packing, h");
        case Code::columnSpreadingHours: return QT_TRANSLATE_NOOP("Phrase", "Spreading, h");
        case Code::columnCost: return QT_TRANSLATE_NOOP("Phrase", "Cost");
        case Code::columnReading: return QT_TRANSLATE_NOOP("Phrase", "Reading");
        case Code::columnMedian: return QT_TRANSLATE_NOOP("Phrase", "Density");
        case Code::columnLow: return QT_TRANSLATE_NOOP("Phrase", "80 % from");
        case Code::columnHigh: return QT_TRANSLATE_NOOP("Phrase", "80 % to");
        case Code::columnTarget: return QT_TRANSLATE_NOOP("Phrase", "Target");
        case Code::columnChance: return QT_TRANSLATE_NOOP("Phrase", "Chance of the target");
        case Code::columnPorosity: return QT_TRANSLATE_NOOP("Phrase", "Porosity");
        case Code::columnPorosityLow: return QT_TRANSLATE_NOOP("Phrase", "Porosity, 80 % from");
        case Code::columnPorosityHigh: return QT_TRANSLATE_NOOP("Phrase", "Porosity, 80 % to");
        case Code::columnPackingTime: return QT_TRANSLATE_NOOP("Phrase", "Packing time");
        case Code::columnAdvice: return QT_TRANSLATE_NOOP("Phrase", "What");
        case Code::columnDecision: return QT_TRANSLATE_NOOP("Phrase", "Decision");
        case Code::columnBefore: return QT_TRANSLATE_NOOP("Phrase", "Density before");
        case Code::columnAfter: return QT_TRANSLATE_NOOP("Phrase", "Density after");
        case Code::columnChanceBefore: return QT_TRANSLATE_NOOP("Phrase", "Chance before");
        case Code::columnChanceAfter: return QT_TRANSLATE_NOOP("Phrase", "Chance after");
        case Code::columnBegin: return QT_TRANSLATE_NOOP("Phrase", "Begin");
        case Code::columnEnd: return QT_TRANSLATE_NOOP("Phrase", "End");
        case Code::columnReason: return QT_TRANSLATE_NOOP("Phrase", "Reason");
        case Code::columnThickness: return QT_TRANSLATE_NOOP("Phrase", "Thickness");
        case Code::columnReadings: return QT_TRANSLATE_NOOP("Phrase", "Readings");
        case Code::columnLowest: return QT_TRANSLATE_NOOP("Phrase", "Lowest");
        case Code::columnMean: return QT_TRANSLATE_NOOP("Phrase", "Mean");
        case Code::columnHighest: return QT_TRANSLATE_NOOP("Phrase", "Highest");
        case Code::columnNote: return QT_TRANSLATE_NOOP("Phrase", "Note");
        case Code::columnCaution: return QT_TRANSLATE_NOOP("Phrase", "Caution");
        case Code::questionNotWeighed: return QT_TRANSLATE_NOOP("Phrase", "{1} of {2} loads were not weighed: add their tickets, or weigh some of each truck");
        case Code::questionNoField: return QT_TRANSLATE_NOOP("Phrase", "{1} of {2} loads name no field");
        case Code::questionDryMatterAssumed: return QT_TRANSLATE_NOOP("Phrase", "{1} of {2} loads stand on an assumed dry matter: take a sample");
        case Code::questionSampleOverdue: return QT_TRANSLATE_NOOP("Phrase", "{1} without a dry-matter sample while crop came in, {2} asked at most");
        case Code::questionLayerNotSeen: return QT_TRANSLATE_NOOP("Phrase", "No layer was seen in {1} this day: measure one");
        case Code::questionStillAtWork: return QT_TRANSLATE_NOOP("Phrase", "{1} is still at work in the records: enter when it stopped");
        case Code::questionMassAssumed: return QT_TRANSLATE_NOOP("Phrase", "The mass of {1}, {2}, is the usual one of its class: weigh it");
        case Code::questionNoCost: return QT_TRANSLATE_NOOP("Phrase", "{1} has no cost an hour: enter it");
        case Code::questionUnknownKinds: return QT_TRANSLATE_NOOP("Phrase", "{1} entries are of kinds that this version does not know: they are kept and not counted");
        case Code::questionWaiting: return QT_TRANSLATE_NOOP("Phrase", "{1} corrections wait for the entry they speak of");
    }
    // clang-format on
    throw std::logic_error("a code without a phrase");
}

}  // namespace treadwell::words
