using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Papers.Documents;
using Casewright.Papers.Spreadsheets;
using Casewright.Papers.Tests.Documents;
using ClosedXML.Excel;
using Microsoft.VisualBasic.FileIO;

namespace Casewright.Papers.Tests.Spreadsheets;

public class SpreadsheetTests
{
    private static readonly DateTime Created = new(2026, 11, 25, 0, 0, 0, DateTimeKind.Utc);

    [Fact]
    public void PartsReadBackEqualThePlan()
    {
        var plan = HandPlan.Of();
        var rows = ReadCsv(CsvLists.ToText(PlanLists.Parts(plan)));
        Assert.Equal(plan.Parts.Count, rows.Count - 1);
        for (var i = 0; i < plan.Parts.Count; i++)
        {
            var (part, row) = (plan.Parts[i], rows[i + 1]);
            Assert.Equal(part.Id, row[0]);
            Assert.Equal(part.Name, row[1]);
            Assert.Equal(part.Length, Length.FromMillimetres(decimal.Parse(row[7], CultureInfo.InvariantCulture)));
            Assert.Equal(part.Width, Length.FromMillimetres(decimal.Parse(row[8], CultureInfo.InvariantCulture)));
            Assert.Equal(part.Thickness, Length.FromMillimetres(decimal.Parse(row[9], CultureInfo.InvariantCulture)));
        }
    }

    [Fact]
    public void PiecesOfAJobInInchesKeepTheirExactMillimetres()
    {
        var plan = HandPlan.Of(UnitSystem.Inches);
        var rows = ReadCsv(CsvLists.ToText(PlanLists.Pieces(plan)));
        Assert.Equal(plan.Cutting.Pieces.Select(piece => piece.Id), rows.Skip(1).Select(row => row[0]), StringComparer.Ordinal);
        Assert.Equal(plan.Cutting.Pieces.Select(piece => piece.Length), rows.Skip(1).Select(row => Length.FromMillimetres(decimal.Parse(row[6], CultureInfo.InvariantCulture))));
        // 77 3/4 and 1/8 for squaring.
        Assert.Equal("77 7/8", rows[1][9]);
    }

    [Fact]
    public void TheWorkbookHoldsTheSameAsThePlan()
    {
        var plan = HandPlan.Of();
        var tables = new[] { PlanLists.Parts(plan), PlanLists.Pieces(plan), PlanLists.Buying(plan) };
        using var stream = new MemoryStream(Workbook.ToBytes(tables, "Reading room", Created));
        using var workbook = new XLWorkbook(stream);
        Assert.Equal(["parts", "pieces", "buying"], workbook.Worksheets.Select(sheet => sheet.Name), StringComparer.Ordinal);
        foreach (var table in tables)
        {
            var sheet = workbook.Worksheet(table.Name);
            for (var row = 0; row < table.Rows.Count; row++)
            {
                for (var column = 0; column < table.Columns.Count; column++)
                    AssertCell(table.Rows[row][column], sheet.Cell(row + 2, column + 1));
            }
        }

        Assert.Equal(BuyingList.Lines(plan).Count, workbook.Worksheet("buying").LastRowUsed().RowNumber() - 1);
    }

    [Fact]
    public void TheSamePlanGivesTheSameWorkbook()
    {
        var tables = new[] { PlanLists.Parts(HandPlan.Of(cases: 1)) };
        Assert.Equal(Workbook.ToBytes(tables, "job", Created), Workbook.ToBytes(tables, "job", Created));
    }

    // RFC 4180, section 2: fields with commas, quotes or line breaks are quoted, quotes doubled, records end in CRLF.
    [Fact]
    public void CommasQuotesAndBreaksAreQuoted()
    {
        var table = new ListTable("test", ["a", "b"], [["8\" shelf, left", "two\nlines"], ["plain", 1.50m], [null, "é"]]);
        Assert.Equal("a,b\r\n\"8\"\" shelf, left\",\"two\nlines\"\r\nplain,1.5\r\n,é\r\n", CsvLists.ToText(table));
    }

    // Spreadsheets run a cell that starts with one of these as a formula (OWASP, CSV injection).
    [Theory]
    [InlineData("=HYPERLINK(\"http://x\")")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1")]
    public void NamesCannotRunAsFormulas(string name)
    {
        var plan = HandPlan.Of(cases: 1);
        var wicked = plan with { Parts = plan.Parts.Select(part => part with { Name = name }).ToValueList() };
        Assert.All(ReadCsv(CsvLists.ToText(PlanLists.Parts(wicked))).Skip(1), row => Assert.Equal("'" + name, row[1]));
        using var stream = new MemoryStream(Workbook.ToBytes([PlanLists.Parts(wicked)], "job", Created));
        using var workbook = new XLWorkbook(stream);
        var cell = workbook.Worksheet("parts").Cell(2, 2);
        Assert.False(cell.HasFormula);
        Assert.Equal(name, cell.GetString());
    }

    [Fact]
    public void NegativeNumbersStayNumbers() => Assert.Equal("a\r\n-5\r\n", CsvLists.ToText(new("test", ["a"], [[-5m]])));

    private static void AssertCell(object? expected, IXLCell cell)
    {
        if (expected is decimal number)
            Assert.Equal((double)number, cell.GetDouble(), 1e-9);
        else
            Assert.Equal(expected as string ?? "", cell.GetString());
    }

    // Read with the framework's own parser, which knows nothing of our writer.
    private static List<string[]> ReadCsv(string text)
    {
        using var parser = new TextFieldParser(new StringReader(text)) { TextFieldType = FieldType.Delimited, HasFieldsEnclosedInQuotes = true, TrimWhiteSpace = false };
        parser.SetDelimiters(",");
        var rows = new List<string[]>();
        while (!parser.EndOfData)
            rows.Add(parser.ReadFields()!);
        return rows;
    }
}
