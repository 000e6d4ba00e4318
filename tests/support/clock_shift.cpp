// Loaded before a program, sets the machine's clock for it: CLOCK_SHIFT_SECONDS off, by which nothing else
// of it is moved.
#include <sys/syscall.h>
#include <unistd.h>

#include <cstdlib>
#include <ctime>

extern "C" int clock_gettime(clockid_t clock, timespec* time) noexcept {
    const long failed = syscall(SYS_clock_gettime, clock, time);
    if (failed == 0 && clock == CLOCK_REALTIME) {
        const char* shift = std::getenv("CLOCK_SHIFT_SECONDS");
        if (shift != nullptr) time->tv_sec += std::strtoll(shift, nullptr, 10);
    }
    return static_cast<int>(failed);
}
