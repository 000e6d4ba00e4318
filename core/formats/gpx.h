#pragma once

#include "core/formats/fix.h"

#include <memory>

namespace treadwell::formats {

/// Reads the track points of GPX 1.0 and 1.1 as the file comes, in constant memory; way points and routes are
/// no record of where somebody drove. A track segment begins where reception was lost. The same bytes give
/// the same fixes in whatever pieces they come.
class GpxReader final {
  public:
    explicit GpxReader(FixSink sink);
    GpxReader(GpxReader&&) noexcept;
    GpxReader& operator=(GpxReader&&) noexcept;
    ~GpxReader();

    /// Errors, each with line and column: gpxUnreadable with what the XML library says; gpxDoctype, since a
    /// document type could bring in other files; gpxRootWrong where it is some other XML. None is taken back
    /// by later bytes.
    [[nodiscard]] Result<void> take(std::string_view bytes);
    /// The file ends. Errors: gpxUnreadable where it is cut off.
    [[nodiscard]] Result<void> finish();

  private:
    class State;
    std::unique_ptr<State> m_state;
};

}  // namespace treadwell::formats
