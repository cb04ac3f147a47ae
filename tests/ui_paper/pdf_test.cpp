// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/document.h"
#include "tests/ui_paper/samples.h"
#include "ui/logic/paper/pdf.h"

#include <QBuffer>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

// The outside check is poppler (pdftotext, pdfinfo, pdffonts), which shares no code with Qt's PDF writer.
namespace withy::paper {
namespace {

using papers::Document;

QString run(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(20'000)) return {};
    return QString::fromUtf8(process.readAllStandardOutput());
}

class Pdf : public ::testing::Test {
protected:
    void SetUp() override {
        for (const char* tool : {"pdftotext", "pdfinfo", "pdffonts"})
            ASSERT_FALSE(QStandardPaths::findExecutable(tool).isEmpty())
                << tool << " is not installed: package poppler-utils, which tests/run installs";
    }

    QString write(const Document& document, PaperSize paper, const PdfFacts& facts = {}) {
        const QString path = m_folder.filePath("sheet.pdf");
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_TRUE(writePdf(file, document, paper, facts));
        return path;
    }

    QString textOf(const QString& path) { return run("pdftotext", {"-layout", path, "-"}); }

private:
    QTemporaryDir m_folder;
};

/// Each blank-separated word of the document must be a word of the text read back.
QStringList missingWords(const Document& document, const QString& text) {
    static const QRegularExpression kBlanks("\\s+");
    const QStringList words = text.split(kBlanks, Qt::SkipEmptyParts);
    const QSet<QString> there(words.begin(), words.end());
    QStringList missing;
    for (const std::string& each : samples::wordsOn(document))
        for (const QString& word : QString::fromStdString(each).split(kBlanks, Qt::SkipEmptyParts))
            if (!there.contains(word) && !text.contains(word)) missing << word;
    return missing;
}

TEST_F(Pdf, ReadsBackWordForWord) {
    for (const Document& document : {samples::prepSheet(), samples::cuttingList(), samples::seasonOrders(70)})
        for (PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
            SCOPED_TRACE(document.kind);
            const QString text = textOf(write(document, paper));
            EXPECT_EQ(missingWords(document, text).join(' ').toStdString(), "");
        }
}

TEST_F(Pdf, KeepsAStepOnOneLine) {
    const QString text = textOf(write(samples::prepSheet(), PaperSize::A4));
    EXPECT_TRUE(text.contains(QRegularExpression("15:10 +Make up 24 jars +Both"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QRegularExpression("13:05 +Jars out in tens, wiped +Wilf")));
    EXPECT_TRUE(text.contains("page 1 of 1"));
}

TEST_F(Pdf, LettersThatOftenJoinStayReadable) {
    Document document;
    document.name = "Office staff: affix fifty fluffy cuttings, attach fjord tin";
    const QString text = textOf(write(document, PaperSize::A4));
    for (const char* word :
         {"Office", "staff", "affix", "fifty", "fluffy", "cuttings", "attach", "fjord", "tin"})
        EXPECT_TRUE(text.contains(word)) << word << " in " << text.toStdString();
}

TEST_F(Pdf, EmbedsItsFonts) {
    const QStringList lines = run("pdffonts", {write(samples::prepSheet(), PaperSize::A4)}).split('\n');
    int fonts = 0;
    for (const QString& line : lines.mid(2)) {
        if (line.trimmed().isEmpty()) continue;
        ++fonts;
        EXPECT_TRUE(line.contains(QRegularExpression(" yes (yes|no) +yes "))) << line.toStdString();
    }
    EXPECT_GE(fonts, 3);
}

TEST_F(Pdf, SaysItsSizeItsPagesAndItsTitle) {
    PdfFacts facts;
    facts.made = QDateTime(QDate(2027, 11, 16), QTime(19, 25), Qt::UTC);
    const QString a4 = run("pdfinfo", {write(samples::seasonOrders(70), PaperSize::A4, facts)});
    EXPECT_TRUE(a4.contains("595 x 842 pts (A4)")) << a4.toStdString();
    EXPECT_TRUE(a4.contains(QRegularExpression("Pages: +4"))) << a4.toStdString();
    EXPECT_TRUE(a4.contains("Season's orders, Wren Bank"));
    EXPECT_TRUE(a4.contains("Nov 16 19:25:00 2027")) << a4.toStdString();
    const QString letter = run("pdfinfo", {write(samples::prepSheet(), PaperSize::Letter)});
    EXPECT_TRUE(letter.contains("612 x 792 pts (letter)")) << letter.toStdString();
}

TEST_F(Pdf, SameDocumentSameBytes) {
    QByteArray first;
    QByteArray second;
    for (QByteArray* bytes : {&first, &second}) {
        QBuffer buffer(bytes);
        ASSERT_TRUE(buffer.open(QIODevice::WriteOnly));
        ASSERT_TRUE(writePdf(buffer, samples::prepSheet(), PaperSize::A4));
    }
    EXPECT_FALSE(first.isEmpty());
    EXPECT_TRUE(first == second);
}

TEST_F(Pdf, SaysSoWhenTheDeviceTakesNothing) {
    QByteArray bytes;
    QBuffer closed(&bytes);
    ASSERT_TRUE(closed.open(QIODevice::ReadOnly));
    EXPECT_FALSE(writePdf(closed, samples::prepSheet(), PaperSize::A4));
}

TEST_F(Pdf, ShowsMarkupAsTyped) {
    Document document;
    document.kind = "<b>Prep</b>";
    document.name = "Ivy & Oak <script>";
    document.body = {{papers::Paragraph{papers::plain("a &amp; b **not bold** <br> c"), false}, false}};
    const QString text = textOf(write(document, PaperSize::A4));
    for (const char* typed : {"<b>Prep</b>", "Ivy & Oak <script>", "a &amp; b **not bold** <br> c"})
        EXPECT_TRUE(text.contains(typed)) << typed << " in " << text.toStdString();
}

} // namespace
} // namespace withy::paper
