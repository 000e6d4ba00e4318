#pragma once

#include "app/words/words.h"
#include "core/review/document.h"

#include <QByteArray>

class QPagedPaintDevice;

namespace treadwell::report {

enum class Paper : std::uint8_t { a4, letter };

/// The document as a PDF: vectors and embedded letters alone, black and grey, pages numbered. Needs an
/// application.
[[nodiscard]] QByteArray pdfOf(const review::Document& document, const words::Style& style, Paper paper);

/// The same on any paper device whose page is set up, such as a printer; false where it cannot be begun.
[[nodiscard]] bool printOn(QPagedPaintDevice& device, const review::Document& document,
                           const words::Style& style);

}  // namespace treadwell::report
