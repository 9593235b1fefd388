// The window before a real print system: CUPS with a printer that writes files (tests/scripts/file_printer.sh sets both
// up and says where the files lie). Without it nothing is tried: what the other tests ask, they ask of a made-up one.
#include "core/book/prints.h"
#include "core/book/settings.h"
#include "core/papers/payload.h"
#include "tests/quick/workshop.h"

#include <QDir>
#include <QProcess>
#include <QQuickStyle>
#include <QTemporaryDir>
#include <QTest>

#include <set>

namespace stow::quick {

namespace {

constexpr int patience_ms = 60'000; // a print system takes its time; nothing is timed

QString told(const char* variable)
{
    return QString::fromUtf8(qgetenv(variable));
}

bool runs(const QString& program, const QStringList& arguments)
{
    return QProcess::execute(program, arguments) == 0;
}

QString output(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    return process.waitForFinished() ? QString::fromUtf8(process.readAllStandardOutput()) : QString();
}

} // namespace

class FilePrinterTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void prints_what_the_round_needs();
    void calls_back_what_waits_before_a_stopped_printer();
    void hears_of_a_job_that_fails_after_it_was_sent();
    void hears_of_a_printer_that_is_removed();

private:
    QStringList files() const { return QDir(folder_).entryList({QStringLiteral("*.pdf")}, QDir::Files); }
    bool round_started(Workshop& shop, const QString& printer);
    static std::string waiting(const Workshop& shop)
    {
        return book::remembered(shop.book(), "print.waiting").value_or(std::string());
    }

    std::unique_ptr<Workshop> planned_;
    QString printer_ = told("STOW_FILE_PRINTER"), folder_ = told("STOW_FILE_PRINTER_FOLDER"); // works, and stops
    QString failing_ = told("STOW_FAILING_PRINTER");                                          // takes jobs, and fails
};

void FilePrinterTest::initTestCase()
{
    if (printer_.isEmpty()) QSKIP("no file printer: sh tests/scripts/file_printer.sh BUILD sets one up");
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    planned_ = std::make_unique<Workshop>();
    planned_->plan_the_morning();
}

bool FilePrinterTest::round_started(Workshop& shop, const QString& printer)
{
    if (!shop.open()) return false;
    shop.desk().cupboard()->house()->set(QStringLiteral("labels"), QStringLiteral("a4x4"));
    shop.desk().cupboard()->house()->set(QStringLiteral("printer of labels"), printer + QStringLiteral(", A4"));
    shop.at().press(Qt::Key_F2);
    shop.at().press(Qt::Key_Return);
    shop.at().settle();
    return shop.desk().place() == view::Desk::Place::Pick;
}

void FilePrinterTest::prints_what_the_round_needs()
{
    const QStringList before = files();
    Workshop shop(*planned_);
    QVERIFY(round_started(shop, printer_));
    QTRY_COMPARE_WITH_TIMEOUT(files().size(), before.size() + 1, patience_ms);
    QTRY_VERIFY_WITH_TIMEOUT(waiting(shop).empty(), patience_ms); // heard that it has left the queue
    QTest::qWait(1'000);                                          // and how it ended
    QVERIFY2(shop.desk().printTrouble().isEmpty(), qPrintable(shop.desk().printTrouble()));
    QStringList now = files();
    for (const QString& file : before) now.removeAll(file);
    // Its words are outlines by now; the codes say which labels came out.
    const QTemporaryDir pictures;
    QVERIFY(runs(QStringLiteral("pdftoppm"),
                 {QStringLiteral("-r"), QStringLiteral("203"), QStringLiteral("-gray"),
                  folder_ + QLatin1Char('/') + now.first(), pictures.filePath(QStringLiteral("page"))}));
    std::set<QString> codes;
    for (const QString& page : QDir(pictures.path()).entryList({QStringLiteral("*.pgm")})) {
        const QString read = output(QStringLiteral("zbarimg"),
                                    {QStringLiteral("--quiet"), QStringLiteral("--raw"), QStringLiteral("-Sdisable"),
                                     QStringLiteral("-Sqrcode.enable"), pictures.filePath(page)});
        QVERIFY2(!read.trimmed().isEmpty(), qPrintable(page));
        for (const QString& code : read.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) codes.insert(code);
    }
    std::set<QString> expected;
    for (const shop::Parcel& parcel : book::parcels(shop.book())) {
        const auto code = papers::to_text({papers::Payload::Kind::label, parcel.number, 1});
        if (code && book::next_print(shop.book(), "labels", {parcel.number}) == 2)
            expected.insert(QString::fromStdString(*code));
    }
    QVERIFY(expected.size() > 3);
    const auto listed = [](const std::set<QString>& all) {
        return QStringList(all.begin(), all.end()).join(QLatin1Char(' '));
    };
    QCOMPARE(listed(codes), listed(expected));
}

void FilePrinterTest::calls_back_what_waits_before_a_stopped_printer()
{
    QVERIFY(runs(QStringLiteral("cupsdisable"), {printer_}));
    const auto before = files().size();
    Workshop shop(*planned_);
    QVERIFY(round_started(shop, printer_));
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("Waiting before a stopped printer: Labels")), patience_ms);
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("called back")), patience_ms);
    QVERIFY(runs(QStringLiteral("cupsenable"), {printer_}));
    QTest::qWait(5'000);
    QCOMPARE(files().size(), before); // nothing later by surprise
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE_WITH_TIMEOUT(files().size(), before + 1, patience_ms);
    QTRY_VERIFY_WITH_TIMEOUT(waiting(shop).empty(), patience_ms);
    QTest::qWait(1'000);
    QVERIFY2(shop.desk().printTrouble().isEmpty(), qPrintable(shop.desk().printTrouble()));
    QCOMPARE(files().size(), before + 1);
}

void FilePrinterTest::hears_of_a_job_that_fails_after_it_was_sent()
{
    for (const char* policy : {"retry-job", "stop-printer", "abort-job"}) {
        QVERIFY(runs(QStringLiteral("lpadmin"), {QStringLiteral("-p"), failing_, QStringLiteral("-o"),
                                                 QStringLiteral("printer-error-policy=") + QLatin1String(policy)}));
        Workshop shop(*planned_);
        QVERIFY(round_started(shop, failing_));
        QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("The cable is out.")), patience_ms);
        runs(QStringLiteral("cancel"), {QStringLiteral("-a"), failing_});
        QVERIFY(runs(QStringLiteral("cupsenable"), {failing_}));
    }
}

void FilePrinterTest::hears_of_a_printer_that_is_removed()
{
    QVERIFY(runs(QStringLiteral("cupsdisable"), {failing_}));
    Workshop shop(*planned_);
    QVERIFY(round_started(shop, failing_));
    QTRY_VERIFY_WITH_TIMEOUT(!shop.desk().printTrouble().isEmpty(), patience_ms);
    QVERIFY(runs(QStringLiteral("lpadmin"), {QStringLiteral("-x"), failing_}));
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("see what the printer has before sending again")),
                             patience_ms);
    shop.at().press(Qt::Key_P, Qt::ControlModifier); // and once more: there is none any more
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("Not printed: Labels")), patience_ms);
}

} // namespace stow::quick

QTEST_MAIN(stow::quick::FilePrinterTest)
#include "file_printer_test.moc"
