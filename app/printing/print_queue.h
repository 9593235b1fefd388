// Hands PDF files to the print system (CUPS) by its program `lp`, and asks `lpstat` and `ipptool` what has become of
// them. Nothing here waits: all programs run beside the window. A job that has left the system's queue is `gone`,
// unless the system says that it gave it up: whether paper came out nobody knows but she who holds it, so a label
// counts only once it is scanned on its parcel.
#pragma once

#include <QObject>
#include <QStringList>
#include <QTimer>

#include <chrono>
#include <functional>
#include <optional>
#include <vector>

namespace stow::printing {

struct Way { // how one paper is printed
    QString printer;
    QString media; // "A6", "100x150mm"; empty: what the printer is set to
    QString tray;
};
// "printer", "printer, media" or "printer, media, tray", as she types it; nothing: the paper is not printed.
std::optional<Way> way_of(const QString& typed);

struct Job {
    enum class State { sending, queued, stopped, gone, refused };
    QString paper; // for people
    QString file;
    Way way;
    QString id{}; // as the print system names it
    State state = State::sending;
    QString why{}; // of refused and stopped, in the print system's words
};

class PrintQueue : public QObject {
    Q_OBJECT
public:
    explicit PrintQueue(QObject* parent = nullptr);

    void print(const QString& paper, const QString& file, const Way& way);
    // What was refused is sent once more; what waits before a stopped printer is called back, so that nothing is
    // printed later by surprise. One step at a time: what was called back is sent again by the next call.
    void mend();

    // What is not known to be printed, as text to keep over a restart: what was on its way then is looked for, what was
    // refused still is.
    QString kept() const;
    void remember(const QString& kept);

    // What went wrong and is not mended, in one line, and what `mend` would do about it; empty: nothing.
    QString trouble() const;
    QString remedy() const;

signals:
    void changed();

private:
    using Heard = std::function<void(bool well, const QString& out, const QString& err)>;
    void run(const QString& program, const QStringList& arguments, Heard heard);
    void send(std::size_t job);
    void look();
    void ask_how_it_ended(std::size_t job);
    void ask_why_gone(std::size_t job);
    void given_up(std::size_t job, const QString& why);
    void set(std::size_t job, Job::State state, const QString& why = {});
    bool any(Job::State state) const;

    std::vector<Job> jobs_; // of this sitting, in their order
    QTimer timer_;
    bool looking_ = false;
};

} // namespace stow::printing
