#include "core/base/hash.h"

#include <openssl/evp.h>

#include <stdexcept>

namespace treadwell {

namespace {

// Looked up once: OpenSSL 3 would search its providers anew at every start, longer than a short hash takes.
const EVP_MD* algorithm() {
    static const EVP_MD* const kSha256 = EVP_MD_fetch(nullptr, "SHA256", nullptr);
    return kSha256;
}

[[noreturn]] void refuse() {
    throw std::runtime_error("SHA-256 is not available from OpenSSL");
}

}  // namespace

struct Sha256::State {
    EVP_MD_CTX* context = EVP_MD_CTX_new();
    State() { start(); }
    ~State() { EVP_MD_CTX_free(context); }
    State(const State&) = delete;
    State& operator=(const State&) = delete;

    void start() {
        if (context == nullptr || EVP_DigestInit_ex(context, algorithm(), nullptr) != 1) {
            refuse();
        }
    }
};

Sha256::Sha256() : m_state(std::make_unique<State>()) {}
Sha256::~Sha256() = default;
Sha256::Sha256(Sha256&&) noexcept = default;
Sha256& Sha256::operator=(Sha256&&) noexcept = default;

Sha256& Sha256::add(std::span<const std::uint8_t> bytes) {
    EVP_DigestUpdate(m_state->context, bytes.data(), bytes.size());
    return *this;
}

Sha256& Sha256::add(std::string_view text) {
    EVP_DigestUpdate(m_state->context, text.data(), text.size());
    return *this;
}

Sha256& Sha256::add(std::int64_t number) {
    std::array<std::uint8_t, 8> bytes{};
    const auto bits = static_cast<std::uint64_t>(number);
    for (std::size_t i = 0; i < 8; ++i) bytes[i] = static_cast<std::uint8_t>(bits >> (56 - 8 * i));
    return add(bytes);
}

Hash Sha256::finish() {
    Hash hash{};
    EVP_DigestFinal_ex(m_state->context, hash.data(), nullptr);
    m_state->start();
    return hash;
}

Hash sha256(std::string_view text) {
    thread_local Sha256 hasher;  // to make one takes as long as a short hash
    return hasher.add(text).finish();
}

}  // namespace treadwell
