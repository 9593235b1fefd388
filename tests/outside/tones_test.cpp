// The tones as ears and a spectrum would know them, and a bench without a sound system.
// Pitches: ISO 16, a' = 440 Hz, and the equal-tempered scale, twelve equal steps an octave.
#include "app/sound/speaker.h"

#include <QCoreApplication>
#include <QSignalSpy>

#include <cmath>
#include <complex>
#include <gtest/gtest.h>
#include <numbers>

namespace stow::sound {
namespace {

double strength(const std::vector<std::int16_t>& samples, double hertz) // of one line of the Fourier transform
{
    std::complex<double> sum;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        sum += static_cast<double>(samples[i]) *
               std::polar(1.0, -2 * std::numbers::pi * hertz * static_cast<double>(i) / samples_a_second);
    }
    return std::abs(sum) / static_cast<double>(samples.size());
}

double step_of_the_scale(int from_a)
{
    return 440 * std::pow(2, from_a / 12.0);
}

double strongest(const std::vector<std::int16_t>& samples)
{
    double best = 0, found = 0;
    for (int step = -36; step <= 36; ++step) {
        const double here = strength(samples, step_of_the_scale(step));
        if (here > best) {
            best = here;
            found = step_of_the_scale(step);
        }
    }
    return found;
}

int sounding_parts(const std::vector<std::int16_t>& samples) // apart by 50 ms of silence
{
    int parts = 0;
    std::size_t quiet = samples_a_second;
    for (const std::int16_t sample : samples) {
        if (sample == 0) {
            ++quiet;
            continue;
        }
        if (quiet > samples_a_second / 20) ++parts;
        quiet = 0;
    }
    return parts;
}

TEST(Tones, AreToldApartByPitchNumberAndLength)
{
    const auto right = samples(Tone::right), wrong = samples(Tone::wrong);
    EXPECT_DOUBLE_EQ(strongest(right), step_of_the_scale(15));  // c''' of the scale
    EXPECT_DOUBLE_EQ(strongest(wrong), step_of_the_scale(-12)); // a, an octave below a'
    EXPECT_EQ(sounding_parts(right), 1);
    EXPECT_EQ(sounding_parts(wrong), 2);
    EXPECT_GT(wrong.size(), 3 * right.size());
}

TEST(Tones, BeginAndEndInSilence)
{
    for (const Tone tone : {Tone::right, Tone::wrong}) {
        const auto all = samples(tone);
        EXPECT_EQ(all.front(), 0);
        EXPECT_EQ(all.back(), 0);
    }
}

TEST(Speaker, LeavesOutWhatCannotBePlayed)
{
    qputenv("PULSE_SERVER", "unix:/nowhere/at/all");
    Speaker speaker;
    QSignalSpy played(&speaker, &Speaker::played);
    speaker.play(Tone::wrong);
    speaker.play(Tone::right);
    EXPECT_TRUE(played.isEmpty()); // it was not waited for
    while (played.size() < 2) ASSERT_TRUE(played.wait(30'000));
    EXPECT_EQ(played[0][0].value<Tone>(), Tone::wrong);
    EXPECT_FALSE(played[0][1].toBool());
    EXPECT_EQ(played[1][0].value<Tone>(), Tone::right);
}

} // namespace
} // namespace stow::sound

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
