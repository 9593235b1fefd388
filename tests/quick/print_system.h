// A made-up print system: `lp`, `lpstat`, `ipptool` and `cancel` answer as CUPS 2.4.2 was seen to answer (jobs of a PDF
// printer sent, stopped, called back, refused and given up by hand, printers removed and out of reach; lp(1),
// lpstat(1), cancel(1), ipptool(1)). file_printer_test.cpp tries the same on a real one.
#pragma once

#include <QFile>
#include <QStringList>
#include <QTemporaryDir>

namespace stow::quick {

// Programs that write down what they are asked, and answer from files in their folder: `slow` (lp does not
// come to an end), `refuses` (its complaint), `waiting` (jobs that are not completed), `alerts` (what is said of
// those), `state` (how those that left it ended: completed unless it says otherwise), `untold` (nobody says it),
// `ended` (jobs that are completed, with why), `stopped` (why the printer is), `removed` (it is not there any more).
class FakePrintSystem {
public:
    FakePrintSystem()
    {
        put("lp", "echo \"$*\" >> $0.log\n"
                  "if [ -f ${0%lp}slow ]; then exec sleep 20; fi\n"
                  "if [ -f ${0%lp}refuses ]; then cat ${0%lp}refuses >&2; exit 1; fi\n"
                  "n=$(wc -l < $0.log); echo \"$2-$n root 1024 today\" >> ${0%lp}waiting\n"
                  "echo \"request id is $2-$n (1 file(s))\"\n");
        put("ipptool", "if [ -f ${0%ipptool}untold ]; then exit 1; fi\n"
                       "if [ -f ${0%ipptool}state ]; then state=$(cat ${0%ipptool}state); else state=completed; fi\n"
                       "echo \"        job-state (enum) = $state\"\n"
                       "echo \"        job-state-reasons (keyword) = processing-to-stop-point\"\n"
                       "echo \"        job-printer-state-message (textWithoutLanguage) = \"\n");
        put("lpstat", "if [ -f ${0%lpstat}removed ] && [ \"$2\" != not-completed ]; then\n"
                      "echo 'lpstat: Invalid destination name in list \"LABELS\".' >&2; exit 1; fi\n"
                      "if [ \"$2\" = completed ]; then cat ${0%lpstat}ended; exit 0; fi\n"
                      "case $1 in\n"
                      "-W) if [ -f ${0%lpstat}waiting ]; then cat ${0%lpstat}waiting; fi\n"
                      "if [ -f ${0%lpstat}alerts ]; then cat ${0%lpstat}alerts; fi ;;\n"
                      "-p) if [ -f ${0%lpstat}stopped ]; then\n"
                      "echo \"printer $2 disabled since Wed Nov 25 23:12:45 2026 -\"; "
                      "echo \"\t$(cat ${0%lpstat}stopped)\"\n"
                      "else echo \"printer $2 is idle.  enabled since Wed Nov 25 23:12:45 2026\"; fi ;;\n"
                      "esac\n");
        put("cancel", "echo \"$*\" >> $0.log\n"
                      "grep -v \"^$1 \" ${0%cancel}waiting > ${0%cancel}left; mv ${0%cancel}left ${0%cancel}waiting\n");
        path_ = qgetenv("PATH");
        qputenv("PATH", folder_.path().toUtf8() + ":" + path_);
    }
    ~FakePrintSystem() { qputenv("PATH", path_); }

    void tell(const char* file, const QByteArray& words) const
    {
        QFile f(folder_.filePath(QString::fromLatin1(file)));
        if (words.isNull())
            f.remove();
        else if (f.open(QIODevice::WriteOnly))
            f.write(words);
    }
    QStringList asked(const char* program) const
    {
        QFile f(folder_.filePath(QString::fromLatin1(program) + QStringLiteral(".log")));
        if (!f.open(QIODevice::ReadOnly)) return {};
        return QString::fromUtf8(f.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    }

private:
    void put(const char* name, const char* script) const
    {
        const QString file = folder_.filePath(QString::fromLatin1(name));
        QFile f(file);
        if (f.open(QIODevice::WriteOnly)) f.write(QByteArray("#!/bin/sh\n") + script);
        f.close();
        f.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    }

    QTemporaryDir folder_;
    QByteArray path_;
};

} // namespace stow::quick
