#include "app/words/phrases/tables.h"
#include "core/formats/codes.h"

namespace treadwell::words {

const std::vector<Phrase>& formatsPhrases() {
    // A line a phrase, so that the table can be read.
    // clang-format off
    static const std::vector<Phrase> kPhrases{
        {code::textIsUtf16, QT_TRANSLATE_NOOP("Phrase", "The file is written in UTF-16: save it as text in UTF-8")},
        {code::encodingAmbiguous, QT_TRANSLATE_NOOP("Phrase", "A character of this file is \"{1}\" in one encoding and \"{2}\" in another: say which it uses (encoding: windows1252 or latin9)")},
        {code::encodingWrong, QT_TRANSLATE_NOOP("Phrase", "The file is not UTF-8: say which encoding it uses (encoding: windows1252 or latin9)")},
        {code::delimiterAmbiguous, QT_TRANSLATE_NOOP("Phrase", "The columns may be parted by {1} or by {2}: say which (delimiter: comma, semicolon, tab or bar)")},
        {code::headerMissing, QT_TRANSLATE_NOOP("Phrase", "The file has no header row: its first line must name the columns")},
        {code::quoteOpen, QT_TRANSLATE_NOOP("Phrase", "A quotation mark opens here and never closes: check the quotation marks from this line on")},
        {code::decimalAmbiguous, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" can be read in two ways: say which decimal sign the file uses (decimalSign: point or comma)")},
        {code::decimalMixed, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" has a point and \"{2}\" a comma as decimal sign: say which the file uses (decimalSign: point or comma)")},
        {code::frameUnreadable, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" is no frame of this scale: check the profile, the baud rate and the parity")},
        {code::frameCut, QT_TRANSLATE_NOOP("Phrase", "\"{1}\" may be the rest of a frame: the next one is awaited")},
        {code::frameTooLong, QT_TRANSLATE_NOOP("Phrase", "No end of a frame came within {1} characters: check the profile, the baud rate and the parity")},
        {code::frameSumWrong, QT_TRANSLATE_NOOP("Phrase", "The sum of the frame \"{1}\" is wrong: check the wire")},
        {code::gpxUnreadable, QT_TRANSLATE_NOOP("Phrase", "The GPX file breaks off or is damaged here ({1}): export it anew")},
        {code::gpxDoctype, QT_TRANSLATE_NOOP("Phrase", "The file declares a document type, which no GPX file needs and which could bring in other files: export it anew")},
        {code::gpxRootWrong, QT_TRANSLATE_NOOP("Phrase", "This is no GPX file but XML that begins with \"{1}\": choose the track's file")},
    };
    // clang-format on
    return kPhrases;
}

}  // namespace treadwell::words
