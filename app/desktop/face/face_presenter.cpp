#include "app/desktop/face/face_presenter.h"

#include "core/attention/cautions.h"
#include "core/review/codes.h"

#include <algorithm>

namespace treadwell::face_page {

widgets::FacePicture pictureOf(const face::Face& face, const farm::Silo& silo, const fill::Speech& speech) {
    widgets::FacePicture picture;
    if (!face.map) {
        if (face.reason) picture.reason = speech.say(*face.reason);
        return picture;
    }
    picture.along = face.map->along;
    picture.width = silo.width;
    picture.columns = face.map->columns;
    for (const face::MapCell& cell : face.map->cells) {
        picture.pieces.push_back({cell.across, cell.up, cell.measured, cell.predicted});
        picture.height = std::max(picture.height, cell.up);
    }
    // The pieces' middles lie half a piece below the edge.
    const double rows = static_cast<double>(picture.pieces.size()) / static_cast<double>(picture.columns);
    picture.height = picture.height * (rows / (rows - 0.5));
    for (const face::FaceCore& core : face.cores) {
        const double apart = (core.core.what.along - face.map->along).metres();
        if (core.measured && core.up && std::abs(apart) <= face::kHalfFace.metres())
            picture.cores.push_back({core.core.what.across, *core.up, *core.measured});
    }
    return picture;
}

std::vector<Length> facesOf(const face::Face& face) {
    std::vector<Length> faces;
    for (const face::FaceCore& core : face.cores) {
        if (core.measured && core.core.what.origin != entries::CoreOrigin::faceBalance)
            faces.push_back(core.core.what.along);
    }
    std::ranges::sort(faces, std::greater{});
    std::vector<Length> apart;
    for (const Length along : faces) {
        if (apart.empty() || (apart.back() - along) > face::kHalfFace) apart.push_back(along);
    }
    return apart;
}

samples_page::Lines cautionsAt(const farm::Silo& silo, Instant now, const fill::Speech& speech) {
    samples_page::Lines lines;
    const attention::CautionSituation open{.stage = attention::Stage::open};
    for (const attention::CautionNow& caution : attention::cautionsFor(silo, open, now)) {
        if (caution.caution == attention::Caution::faceDistance ||
            caution.caution == attention::Caution::cores)
            lines.push_back({speech.say(caution.message), true});
    }
    return lines;
}

review::Document feedingOf(const season::Season& season, const farm::Silo& silo, Instant now,
                           const review::FeedQuestion& question) {
    auto sheet = review::feedSheet(season, silo, now, question);
    if (sheet) return *std::move(sheet);
    return {"feedSheet",
            {code::reviewFeedSheet, {season.farm().farm, silo.name}},
            {{"end", code::reviewFeedEnd, {sheet.error().message}}}};
}

}  // namespace treadwell::face_page
