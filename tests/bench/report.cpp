#include "tests/bench/report.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <ctime>
#include <fmt/format.h>
#include <fstream>
#include <iostream>
#include <sstream>

namespace stow::bench {

namespace {

std::string processor()
{
    std::ifstream in("/proc/cpuinfo");
    for (std::string line; std::getline(in, line);) {
        if (line.rfind("model name", 0) == 0) return line.substr(line.find(':') + 2);
    }
    return "unknown processor";
}

std::string today()
{
    const std::time_t now = std::time(nullptr);
    std::tm utc{};
    gmtime_r(&now, &utc);
    std::array<char, 20> text{};
    std::strftime(text.data(), text.size(), "%Y-%m-%d", &utc);
    return text.data();
}

} // namespace

Options::Options(int argc, char** argv, std::map<std::string, std::string> known_with_defaults)
    : values_(std::move(known_with_defaults))
{
    const std::string path = argv[0];
    command_ = path.substr(path.rfind('/') + 1);
    for (int k = 1; k < argc; ++k) {
        const std::string name = argv[k];
        const auto known = values_.find(name);
        if (known == values_.end() || k + 1 == argc) {
            std::cerr << "unknown or without a value: " << name << "; known:";
            for (const auto& [each, value] : values_) std::cerr << ' ' << each << " (" << value << ')';
            std::cerr << '\n';
            std::exit(2);
        }
        known->second = argv[++k];
        command_ += " " + name + " " + known->second;
    }
}

const std::string& Options::text(const std::string& name) const
{
    return values_.at(name);
}

int Options::number(const std::string& name) const
{
    return std::stoi(values_.at(name));
}

std::vector<int> Options::numbers(const std::string& name) const
{
    std::vector<int> all;
    std::istringstream parts(values_.at(name));
    for (std::string part; std::getline(parts, part, ',');) {
        const std::size_t dash = part.find('-');
        const int first = std::stoi(part);
        const int last = dash == std::string::npos ? first : std::stoi(part.substr(dash + 1));
        for (int n = first; n <= last; ++n) all.push_back(n);
    }
    return all;
}

void print_heading(const std::string& title, const std::string& command)
{
    fmt::print("## {}\n\n", title);
    fmt::print("{}, one core, {}; `{}`. Times are processor time of the one thread.\n\n", processor(), today(),
               command);
}

void print_table(const TableRow& head, const std::vector<TableRow>& rows)
{
    const auto print_row = [](const TableRow& row) { fmt::print("| {} |\n", fmt::join(row, " | ")); };
    print_row(head);
    print_row(TableRow(head.size(), "---"));
    for (const TableRow& row : rows) print_row(row);
    fmt::print("\n");
    std::fflush(stdout);
}

std::string percent(double share)
{
    return fmt::format("{:.2f}", 100 * share);
}

std::string fixed(double value, int digits)
{
    return fmt::format("{:.{}f}", value, digits);
}

double quantile(std::vector<double> values, double share)
{
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    const auto rank = static_cast<std::size_t>(std::ceil(share * static_cast<double>(values.size())));
    return values[std::clamp<std::size_t>(rank, 1, values.size()) - 1];
}

} // namespace stow::bench
