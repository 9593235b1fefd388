#include "core/intake/text_encoding.h"

#include <algorithm>
#include <memory>
#include <unicode/ucnv.h>
#include <unicode/ucsdet.h>
#include <unicode/unistr.h>

namespace stow::intake {

namespace {

constexpr std::string_view utf8_mark = "\xEF\xBB\xBF";

bool is_high(char c)
{
    return (static_cast<unsigned char>(c) & 0x80U) != 0;
}

// Lines with a byte past ASCII: plain ones would only dilute the guess.
std::string telling_lines(std::string_view bytes)
{
    constexpr std::size_t enough = std::size_t{64} * 1024;
    std::string sample;
    while (!bytes.empty() && sample.size() < enough) {
        const std::size_t end = std::min(bytes.find('\n'), bytes.size() - 1) + 1;
        const std::string_view line = bytes.substr(0, end);
        if (std::any_of(line.begin(), line.end(), is_high)) sample += line.substr(0, enough - sample.size());
        bytes.remove_prefix(end);
    }
    return sample;
}

// Shop exports of our part of the world that are not Unicode are nearly always windows-1252; a few umlauts are too
// little for statistics, so another guess must be clearly better.
std::optional<std::string> guess(std::string_view bytes)
{
    constexpr int lead = 25; // of 100 points of confidence
    const std::string sample = telling_lines(bytes);
    UErrorCode error = U_ZERO_ERROR;
    const std::unique_ptr<UCharsetDetector, decltype(&ucsdet_close)> detector(ucsdet_open(&error), &ucsdet_close);
    ucsdet_setText(detector.get(), sample.data(), static_cast<std::int32_t>(sample.size()), &error);
    std::int32_t count = 0;
    const UCharsetMatch** matches = ucsdet_detectAll(detector.get(), &count, &error);
    if (U_FAILURE(error)) return std::nullopt;
    int western = 0;
    for (std::int32_t i = 0; i < count; ++i) {
        const std::string_view name = ucsdet_getName(matches[i], &error);
        if (name == "ISO-8859-1" || name == "windows-1252")
            western = std::max<int>(western, ucsdet_getConfidence(matches[i], &error));
    }
    if (count == 0 || ucsdet_getConfidence(matches[0], &error) < western + lead) return "windows-1252";
    return std::string(ucsdet_getName(matches[0], &error));
}

std::optional<std::string> to_utf8(std::string_view bytes, const std::string& encoding)
{
    UErrorCode error = U_ZERO_ERROR;
    const std::unique_ptr<UConverter, decltype(&ucnv_close)> converter(ucnv_open(encoding.c_str(), &error),
                                                                       &ucnv_close);
    if (U_FAILURE(error)) return std::nullopt;
    ucnv_setToUCallBack(converter.get(), UCNV_TO_U_CALLBACK_STOP, nullptr, nullptr, nullptr, &error);
    std::u16string wide(2 * bytes.size() + 2, u'\0');
    const std::int32_t length = ucnv_toUChars(converter.get(), wide.data(), static_cast<std::int32_t>(wide.size()),
                                              bytes.data(), static_cast<std::int32_t>(bytes.size()), &error);
    if (U_FAILURE(error)) return std::nullopt;
    std::string text;
    icu::UnicodeString(wide.data(), length).toUTF8String(text);
    return text;
}

} // namespace

bool is_utf8(std::string_view bytes)
{
    const auto at = [&](std::size_t i) { return i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0U; };
    for (std::size_t i = 0; i < bytes.size();) {
        const unsigned lead = at(i);
        if (lead < 0x80) {
            ++i;
            continue;
        }
        const std::size_t length = lead >= 0xC2 && lead <= 0xDF   ? 2
                                   : lead >= 0xE0 && lead <= 0xEF ? 3
                                   : lead >= 0xF0 && lead <= 0xF4 ? 4
                                                                  : 0;
        if (length == 0) return false;
        const unsigned low = lead == 0xE0 ? 0xA0U : lead == 0xF0 ? 0x90U : 0x80U;
        const unsigned high = lead == 0xED ? 0x9FU : lead == 0xF4 ? 0x8FU : 0xBFU;
        if (at(i + 1) < low || at(i + 1) > high) return false;
        for (std::size_t k = 2; k < length; ++k) {
            if (at(i + k) < 0x80 || at(i + k) > 0xBF) return false;
        }
        i += length;
    }
    return true;
}

std::optional<std::string> utf16_kind(std::string_view bytes)
{
    if (bytes.substr(0, 2) == "\xFF\xFE") return "UTF-16LE";
    if (bytes.substr(0, 2) == "\xFE\xFF") return "UTF-16BE";
    // Without a mark: Latin text has a zero in nearly every second byte, and only there.
    const std::string_view sample = bytes.substr(0, 4096);
    std::size_t even = 0, odd = 0;
    for (std::size_t i = 0; i < sample.size(); ++i) {
        if (sample[i] == '\0') ++(i % 2 == 0 ? even : odd);
    }
    const std::size_t most = sample.size() / 2;
    if (even == 0 && odd * 10 >= most * 9 && odd > 1) return "UTF-16LE";
    if (odd == 0 && even * 10 >= most * 9 && even > 1) return "UTF-16BE";
    return std::nullopt;
}

std::optional<Decoded> decode(std::string_view bytes)
{
    std::string encoding;
    if (bytes.substr(0, 3) == utf8_mark) {
        bytes.remove_prefix(3);
        if (!is_utf8(bytes)) return std::nullopt;
        return Decoded{"UTF-8", std::string(bytes)};
    }
    if (const auto wide = utf16_kind(bytes)) {
        encoding = *wide;
        if (bytes.substr(0, 2) == "\xFF\xFE" || bytes.substr(0, 2) == "\xFE\xFF") bytes.remove_prefix(2);
    } else if (is_utf8(bytes)) {
        return Decoded{"UTF-8", std::string(bytes)};
    } else if (const auto guessed = guess(bytes)) {
        // windows-1252 prints all that ISO-8859-1 prints.
        encoding = *guessed == "ISO-8859-1" ? "windows-1252" : *guessed;
    } else {
        return std::nullopt;
    }
    auto text = to_utf8(bytes, encoding);
    if (!text) return std::nullopt;
    return Decoded{encoding, std::move(*text)};
}

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view blank = " \t\r\n";
    const auto first = text.find_first_not_of(blank);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

} // namespace stow::intake
