#include "core/session/device_memory.h"

#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/base/hex.h"
#include "core/base/number_text.h"

#include <fcntl.h>

#include <cerrno>
#include <system_error>

namespace treadwell::session {

namespace {

// One line of fixed width, so that it is rewritten in place: device, sequence, hash.
constexpr std::size_t kDeviceWidth = 36;
constexpr std::size_t kSequenceWidth = 20;
constexpr std::size_t kHashWidth = 64;
constexpr std::size_t kLineWidth = kDeviceWidth + 1 + kSequenceWidth + 1 + kHashWidth + 1;

std::string lineOf(const Remembered& remembered) {
    const std::string sequence = std::to_string(remembered.sequence);
    return remembered.device.value.text() + ' ' + std::string(kSequenceWidth - sequence.size(), '0') +
           sequence + ' ' + toHex(remembered.hash) + '\n';
}

}  // namespace

std::optional<Remembered> recall(const std::filesystem::path& memory) {
    const auto content = readFile(memory);
    if (!content || content->size() != kLineWidth) return std::nullopt;
    const std::string_view line = *content;
    const auto device = Uuid::fromText(line.substr(0, kDeviceWidth));
    const auto sequence = integerFromText(line.substr(kDeviceWidth + 1, kSequenceWidth));
    Remembered remembered;
    if (!device || !sequence ||
        !fromHex(line.substr(kDeviceWidth + 1 + kSequenceWidth + 1, kHashWidth), remembered.hash)) {
        return std::nullopt;
    }
    remembered.device.value = *device;
    remembered.sequence = *sequence;
    return remembered;
}

Result<DeviceMemory> DeviceMemory::start(const std::filesystem::path& memory, const Remembered& remembered) {
    if (auto written = writeFileAtomically(memory, lineOf(remembered)); !written) {
        return tl::unexpected(written.error());
    }
    Descriptor file{::open(memory.c_str(), O_WRONLY | O_CLOEXEC)};
    if (!file.isOpen()) {
        return fail(code::fileUnwritable, "file", memory.string(), std::generic_category().message(errno));
    }
    return DeviceMemory{std::move(file), remembered.device};
}

void DeviceMemory::follow(std::int64_t sequence, const Hash& hash) {
    const std::string line = lineOf({m_device, sequence, hash});
    // Where this fails the memory stays behind, as after a power cut.
    [[maybe_unused]] const auto written = ::pwrite(m_file.get(), line.data(), line.size(), 0);
}

}  // namespace treadwell::session
