// The samples beside the dry matter: chop, kernels, and what was seen of the fields before the harvest. The
// knives grow dull on the second day, and the drier crop of the third breaks finer, until the cut is changed.
#include "examples/drawing.h"

#include <array>
#include <numeric>

namespace example {

std::string sieveFile() {
    struct Shaken {
        WallSeconds time;
        const char* field;
        std::array<int, 4> perMille;
    };
    constexpr std::array kShaken{Shaken{at(1, 10, 40), "Lurrenbreite", {52, 584, 271, 93}},
                                 Shaken{at(1, 14, 10), "Lurrenbreite", {47, 571, 284, 98}},
                                 Shaken{at(2, 10, 20), "Quornstieg", {44, 548, 306, 102}},
                                 Shaken{at(2, 15, 10), "Quornstieg", {36, 511, 342, 111}},
                                 Shaken{at(3, 10, 15), "Vellerbruch", {21, 372, 478, 129}},
                                 Shaken{at(3, 10, 30), "Vellerbruch", {19, 384, 471, 126}},
                                 Shaken{at(3, 12, 55), "Vellerbruch", {38, 527, 338, 97}}};
    Lot lot{20260916};
    std::string text = "time,field,sieves_mm,masses_g,before_g\n";
    for (const Shaken& shaken : kShaken) {
        const std::int64_t sample = lot.between(1980, 2240);  // decigrams
        std::array<std::int64_t, 4> masses{};
        for (std::size_t i = 0; i < masses.size(); ++i)
            masses[i] = sample * (shaken.perMille[i] + lot.between(-3, 3)) / 1000;
        const std::int64_t before = std::accumulate(masses.begin(), masses.end(), lot.between(5, 30));
        text += stamp(shaken.time) + ',' + shaken.field + ",19/8/4,";
        for (std::size_t i = 0; i < masses.size(); ++i) text += (i == 0 ? "" : "/") + decimal(masses[i], 1);
        text += ',' + decimal(before, 1) + '\n';
    }
    return text;
}

std::string kernelFile() {
    struct Counted {
        WallSeconds time;
        const char* field;
        int kernels;
    };
    constexpr std::array kCounted{
        Counted{at(1, 10, 50), "Lurrenbreite", 1}, Counted{at(1, 14, 20), "Lurrenbreite", 2},
        Counted{at(2, 10, 30), "Quornstieg", 2},   Counted{at(2, 15, 20), "Quornstieg", 3},
        Counted{at(3, 10, 20), "Vellerbruch", 5},  Counted{at(3, 13, 0), "Vellerbruch", 2}};
    std::string text = "time,field,kernels\n";
    for (const Counted& counted : kCounted)
        text += stamp(counted.time) + ',' + counted.field + ',' + std::to_string(counted.kernels) + '\n';
    return text;
}

std::string chopFile() {
    return "time,cut_mm,roll gap_mm,cutting height_cm,processor\n" + stamp(at(1, 9, 40)) +
           ",17,2.5,18,rolls\n" + stamp(at(2, 9, 15)) + ",16,2.5,18,rolls\n" + stamp(at(3, 10, 45)) +
           ",18,2,18,rolls\n";
}

std::string temperatureFile() {
    Lot lot{20260715};
    std::string text = "date,low_c,high_c\n";
    for (int day = 0; day < 63; ++day) {  // 14 July to 14 September
        const int month = day < 18 ? 7 : day < 49 ? 8 : 9;
        const int date = day < 18 ? 14 + day : day < 49 ? day - 17 : day - 48;
        const std::int64_t cooler = day;  // tenths of a degree
        text += "2026-" + padded(month, 2) + '-' + padded(date, 2) + ',' +
                decimal(142 + lot.between(-28, 22) - cooler, 1) + ',' +
                decimal(268 + lot.between(-45, 38) - cooler, 1) + '\n';
    }
    return text;
}

std::string fieldFile() {
    return "time,field,planted,silked,hybrid,hybrid days,milk line_percent,dry matter_percent\n"
           "2026-07-24T18:00:00+02:00,Lurrenbreite,2026-04-29,2026-07-20,Tarn,98,,\n"
           "2026-07-24T18:10:00+02:00,Quornstieg,2026-04-27,2026-07-19,Tarn,98,,\n"
           "2026-07-24T18:20:00+02:00,Vellerbruch,2026-04-22,2026-07-15,Ilm,101,,\n"
           "2026-08-28T17:00:00+02:00,Vellerbruch,,,,,30,29.4\n"
           "2026-09-02T17:00:00+02:00,Lurrenbreite,,,,,25,26.3\n"
           "2026-09-02T17:30:00+02:00,Quornstieg,,,,,35,27.1\n"
           "2026-09-02T18:00:00+02:00,Vellerbruch,,,,,50,31.8\n"
           "2026-09-08T17:00:00+02:00,Lurrenbreite,,,,,40,29.2\n"
           "2026-09-08T17:30:00+02:00,Quornstieg,,,,,55,30.8\n"
           "2026-09-08T18:00:00+02:00,Vellerbruch,,,,,65,35.2\n"
           "2026-09-13T17:00:00+02:00,Lurrenbreite,,,,,55,32.4\n"
           "2026-09-13T17:30:00+02:00,Quornstieg,,,,,65,33.0\n";
}

}  // namespace example
