#include "app/scale/line.h"

#include "core/base/codes.h"
#include "core/intake/codes.h"
#include "tests/support/wire.h"

#include <gtest/gtest.h>

namespace treadwell::scale {
namespace {

using testing_support::PseudoTerminal;
using testing_support::ScalePort;
using namespace std::chrono_literals;

Code codeOf(const LineSettings& settings) {
    const auto line = Line::open(settings);
    return line ? code::valueMissing : line.error().code();
}

TEST(Line, BringsEveryByteOfASerialDevice) {
    PseudoTerminal terminal;
    auto line = Line::open({terminal.place()});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->read(10ms).value(), "");
    std::string all;
    for (int byte = 0; byte < 256; ++byte) all += static_cast<char>(byte);
    terminal.play(all);
    std::string heard;
    for (int i = 0; i < 100 && heard.size() < all.size(); ++i) heard += line->read(100ms).value();
    EXPECT_EQ(heard, all);
    ASSERT_TRUE(line->ask("W\r"));
    EXPECT_EQ(terminal.asked(), "W\r");
}

TEST(Line, TellsThatItWasCut) {
    PseudoTerminal terminal;
    auto line = Line::open({terminal.place()});
    ASSERT_TRUE(line);
    terminal.cut();
    const auto heard = line->read(100ms);
    ASSERT_FALSE(heard);
    EXPECT_EQ(heard.error().code(), code::scaleLineEnded);
    EXPECT_EQ(line->ask("W\r").error().code(), code::scaleLineEnded);
}

TEST(Line, BringsTheBytesOfAConnectionUntilItEnds) {
    ScalePort port;
    auto line = Line::open({port.place()});
    ASSERT_TRUE(line);
    port.playOnce("ST,GS,+  12340,kg\r\n");
    EXPECT_EQ(line->read(1s).value(), "ST,GS,+  12340,kg\r\n");
    EXPECT_EQ(line->read(1s).error().code(), code::scaleLineEnded);
}

TEST(Line, SaysWhyAScaleCannotBeReached) {
    EXPECT_EQ(codeOf({"/no/such/device"}), code::scaleUnreachable);
    EXPECT_EQ(codeOf({"/dev/null"}), code::scaleUnreachable);  // no terminal
    EXPECT_EQ(codeOf({"127.0.0.1:1"}), code::scaleUnreachable);
    EXPECT_EQ(codeOf({"127.0.0.1:no-such-service"}), code::scaleUnreachable);
    const PseudoTerminal terminal;
    EXPECT_EQ(codeOf({terminal.place(), 12345}), code::scaleUnreachable);
}

TEST(Line, SetsSpeedAndCharacters) {
    PseudoTerminal terminal;
    const auto line = Line::open({terminal.place(), 4800, Characters::sevenEven});
    ASSERT_TRUE(line);
    const Descriptor device{::open(terminal.place().c_str(), O_RDWR | O_NOCTTY)};
    termios terms{};
    ASSERT_EQ(::tcgetattr(device.get(), &terms), 0);
    EXPECT_EQ(::cfgetispeed(&terms), static_cast<speed_t>(B4800));
    EXPECT_EQ(terms.c_iflag & static_cast<tcflag_t>(ISTRIP | ICRNL | IXON), 0u);
}

}  // namespace
}  // namespace treadwell::scale
