// The generators give the published problems: three files of OR-Library byte for byte (tests/bench/data), numbers and
// rows of the others, and the bound L2 of Martello, Pisinger & Vigo (means computed once over public copies of their
// problems, by a program of its own).
#include "tests/bench/bin_problems.h"
#include "tests/bench/random.h"
#include "tests/bench/thpack.h"

#include <fstream>
#include <gmock/gmock.h>
#include <iomanip>
#include <sstream>

namespace stow::bench {
namespace {

using ::testing::ElementsAre;

std::vector<ContainerProblem> whole_class(int types)
{
    std::vector<ContainerProblem> problems;
    for (int p = 1; p <= 100; ++p) problems.push_back(bischoff_ratcliff(types, p));
    return problems;
}

std::string file(const std::string& name)
{
    std::ifstream in(std::string(STOW_BENCH_DATA) + "/" + name, std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    return all.str();
}

// OR-Library, thpack1 to thpack3 (Bischoff & Ratcliff 1995).
TEST(PublishedProblems, OrLibraryFilesComeOutByteForByte)
{
    for (int c = 1; c <= 3; ++c) {
        const std::string published = file("thpack" + std::to_string(c) + ".txt");
        ASSERT_GT(published.size(), 9000U);
        const std::vector<ContainerProblem> made = whole_class(types_of_class(c));
        std::ostringstream written;
        write_thpack(written, made);
        EXPECT_EQ(written.str(), published) << "class " << c;
        std::istringstream in(published);
        EXPECT_EQ(read_thpack(in), made) << "class " << c;
    }
}

TEST(PublishedProblems, NumbersOfTheMinimalStandardGenerator)
{
    MinimalStandard random(2'502'505);
    std::vector<std::int64_t> drawn;
    for (int k = 0; k < 13; ++k) drawn.push_back(random.next());
    EXPECT_THAT(drawn, ElementsAre(1257412242, 2088464814, 207918683, 533411512, 1450539606, 984797298, 831720057,
                                   747939676, 1400348641, 1386321814, 1860641595, 146419551, 2004617842));
}

// Park & Miller, Comm. ACM 31(10) 1988: from 1, the 10,000th number is 1043618065.
TEST(PublishedProblems, TheMinimalStandardGeneratorPassesItsAuthorsCheck)
{
    MinimalStandard random(1);
    std::int64_t last = 0;
    for (int k = 0; k < 10'000; ++k) last = random.next();
    EXPECT_EQ(last, 1043618065);
}

// Means a class over 100 problems: boxes, and cargo over container in %, computed once over public copies.
TEST(PublishedProblems, ContainerClassesHaveTheKnownMeans)
{
    struct Row {
        int br_class;
        double boxes, cargo;
    };
    for (const Row& row : {Row{1, 150.4, 99.58}, Row{2, 136.7, 99.47}, Row{3, 134.3, 99.49}, Row{4, 132.8, 99.43},
                           Row{5, 132.9, 99.36}, Row{6, 131.5, 99.45}, Row{7, 130.3, 99.37}, Row{8, 130.7, 99.52},
                           Row{9, 128.9, 99.40}, Row{10, 130.2, 99.54}, Row{11, 129.5, 99.47}, Row{12, 130.3, 99.48},
                           Row{13, 130.4, 99.50}, Row{14, 130.0, 99.47}, Row{15, 129.9, 99.44}}) {
        double boxes = 0, cargo = 0;
        for (const ContainerProblem& p : whole_class(types_of_class(row.br_class))) {
            for (const BoxType& type : p.types) boxes += type.count;
            cargo += static_cast<double>(cargo_volume(p)) / static_cast<double>(container_volume(p));
        }
        EXPECT_NEAR(boxes / 100, row.boxes, 0.051) << "class " << row.br_class;
        EXPECT_NEAR(cargo, row.cargo, 0.0051) << "class " << row.br_class;
    }
}

TEST(PublishedProblems, NumbersOfThePosixGenerator)
{
    Rand48 random(51);
    EXPECT_EQ(random.next(), 1249289545);
    EXPECT_EQ(random.next(), 1468912438);
    EXPECT_EQ(random.next(), 1625849874);
}

TEST(PublishedProblems, FirstItemsOfTheBinProblems)
{
    using Edges = std::array<std::int64_t, 3>;
    const auto first = [](BinProblem p, std::size_t n) {
        p.items.resize(n);
        return p.items;
    };
    EXPECT_THAT(first(martello_pisinger_vigo(1, 50, 1), 4),
                ElementsAre(Edges{39, 85, 72}, Edges{11, 84, 96}, Edges{36, 10, 34}, Edges{12, 76, 71}));
    EXPECT_THAT(first(martello_pisinger_vigo(8, 200, 10), 3),
                ElementsAre(Edges{16, 42, 20}, Edges{63, 2, 96}, Edges{59, 60, 28}));
    EXPECT_THAT(first(martello_pisinger_vigo(6, 50, 1), 3),
                ElementsAre(Edges{6, 9, 5}, Edges{7, 1, 1}, Edges{4, 1, 5}));
}

// Sums over ten problems of 50, 100, 150, 200 items.
TEST(PublishedProblems, BinBoundsHaveTheKnownSums)
{
    constexpr std::array<std::array<std::int64_t, 4>, 8> continuous{{{96, 198, 278, 379},
                                                                     {99, 193, 278, 373},
                                                                     {96, 194, 283, 376},
                                                                     {158, 320, 456, 615},
                                                                     {61, 117, 164, 218},
                                                                     {84, 168, 260, 336},
                                                                     {55, 97, 132, 193},
                                                                     {70, 145, 194, 249}}};
    constexpr std::array<std::array<std::int64_t, 4>, 8> l2{{{127, 252, 347, 485},
                                                             {128, 242, 352, 476},
                                                             {123, 247, 360, 481},
                                                             {287, 576, 852, 1163},
                                                             {73, 129, 174, 244},
                                                             {87, 175, 269, 350},
                                                             {63, 109, 137, 210},
                                                             {80, 175, 213, 267}}};
    for (int c = 1; c <= 8; ++c) {
        for (int n = 50; n <= 200; n += 50) {
            std::int64_t by_volume = 0, better = 0;
            for (int v = 1; v <= 10; ++v) {
                const BinProblem p = martello_pisinger_vigo(c, n, v);
                by_volume += continuous_bound(p);
                better += bound_l2(p);
            }
            const auto row = static_cast<std::size_t>(c - 1), column = static_cast<std::size_t>(n / 50 - 1);
            EXPECT_EQ(by_volume, continuous[row][column]) << "class " << c << ", " << n << " items";
            EXPECT_EQ(better, l2[row][column]) << "class " << c << ", " << n << " items";
        }
    }
}

} // namespace
} // namespace stow::bench
