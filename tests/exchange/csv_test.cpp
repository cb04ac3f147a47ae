// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/write_rows.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace withy::exchange {
namespace {

using Texts = std::vector<std::vector<std::string>>;

Texts textsOf(const CsvRows& rows) {
    Texts texts;
    for (const auto& row : rows) {
        auto& line = texts.emplace_back();
        for (const auto& field : row.fields)
            line.push_back(field.text);
    }
    return texts;
}

struct Good {
    const char* name;
    std::string text;
    Texts fields;
};

// Each follows a rule of RFC 4180, section 2, by its number there; the fields were checked with the
// csv module of Python. The two named lenient go beyond the standard.
const Good goodTexts[] = {
    {"simple (1)", "a,b,c\r\n1,2,3\r\n", {{"a", "b", "c"}, {"1", "2", "3"}}},
    {"no final break (2)", "a,b\r\n1,2", {{"a", "b"}, {"1", "2"}}},
    {"only header (3)", "a,b\r\n", {{"a", "b"}}},
    {"spaces kept (4)", " a , b \r\n", {{" a ", " b "}}},
    {"empty fields (4)", ",,\r\n\"\",x,\r\n", {{"", "", ""}, {"", "x", ""}}},
    {"all quoted (5)", "\"a\",\"b\"\r\n\"1\",\"2\"\r\n", {{"a", "b"}, {"1", "2"}}},
    {"quoted comma (6)", "name,qty\r\n\"rose, red\",3\r\n", {{"name", "qty"}, {"rose, red", "3"}}},
    {"line break in field (6)", "a,b\r\n\"one\r\ntwo\",3\r\n", {{"a", "b"}, {"one\r\ntwo", "3"}}},
    {"doubled quote (7)", "a\r\n\"say \"\"hi\"\"\"\r\n", {{"a"}, {"say \"hi\""}}},
    {"single quoted quote (7)", "\"\"\"\"\r\n", {{"\""}}},
    {"utf8", "\u017E,\u273F\r\n", {{"\u017E", "\u273F"}}},
    {"lenient: LF only", "a,b\n1,2\n", {{"a", "b"}, {"1", "2"}}},
    {"lenient: byte-order mark",
     "\xEF\xBB\xBF"
     "a,b\r\n1,2\r\n",
     {{"a", "b"}, {"1", "2"}}},
    // Ours, as the csv module of Python does it: lines with nothing on them are no rows.
    {"lenient: CR only", "a,b\r1,2\r", {{"a", "b"}, {"1", "2"}}},
    {"lenient: empty lines", "\r\na,b\r\n\r\n1,2\r\n\r\n", {{"a", "b"}, {"1", "2"}}},
    {"one empty field", "a\r\n\"\"\r\n", {{"a"}, {""}}},
    {"semicolons within quotes", "\"a;b\"\r\nc;d\r\n", {{"a;b"}, {"c;d"}}},
    {"semicolons beside commas", "a;b,c\r\n1;2,3\r\n", {{"a;b", "c"}, {"1;2", "3"}}},
};

TEST(Csv, ReadsWhatTheStandardSays) {
    for (const auto& c : goodTexts) {
        SCOPED_TRACE(c.name);
        const auto rows = parseCsv(c.text);
        ASSERT_TRUE(rows.ok());
        EXPECT_EQ(textsOf(*rows), c.fields);
    }
}

TEST(Csv, WritesWhatReadsBackTheSame) {
    for (const auto& c : goodTexts) {
        SCOPED_TRACE(c.name);
        const auto again = parseCsv(tests::writeRows(*parseCsv(c.text)));
        ASSERT_TRUE(again.ok());
        EXPECT_EQ(textsOf(*again), c.fields);
    }
}

struct Bad {
    const char* name;
    std::string text;
    ProblemCode code;
    int line;
    int column;
    std::vector<std::string> details;
};

// The first three break RFC 4180, section 2, rules 5, 5 and 4; Python's csv module in strict mode
// refuses the first two as well.
const Bad badTexts[] = {
    {"quote in a bare field", "a,b\r\nx\"y,2\r\n", ProblemCode::badQuote, 2, 1, {}},
    {"unclosed quote", "a,b\r\n\"x,2\r\n", ProblemCode::badQuote, 2, 1, {}},
    {"ragged", "a,b\r\n1,2,3\r\n", ProblemCode::raggedRow, 2, 3, {"2", "3"}},
    {"too few fields", "a,b,c\r\n1\r\n", ProblemCode::raggedRow, 2, 2, {"3", "1"}},
    {"text after a closing quote", "a,b\r\n1,\"x\"y\r\n", ProblemCode::badQuote, 2, 2, {}},
    {"space before a quote", "a,b\r\n1, \"x\"\r\n", ProblemCode::badQuote, 2, 2, {}},
    {"after a break within quotes", "a,b\r\n\"x\r\ny\",2\r\n1,\"", ProblemCode::badQuote, 4, 2, {}},
    {"semicolons", "id;name\r\n1;Dill\r\n", ProblemCode::wrongSeparator, 1, 1, {"semicolon"}},
    {"semicolons, quoted", "\"id\";\"name\"\r\n", ProblemCode::wrongSeparator, 1, 1, {"semicolon"}},
    {"tabs after an empty line", "\nid\tname\n1\tDill\n", ProblemCode::wrongSeparator, 2, 1, {"tab"}},
    {"nothing", "", ProblemCode::emptyFile, 0, 0, {}},
    {"only a byte-order mark", "\xEF\xBB\xBF", ProblemCode::emptyFile, 0, 0, {}},
    {"only breaks", "\r\n\n\r", ProblemCode::emptyFile, 0, 0, {}},
    {"NUL", std::string("a,b\r\n1,x\0y\r\n", 11), ProblemCode::notText, 2, 2, {}},
    {"Latin-1", "a,b\r\n1,d\xE9licat\r\n", ProblemCode::notText, 2, 2, {}},
    {"UTF-16",
     std::string("\xFF\xFE"
                 "a\0,\0b\0",
                 8),
     ProblemCode::notText,
     1,
     1,
     {}},
    // RFC 3629, section 3: no overlong forms, no surrogates.
    {"overlong", "a\r\n\xC0\xAF\r\n", ProblemCode::notText, 2, 1, {}},
    {"surrogate", "a\r\n\xED\xA0\x80\r\n", ProblemCode::notText, 2, 1, {}},
    {"cut short", "a\r\n\xE2\x9C", ProblemCode::notText, 2, 1, {}},
};

TEST(Csv, SaysWhatIsWrongAndWhere) {
    for (const auto& c : badTexts) {
        SCOPED_TRACE(c.name);
        const auto rows = parseCsv(c.text);
        ASSERT_FALSE(rows.ok());
        ASSERT_EQ(rows.error().size(), 1u);
        const Problem& p = rows.error().front();
        EXPECT_EQ(p.code, c.code);
        EXPECT_EQ(p.line, c.line);
        EXPECT_EQ(p.column, c.column);
        EXPECT_EQ(p.details, c.details);
    }
}

TEST(Csv, ListsEveryRaggedRow) {
    const auto rows = parseCsv("a,b\n1\n1,2\n1,2,3\n");
    ASSERT_FALSE(rows.ok());
    ASSERT_EQ(rows.error().size(), 2u);
    EXPECT_EQ(rows.error()[0].line, 2);
    EXPECT_EQ(rows.error()[1].line, 4);
}

TEST(Csv, KnowsWhereEachFieldBegins) {
    const auto rows = parseCsv("a,b\r\n\"one\r\ntwo\rthree\nfour\",x\r\n1,2\r\n");
    ASSERT_TRUE(rows.ok());
    EXPECT_EQ((*rows)[1].line, 2);
    EXPECT_EQ((*rows)[1].fields[0].line, 2);
    EXPECT_EQ((*rows)[1].fields[1].line, 5);
    EXPECT_EQ((*rows)[1].fields[1].column, 2);
    EXPECT_EQ((*rows)[2].line, 6);
}

TEST(Csv, QuotesOnlyWhereNeeded) {
    // RFC 4180, section 2, rules 5 to 7; a field that begins like a byte-order mark is ours.
    const std::pair<std::string, std::string> cases[] = {
        {"plain", "plain"},
        {" spaces ", " spaces "},
        {"=1+1", "=1+1"},
        {"a;b", "a;b"},
        {"", ""},
        {"a,b", "\"a,b\""},
        {"a\"b", "\"a\"\"b\""},
        {"a\nb", "\"a\nb\""},
        {"\r", "\"\r\""},
        {"\xEF\xBB\xBFx", "\"\xEF\xBB\xBFx\""},
    };
    for (const auto& [text, written] : cases)
        EXPECT_EQ(csvField(text), written);
    EXPECT_EQ(csvRow({"a", "", "b c"}), "a,,b c\r\n");
    EXPECT_EQ(csvRow({""}), "\"\"\r\n");
    EXPECT_EQ(csvRow({"a;b"}), "\"a;b\"\r\n") << "alone, it would look like two fields";
}

TEST(Csv, TakesALargeTextInItsStride) {
    for (const int n : {50'000, 200'000}) {
        std::string text = "a,b\n";
        for (int i = 0; i < n; ++i)
            text += "\"x\"\"y\nz\",2\n";
        const auto rows = parseCsv(text);
        ASSERT_TRUE(rows.ok());
        EXPECT_EQ(rows->size(), static_cast<std::size_t>(n) + 1);
        EXPECT_EQ(rows->back().line, 2 * n);
    }
}

TEST(Csv, ShortensWhatItQuotesBack) {
    const auto rows = parseCsv("a\n\"" + std::string(1'000'000, 'x'));
    ASSERT_FALSE(rows.ok());
    EXPECT_LT(rows.error().front().value.size(), 300u);
}

} // namespace
} // namespace withy::exchange
