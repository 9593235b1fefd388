// What the benchmark programs share: options of the command line, and sections of tests/bench/RESULTS.md on standard
// output.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace stow::bench {

// "--name value" pairs; a name that is not among `known` ends the program with a word on standard error.
class Options {
public:
    Options(int argc, char** argv, std::map<std::string, std::string> known_with_defaults);
    const std::string& text(const std::string& name) const;
    int number(const std::string& name) const;
    std::vector<int> numbers(const std::string& name) const; // "1-3,7"
    const std::string& command() const { return command_; }

private:
    std::map<std::string, std::string> values_;
    std::string command_;
};

// Heading; machine, date, command; and that time is processor time.
void print_heading(const std::string& title, const std::string& command);

using TableRow = std::vector<std::string>;
void print_table(const TableRow& head, const std::vector<TableRow>& rows);

std::string percent(double share); // of one, two digits
std::string fixed(double value, int digits);

// The value below which that share of the sorted values lies (nearest rank); 0 when there is none.
double quantile(std::vector<double> values, double share);

} // namespace stow::bench
