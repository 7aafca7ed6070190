using System.Text;
using Casewright.Model.Design;
using Casewright.Model.Files;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Model.Tests.Files;

/// <summary>Wrong job files: each problem names its path, its line and column, what was found and what is accepted.</summary>
public sealed class JobFileErrorTests
{
    private static readonly string s_starter = StarterJob.Text(UnitSystem.Millimetres);

    public static TheoryData<string, string, string, string, string> Faults => new()
    {
        // written, by, path, message, accepted
        { "\"depth\": \"320 mm\"", "\"depth\": 320", "runs[0].depth", "not as a bare number", "\"320 mm\"" },
        { "\"depth\": \"320 mm\"", "\"depth\": \"0 mm\"", "runs[0].depth", "must not be zero", "3 m" },
        { "\"depth\": \"320 mm\"", "\"depth\": \"-320 mm\"", "runs[0].depth", "must not be negative", "3 m" },
        { "\"depth\": \"320 mm\"", "\"depth\": \"320 m\"", "runs[0].depth", "too large", "3 m" },
        { "\"depth\": \"320 mm\"", "\"depth\": \"12.6\"", "runs[0].depth", "was 12.6 in meant?", "3 m" },
        { "\"depth\": \"320 mm\"", "\"depth\": \"320 inn\"", "runs[0].depth", "'inn' is no unit", "3013 mm" },
        { "\"depth\": \"320 mm\"", "\"depth\": \"12 5/8\"", "runs[0].depth", "fraction without a unit", "118 5/8 in" },
        { "\"depth\": \"320 mm\"", "\"depth\": \"1/3 in\"", "runs[0].depth", "would have to be rounded", "21/64" },
        { "\"depth\": \"320 mm\"", "\"depth\": null", "runs[0].depth", "A length is needed", "50 mm to 3 m" },
        { "\"depth\": \"320 mm\",", "", "runs[0].depth", "\"depth\" is missing", "50 mm to 3 m" },
        { "\"depth\": \"320 mm\"", "\"dept\": \"320 mm\"", "runs[0].dept", "no such field", "did you mean depth?" },
        { "\"depth\": \"320 mm\"", "\"depth\": \"320 mm\", \"depth\": \"300 mm\"", "runs[0].depth", "written twice", "once" },
        { "\"height\": \"100 mm\"", "\"height\": \"0 mm\"", "runs[0].base.height", "must not be zero", "5 m" },
        { "\"kind\": \"plinth\", \"height\": \"100 mm\", \"setback\": \"50 mm\", \"shimRoom\": \"15 mm\"", "\"kind\": \"none\", \"height\": \"100 mm\"", "runs[0].base.height", "there is no \"height\"", "out" },
        { "\"kind\": \"plinth\"", "\"kind\": \"plinthe\"", "runs[0].base.kind", "none of the words", "did you mean plinth?" },
        { "\"head\": { \"gap\": \"60 mm\" }", "\"head\": { \"gap\": \"60 mm\", \"height\": \"2500 mm\" }", "runs[0].head.height", "cannot stand together", "exactly one" },
        { "\"head\": { \"gap\": \"60 mm\" }", "\"head\": { }", "runs[0].head", "Neither \"height\" nor \"gap\"", "exactly one" },
        { "\"material\": \"birch-6\", \"inset\"", "\"inset\"", "runs[0].back.material", "is needed", "material" },
        { "\"material\": \"birch-6\", \"inset\"", "\"material\": \"birch6\", \"inset\"", "runs[0].back.material", "no sheet material", "did you mean birch-6?" },
        { "\"material\": \"birch-6\", \"inset\"", "\"material\": \"band-60\", \"inset\"", "runs[0].back.material", "A sheet material is needed here; this is a board material", "birch-6" },
        { "\"shelves\": \"nosing-38\"", "\"shelves\": \"birch-18\"", "runs[0].nosing.shelves", "A board material is needed", "nosing-38" },
        { "\"wall\": \"alcove\"", "\"wall\": \"north\"", "runs[0].wall", "no wall", "alcove" },
        { "\"division\": { \"bays\": 2, \"baysPerCase\": 1 },", "", "runs[0]", "Neither \"division\" nor \"columns\"", "exactly one" },
        { "\"bays\": 2", "\"bays\": 2001", "runs[0].division.bays", "out of range", "1 to 2000" },
        { "\"bays\": 2", "\"bays\": 2.5", "runs[0].division.bays", "whole number", "1 to 2000" },
        { "\"construction\": \"frameless\"", "\"construction\": \"faceFrame\"", "runs[0].faceFrame", "is needed", "faceFrame" },
        { "\"fixedShelvesAt\": [\"1100 mm\"]", "\"fixedShelvesAt\": [\"1100 mm\", \"900 mm\"]", "runs[0].tiers[0].interior.fixedShelvesAt[1]", "not above", "rise" },
        { "\"fixedShelvesAt\": [\"1100 mm\"]", "\"fixedShelvesAt\": [\"1100 mm\"], \"fixedShelves\": 3", "runs[0].tiers[0].interior.fixedShelves", "cannot stand together", "at most one" },
        { "\"load\": \"30 kg/m\"", "\"load\": 30", "runs[0].tiers[0].interior.load", "text with its unit", "lb/ft" },
        { "\"load\": \"30 kg/m\"", "\"load\": \"30 kg\"", "runs[0].tiers[0].interior.load", "units accepted here", "lb/ft" },
        { "\"price\": 78.00", "\"price\": -78.00", "stock.sheets[0].price", "must not be negative", "0" },
        { "\"price\": 78.00", "\"price\": \"78\"", "stock.sheets[0].price", "amount of money", "84.50" },
        { "\"price\": 78.00", "\"price\": 78.00005", "stock.sheets[0].price", "too many decimals", "four" },
        { "\"id\": \"birch-6-2440\"", "\"id\": \"birch-18-2440\"", "stock.sheets[1].id", "already taken", "own" },
        { "\"id\": \"nosing-2400\"", "\"id\": \"birch-18-2440\"", "stock.boards[0].id", "already taken", "own" },
        { "\"id\": \"birch-6\",", "\"id\": \"birch-18\",", "stock.materials[1].id", "already taken", "own" },
        { "\"id\": \"books\"", "\"id\": \"left/books\"", "runs[0].id", "cannot stand here", "letters" },
        { "\"measured\": \"17.8 mm\"", "\"measured\": \"0.7 mm\"", "stock.materials[0].measured", "far from the nominal", "half" },
        { "\"hasGrain\": true },\n      { \"id\": \"birch-6\"", "\"hasGrain\": 1 },\n      { \"id\": \"birch-6\"", "stock.materials[0].hasGrain", "true or false", "true or false" },
        { "\"currency\": \"EUR\"", "\"currency\": \"EURO\"", "currency", "none of the words", "did you mean EUR?" },
        { "\"units\": \"millimetres\"", "\"units\": \"mm\"", "units", "none of the words", "millimetres, inches" },
        { "\"kerf\": \"2.8 mm\"", "\"kerf\": \"28 mm\"", "shop.saw.kerf", "too large", "20 mm" },
        { "\"kerf\": \"2.8 mm\", ", "", "shop.saw.kerf", "\"kerf\" is missing", "20 mm" },
        { "\"stages\": \"three\"", "\"stages\": 3", "shop.saw.stages", "few words", "two, three, any" },
        { "\"method\": \"looseTenons\"", "\"method\": \"tenonsAndConnectors\"", "shop.splicing.methods[1].method", "listed twice", "once" },
        { "\"revision\": 1", "\"revision\": 1, \"date\": \"2026-02-30\"", "date", "no date", "year-month-day" },
        { "\"casewright\": 1", "\"casewright\": 2", "casewright", "newer version", "1" },
        { "\"casewright\": 1", "\"casewright\": 0", "casewright", "no such version", "1" },
        { "\"casewright\": 1", "\"casewright\": \"1\"", "casewright", "whole number", "1" },
        { "\"casewright\": 1,", "", "casewright", "This is no job file", "1" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Each_fault_is_the_only_problem_and_is_told_at_its_place(string written, string by, string path, string message, string accepted)
    {
        Assert.Contains(written, s_starter, StringComparison.Ordinal);
        var at = s_starter.IndexOf(written, StringComparison.Ordinal);
        var text = string.Concat(s_starter.AsSpan(0, at), by, s_starter.AsSpan(at + written.Length));

        var problem = Assert.Single(JobFile.Read(text).Problems, p => p.Path == path);

        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains(accepted, problem.Accepted, StringComparison.Ordinal);
        // The place is inside what was written, or at the object that lacks a field, which begins before it.
        var place = Offset(text, problem);
        Assert.True(place <= at + by.Length, $"{problem} is placed after the fault.");
        if (!problem.Message.Contains("missing", StringComparison.Ordinal) && !problem.Message.Contains("is needed.", StringComparison.Ordinal)
            && !problem.Message.StartsWith("Neither", StringComparison.Ordinal))
        {
            Assert.True(place >= at, $"{problem} is placed before the fault.");
            Assert.NotEmpty(problem.Found);
        }
    }

    [Fact]
    public void All_problems_are_reported_at_once_in_the_order_of_the_file()
    {
        var text = s_starter
            .Replace("\"width\": \"1486 mm\"", "\"width\": 1486", StringComparison.Ordinal)
            .Replace("\"wall\": \"alcove\"", "\"wall\": \"north\"", StringComparison.Ordinal)
            .Replace("\"price\": 78.00", "\"price\": -1", StringComparison.Ordinal)
            .Replace("\"hourlyRate\"", "\"hourRate\"", StringComparison.Ordinal);
        Assert.Equal(
            ["walls[0].width", "runs[0].wall", "stock.sheets[0].price", "shop.hourlyRate", "shop.hourRate"],
            JobFile.Read(text).Problems.Select(p => p.Path));
    }

    [Fact]
    public void Line_and_column_are_those_of_the_value()
    {
        const string Text = "{\r\n  \"casewright\": 1, // ½ of a line\r\n  \"name\": \"é棚\", \"units\": 5 }";
        var problem = Assert.Single(JobFile.Read(Text).Problems, p => p.Path == "units");
        Assert.Equal((3, 26), (problem.Line, problem.Column));
        Assert.StartsWith("line 3, column 26: units: ", problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_is_no_JSON_is_told_with_its_place()
    {
        var problem = Assert.Single(JobFile.Read("{\n  \"casewright\": 1,\n  \"width\": \"118 5/8\"\"\n}").Problems);
        Assert.Equal((3, 21), (problem.Line, problem.Column));
        Assert.Contains("inch mark", problem.Accepted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  \r\n")]
    [InlineData("// only a comment")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("\"casewright\"")]
    [InlineData("{")]
    [InlineData("{}{}")]
    [InlineData("{\"name\": \"\\ud800\"}")]
    [InlineData("{\"a\": 1e999999999}")]
    [InlineData("NaN")]
    public void Other_texts_are_no_job_files(string text) => Assert.NotEmpty(JobFile.Read(text).Problems);

    [Fact]
    public void Zero_kerf_is_accepted() =>
        Assert.Equal(Length.Zero, JobFile.Read(s_starter.Replace("\"2.8 mm\"", "\"0 mm\"", StringComparison.Ordinal)).Value!.Shop.Saw.Kerf);

    [Fact]
    public void A_thousand_bays_are_accepted_by_the_file_whatever_the_planner_says_of_them() =>
        Assert.Equal(1000, JobFile.Read(s_starter.Replace("\"bays\": 2", "\"bays\": 1000", StringComparison.Ordinal)).Value!.Runs[0].Division!.Bays);

    [Fact]
    public void Byte_order_mark_line_endings_comments_and_trailing_commas_do_not_matter()
    {
        var expected = JobFile.Read(s_starter).Value!;
        var windows = s_starter.ReplaceLineEndings("\r\n");
        Assert.Equal(expected, JobFile.Read(windows).Value);
        Assert.Equal(expected, JobFile.Read("\uFEFF" + windows).Value);
        Assert.Equal(expected, JobFile.Read([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(windows)]).Value);
        Assert.Equal(expected, JobFile.Read(s_starter.Replace("\"Me\"", "\"Me\", /* and nobody else */", StringComparison.Ordinal)).Value);
        Assert.Equal(expected, JobFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(s_starter))).Value);
        Assert.Equal(expected, JobFile.Read(s_starter.Replace("\"casewright\": 1,", "\"$schema\": \"job.schema.json\", \"casewright\": 1,", StringComparison.Ordinal)).Value);
    }

    [Fact]
    public void Other_encodings_are_named()
    {
        Assert.Contains("UTF-16", Assert.Single(JobFile.Read([.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(s_starter)]).Problems).Message, StringComparison.Ordinal);
        Assert.Contains("UTF-8", Assert.Single(JobFile.Read(Encoding.Latin1.GetBytes("{\"name\": \"Büro\"}")).Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_50_MB_is_refused_after_reading_no_more_than_the_limit()
    {
        using var stream = new CountingStream(50_000_000);
        var problem = Assert.Single(JobFile.Read(stream).Problems);
        Assert.Contains("too large", problem.Message, StringComparison.Ordinal);
        Assert.Contains("16 MB", problem.Accepted, StringComparison.Ordinal);
        Assert.InRange(stream.Position, JobFile.LargestSize, JobFile.LargestSize + 100_000);
        Assert.Contains("too large", Assert.Single(JobFile.Read(new byte[50_000_000]).Problems).Message, StringComparison.Ordinal);
        Assert.Contains("too large", Assert.Single(JobFile.Read(new string(' ', 50_000_000)).Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Deep_nesting_is_refused()
    {
        Assert.Contains("too deep", Assert.Single(JobFile.Read(new string('[', 1_000_000)).Problems).Message, StringComparison.Ordinal);
        var objects = new StringBuilder().Insert(0, "{\"a\":", 100_000).ToString();
        Assert.Contains("too deep", Assert.Single(JobFile.Read(objects).Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_full_of_faults_is_told_in_a_hundred_problems_and_a_count()
    {
        var fields = string.Join(',', Enumerable.Range(0, 200_000).Select(i => $"\"field{i}\": {i}"));
        var problems = JobFile.Read($"{{\"casewright\": 1, {fields}}}").Problems;
        Assert.Equal(101, problems.Count);
        Assert.Matches("^There are [0-9]+ more problems", problems[^1].Message);
    }

    [Fact]
    public void A_list_that_is_too_long_is_refused_without_reading_its_items()
    {
        var walls = string.Join(',', Enumerable.Repeat("{}", 100_000));
        var problem = Assert.Single(JobFile.Read($"{{\"casewright\": 1, \"walls\": [{walls}]}}").Problems, p => p.Path.StartsWith("walls", StringComparison.Ordinal));
        Assert.Equal("100000 entries", problem.Found);
    }

    [Fact]
    public void The_largest_job_written_case_by_case_stays_far_below_the_limit()
    {
        var job = JobFile.Read(s_starter).Value!;
        var tier = job.Runs[0].Tiers[0] with { Height = Length.FromMillimetres(1200) };
        var column = new ColumnDesign { Id = "c", Width = Length.FromInches(23, 5, 64), Interiors = [.. Enumerable.Repeat(tier.Interior, 3)] };
        var run = job.Runs[0] with
        {
            Division = null,
            Columns = [.. Enumerable.Range(0, 2000).Select(i => column with { Id = $"column-{i}" })],
            Tiers = [tier, tier, tier],
        };
        var text = JobFile.Write(job with { Runs = [run] });
        Assert.True(Encoding.UTF8.GetByteCount(text) < 4_000_000);
        Assert.Equal(run, JobFile.Read(text).Value!.Runs[0]);
    }

    [Fact]
    public void A_job_too_large_to_be_meant_is_refused()
    {
        var run = JobFile.Read(s_starter).Value! is { } job ? job.Runs[0] : null;
        var large = JobFile.Read(s_starter).Value! with
        {
            Runs = [.. Enumerable.Range(0, 3).Select(i => run! with { Id = $"r{i}", Division = new() { Bays = 1000 } })],
        };
        Assert.Contains(JobFile.Read(JobFile.Write(large)).Problems, p => p.Path == "runs" && p.Message.Contains("too many bays", StringComparison.Ordinal));
    }

    private static int Offset(string text, Problem problem)
    {
        var start = 0;
        for (var line = 1; line < problem.Line; line++)
            start = text.IndexOf('\n', start) + 1;
        return start + problem.Column!.Value - 1;
    }

    /// <summary>Blanks without end, which counts how far it was read.</summary>
    private sealed class CountingStream(long length) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => length;

        public override long Position { get; set; }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = (int)Math.Min(count, length - Position);
            buffer.AsSpan(offset, read).Fill((byte)' ');
            Position += read;
            return read;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
