#include "app/printing/print_queue.h"

#include <QProcess>
#include <QProcessEnvironment>
#include <QRegularExpression>

#include <algorithm>

namespace stow::printing {

namespace {

constexpr std::chrono::seconds between_looks{3};
constexpr std::chrono::seconds patience{20}; // with a print system that does not answer

QString first_line(const QString& words)
{
    return words.trimmed().section(QLatin1Char('\n'), 0, 0);
}

// "printer LABELS disabled since Wed Nov 25 23:12:45 2026 -\n\tPaused": the reason, or the line itself.
std::optional<QString> stopped_because(const QString& said)
{
    const QStringList lines = said.trimmed().split(QLatin1Char('\n'));
    if (!lines.front().contains(QLatin1String(" disabled "))) return std::nullopt;
    return lines.size() > 1 ? lines[1].trimmed() : lines.front();
}

// A job as `lpstat -l -o` lists it: a line that begins with its name, then lines that begin with a blank.
struct Listed {
    QString id, status, alerts;

    // It is tried again and again: the printer is known and enabled, but not there (RFC 8011, 5.3.8:
    // "resources-are-not-ready"; CUPS with the policy retry-job, its usual one).
    std::optional<QString> kept_waiting() const
    {
        if (!alerts.contains(QLatin1String("not-ready"))) return std::nullopt;
        return status.isEmpty() ? alerts : status;
    }
};

std::vector<Listed> listed(const QString& out)
{
    std::vector<Listed> all;
    for (const QString& line : out.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        if (!line.front().isSpace())
            all.push_back({line.section(QLatin1Char(' '), 0, 0), {}, {}});
        else if (!all.empty() && line.contains(QLatin1String("Status:")))
            all.back().status = line.section(QLatin1Char(':'), 1).trimmed();
        else if (!all.empty() && line.contains(QLatin1String("Alerts:")))
            all.back().alerts = line.section(QLatin1Char(':'), 1).trimmed();
    }
    return all;
}

const Listed* of(const std::vector<Listed>& all, const QString& id)
{
    const auto found = std::find_if(all.begin(), all.end(), [&](const Listed& one) { return one.id == id; });
    return found == all.end() ? nullptr : &*found;
}

// Nobody knows whether it came out.
QString doubtful(const QString& why)
{
    const QString look = PrintQueue::tr("no answer: see what the printer has before sending again");
    return why.isEmpty() ? look : why + QStringLiteral(" · ") + look;
}

} // namespace

std::optional<Way> way_of(const QString& typed)
{
    const QStringList parts = typed.split(QLatin1Char(','));
    const auto part = [&](qsizetype i) { return i < parts.size() ? parts[i].trimmed() : QString(); };
    if (part(0).isEmpty()) return std::nullopt;
    return Way{part(0), part(1), part(2)};
}

PrintQueue::PrintQueue(QObject* parent) : QObject(parent)
{
    timer_.setInterval(between_looks);
    connect(&timer_, &QTimer::timeout, this, &PrintQueue::look);
}

void PrintQueue::print(const QString& paper, const QString& file, const Way& way)
{
    jobs_.push_back({paper, file, way});
    send(jobs_.size() - 1);
    emit changed();
}

void PrintQueue::mend()
{
    if (any(Job::State::stopped)) {
        for (std::size_t j = 0; j < jobs_.size(); ++j) {
            if (jobs_[j].state != Job::State::stopped) continue;
            jobs_[j].state = Job::State::sending; // neither looked at nor called back again until it is answered
            run(QStringLiteral("cancel"), {jobs_[j].id}, [this, j](bool well, const QString&, const QString&) {
                if (well)
                    set(j, Job::State::refused, tr("called back"));
                else
                    set(j, Job::State::queued); // the next look tells where it is
            });
        }
        emit changed();
        return;
    }
    for (std::size_t j = 0; j < jobs_.size(); ++j) {
        if (jobs_[j].state != Job::State::refused) continue;
        send(j);
    }
    emit changed();
}

QString PrintQueue::trouble() const
{
    const auto words = [&](Job::State state) {
        QStringList papers;
        QString why;
        for (const Job& job : jobs_) {
            if (job.state != state) continue;
            if (!papers.contains(job.paper)) papers += job.paper;
            why = tr("%1: %2").arg(job.way.printer, job.why);
        }
        return papers.join(QStringLiteral(", ")) + QStringLiteral(" · ") + why;
    };
    if (any(Job::State::stopped)) return tr("Waiting before a stopped printer: %1").arg(words(Job::State::stopped));
    if (any(Job::State::refused)) return tr("Not printed: %1").arg(words(Job::State::refused));
    return {};
}

QString PrintQueue::remedy() const
{
    if (any(Job::State::stopped)) return tr("Call it back");
    return any(Job::State::refused) ? tr("Send again") : QString();
}

void PrintQueue::run(const QString& program, const QStringList& arguments, Heard heard)
{
    auto* process = new QProcess(this);
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C")); // its words are read
    process->setProcessEnvironment(environment);
    connect(process, &QProcess::finished, this, [process, heard](int code, QProcess::ExitStatus status) {
        heard(status == QProcess::NormalExit && code == 0, QString::fromUtf8(process->readAllStandardOutput()),
              QString::fromUtf8(process->readAllStandardError()));
        process->deleteLater();
    });
    connect(process, &QProcess::errorOccurred, this, [process, program, heard](QProcess::ProcessError error) {
        if (error != QProcess::FailedToStart) return; // the others end in `finished`
        heard(false, {}, tr("the program %1 cannot be started").arg(program));
        process->deleteLater();
    });
    QTimer::singleShot(patience, process, &QProcess::kill);
    process->start(program, arguments);
    process->closeWriteChannel();
}

void PrintQueue::send(std::size_t job)
{
    Job& sent = jobs_[job];
    sent.state = Job::State::sending;
    sent.why.clear();
    // No buyer's name: what the queue shows, others see.
    QStringList arguments{QStringLiteral("-d"), sent.way.printer, QStringLiteral("-t"), QStringLiteral("Stowbench")};
    if (!sent.way.media.isEmpty()) arguments << QStringLiteral("-o") << QStringLiteral("media=") + sent.way.media;
    if (!sent.way.tray.isEmpty()) arguments << QStringLiteral("-o") << QStringLiteral("InputSlot=") + sent.way.tray;
    arguments << QStringLiteral("--") << sent.file;
    run(QStringLiteral("lp"), arguments, [this, job](bool well, const QString& out, const QString& err) {
        static const QRegularExpression request(QStringLiteral("request id is (\\S+)"));
        const QRegularExpressionMatch match = request.match(out);
        if (well && match.hasMatch()) {
            jobs_[job].id = match.captured(1);
            set(job, Job::State::queued);
            timer_.start();
        } else {
            const QString why = first_line(err);
            set(job, Job::State::refused, why.isEmpty() ? doubtful({}) : why);
        }
    });
}

// Which jobs are still there, then whether their printers go. One look at a time.
void PrintQueue::look()
{
    if (looking_) return;
    looking_ = true;
    // A job sent while this look is under way is not in its list yet.
    std::vector<std::size_t> waiting;
    for (std::size_t j = 0; j < jobs_.size(); ++j) {
        if (jobs_[j].state == Job::State::queued || jobs_[j].state == Job::State::stopped) waiting.push_back(j);
    }
    run(QStringLiteral("lpstat"),
        {QStringLiteral("-W"), QStringLiteral("not-completed"), QStringLiteral("-l"), QStringLiteral("-o")},
        [this, waiting](bool well, const QString& out, const QString&) {
            looking_ = false;
            if (!well) return; // another look will tell
            const std::vector<Listed> there = listed(out);
            QStringList printers;
            for (const std::size_t j : waiting) {
                const Job& job = jobs_[j];
                if (job.state != Job::State::queued && job.state != Job::State::stopped) continue;
                if (of(there, job.id) == nullptr) {
                    set(j, Job::State::gone);
                    ask_how_it_ended(j);
                } else if (!printers.contains(job.way.printer)) {
                    printers += job.way.printer;
                }
            }
            if (printers.isEmpty() && !any(Job::State::queued) && !any(Job::State::stopped)) timer_.stop();
            for (const QString& printer : printers) {
                run(QStringLiteral("lpstat"), {QStringLiteral("-p"), printer},
                    [this, printer, there](bool known, const QString& said, const QString& err) {
                        const auto stopped = known ? stopped_because(said) : std::optional(first_line(err));
                        for (std::size_t j = 0; j < jobs_.size(); ++j) {
                            const Job& job = jobs_[j];
                            const bool waits = job.state == Job::State::queued || job.state == Job::State::stopped;
                            if (!waits || job.way.printer != printer) continue;
                            const Listed* const as = of(there, job.id);
                            const auto why = !stopped && as != nullptr ? as->kept_waiting() : stopped;
                            set(j, why ? Job::State::stopped : Job::State::queued, why.value_or(QString()));
                        }
                    });
            }
        });
}

// A job given up by the system leaves the queue like one that was printed; its state tells them apart (RFC 8011, 5.3.7:
// completed, canceled, aborted). lpstat does not say it, and the reasons it names are alike for all three (CUPS 2.4.2,
// tried); ipptool does.
void PrintQueue::ask_how_it_ended(std::size_t job)
{
    const QString number = jobs_[job].id.section(QLatin1Char('-'), -1);
    run(QStringLiteral("ipptool"),
        {QStringLiteral("-tv"), QStringLiteral("ipp://localhost/jobs/") + number,
         QStringLiteral("get-job-attributes.test")},
        [this, job](bool, const QString& out, const QString&) {
            if (jobs_[job].state != Job::State::gone) return;
            static const QRegularExpression is(QStringLiteral("job-state \\(enum\\) = (\\S+)")),
                message(QStringLiteral("job-printer-state-message \\([^)]*\\) = ([^\n]+)"));
            const QString state = is.match(out).captured(1), words = message.match(out).captured(1).trimmed();
            if (state.isEmpty()) return ask_why_gone(job);
            if (state != QLatin1String("completed")) given_up(job, words.isEmpty() ? state : words);
        });
}

// Where nobody tells its state: by the reasons of newer systems (RFC 8011, 5.3.8: "aborted-by-system",
// "job-canceled-by-operator", "document-format-error"), or because its printer is not there any more.
void PrintQueue::ask_why_gone(std::size_t job)
{
    run(QStringLiteral("lpstat"),
        {QStringLiteral("-W"), QStringLiteral("completed"), QStringLiteral("-l"), QStringLiteral("-o"),
         jobs_[job].way.printer},
        [this, job](bool well, const QString& out, const QString& err) {
            if (jobs_[job].state != Job::State::gone) return;
            if (!well) return set(job, Job::State::refused, doubtful(first_line(err)));
            const std::vector<Listed> all = listed(out);
            const Listed* const ours = of(all, jobs_[job].id);
            if (ours == nullptr) return;
            for (const char* bad : {"abort", "cancel", "error", "unprintable"}) {
                if (ours->alerts.contains(QLatin1String(bad))) return given_up(job, ours->alerts);
            }
        });
}

void PrintQueue::given_up(std::size_t job, const QString& why)
{
    set(job, Job::State::refused, tr("given up by the print system: %1").arg(why));
}

QString PrintQueue::kept() const
{
    QStringList lines;
    for (const Job& job : jobs_) {
        if (job.state == Job::State::gone) continue;
        const QStringList parts{job.paper,    job.file, job.way.printer, job.way.media,
                                job.way.tray, job.id,   job.why,         QString::number(static_cast<int>(job.state))};
        lines += parts.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n'));
}

void PrintQueue::remember(const QString& kept)
{
    for (const QString& line : kept.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        const QStringList parts = line.split(QLatin1Char('\t'));
        if (parts.size() != 8) continue;
        Job job{parts[0], parts[1], {parts[2], parts[3], parts[4]}, parts[5], Job::State::refused, parts[6]};
        const bool had_number = !job.id.isEmpty();
        if (parts[7].toInt() != static_cast<int>(Job::State::refused)) {
            job.state = had_number ? Job::State::queued : Job::State::refused;
            if (!had_number) job.why = doubtful({});
        }
        jobs_.push_back(std::move(job));
    }
    if (any(Job::State::queued)) {
        timer_.start();
        look();
    }
    if (!jobs_.empty()) emit changed();
}

void PrintQueue::set(std::size_t job, Job::State state, const QString& why)
{
    if (jobs_[job].state == state && jobs_[job].why == why) return;
    jobs_[job].state = state;
    jobs_[job].why = why;
    emit changed();
}

bool PrintQueue::any(Job::State state) const
{
    return std::any_of(jobs_.begin(), jobs_.end(), [&](const Job& job) { return job.state == state; });
}

} // namespace stow::printing
