// The demo's workshop on its Wednesday morning, over a shop book of its own, and the window on it. Arranging writes
// through the book as the program does; from `open` on everything else is done at the window.
#pragma once

#include "app/day.h"
#include "app/view/desk.h"
#include "app/watch/application.h"
#include "core/book/parcels.h"
#include "tests/quick/at_the_window.h"

#include <QQmlApplicationEngine>
#include <QTemporaryDir>
#include <QTest>

#include <memory>

namespace stow::quick {

class Workshop {
public:
    Workshop();
    explicit Workshop(const Workshop& like); // begins with a copy of its book
    ~Workshop();

    Day& day() { return *day_; }
    const book::Book& book() const { return day_->book(); }
    QString folder() const { return folder_.path(); }

    // Arranging. `but` is a title that no shop's match is known for yet.
    void furnish();
    void remember_titles(const std::string& but = {});
    void take_in(const char* shop, const char* file);
    void check_what_is_sound();
    void plan();
    void plan_the_morning(); // all of these, with the orders of one shop
    std::vector<shop::ParcelId> pick(std::size_t trays);
    void pack(const std::vector<shop::ParcelId>& parcels);
    void label(const std::vector<shop::ParcelId>& parcels);

    bool open(); // the window; false: it did not come up
    void close();
    bool is_open() const { return window_ != nullptr && window_->isVisible(); }
    AtTheWindow& at() { return *at_; }
    view::Desk& desk() { return *desk_; } // for a scale on its cable, and to read what the window shows

private:
    void open_book();

    QTemporaryDir folder_;
    std::shared_ptr<int> second_ = std::make_shared<int>(0); // goes on when the book is opened again
    std::unique_ptr<Day> day_;
    std::unique_ptr<view::Desk> desk_;
    std::unique_ptr<QQmlApplicationEngine> engine_;
    QQuickWindow* window_ = nullptr;
    std::unique_ptr<AtTheWindow> at_;
};

} // namespace stow::quick

// On an application that says where the window stood still. Nothing fails for it: the machine may be busy.
#define WINDOW_TEST_MAIN(TestClass)                                                                                    \
    int main(int argc, char** argv)                                                                                    \
    {                                                                                                                  \
        stow::watch::Application application(argc, argv);                                                              \
        TestClass test;                                                                                                \
        QTEST_SET_MAIN_SOURCE_PATH                                                                                     \
        return QTest::qExec(&test, argc, argv);                                                                        \
    }
