using System.CommandLine;
using System.Text.Json;
using Casewright.App.Commands;
using Casewright.Model.Files;
using Casewright.Model.Measure;
using Json.Schema;

namespace Casewright.App.Tests.Commands;

/// <summary>The command line, run as a shell would run it, with its output piped.</summary>
public sealed class CommandTests : IDisposable
{
    private static JsonSchema? s_planSchema;
    private readonly string _folder = Directory.CreateTempSubdirectory("casewright-commands").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Plan_writes_a_packet_names_its_files_and_the_one_to_open_first()
    {
        var job = Starter();

        var (code, output, errors) = await Run("plan", job, "--out", At("packet"));

        Assert.True(code is ExitCode.Done or ExitCode.PlannedWithStop, errors);
        Assert.Empty(errors);
        Assert.Contains($"Open first: {Path.Combine(At("packet"), "packet.pdf")}", output);
        string[] files = ["packet.pdf", "plan.json", "parts.csv", "pieces.csv", "buying.csv", "lists.xlsx", "span-tables.pdf", "model.glb"];
        Assert.All(files, file => Assert.True(new FileInfo(Path.Combine(At("packet"), file)).Length > 100, file));
        Assert.NotEmpty(Directory.EnumerateFiles(At("packet/drawings"), "*.svg"));
        Assert.Equal(["packet", "starter.json"], Entries());
    }

    [Fact]
    public async Task A_calculation_is_told_with_formula_figures_limit_and_source_or_written_as_a_sheet()
    {
        var job = Starter();

        var (code, output, errors) = await Run("check", job, "--calculation", "case-weight");
        var sheet = await Run("check", job, "--calculation", "case-weight:C1", "--out", At("sheet.pdf"));
        var unknown = await Run("check", job, "--calculation", "no-such-check");
        var nobody = await Run("check", job, "--calculation", "case-weight:C99");
        var alone = await Run("check", job, "--out", At("other.pdf"));

        Assert.True(code is ExitCode.Done or ExitCode.PlannedWithStop, errors);
        foreach (var word in (string[])["case-weight: C", "Formula: people", "recommended mass for one person", "Result:", "held to 23 kg", "limit: mass per person", "Source: Volume", "common practice", "not a permit"])
            Assert.Contains(word, output, StringComparison.Ordinal);
        Assert.True(sheet.Code is ExitCode.Done or ExitCode.PlannedWithStop, sheet.Errors);
        Assert.StartsWith("%PDF", await File.ReadAllTextAsync(At("sheet.pdf"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal((ExitCode.JobWrong, ExitCode.JobWrong, ExitCode.JobWrong), (unknown.Code, nobody.Code, alone.Code));
        Assert.Contains("There is no check no-such-check", unknown.Errors, StringComparison.Ordinal);
        Assert.Contains("says nothing of C99", nobody.Errors, StringComparison.Ordinal);
        Assert.Contains("--calculation", alone.Errors, StringComparison.Ordinal);
        Assert.Equal(["sheet.pdf", "starter.json"], Entries());
    }

    [Fact]
    public async Task A_second_plan_replaces_the_packet_and_leaves_other_files_of_a_folder_alone()
    {
        var job = Starter();
        await Run("plan", job, "--out", At("packet"));
        await File.WriteAllTextAsync(At("packet/stale.txt"), "of the old packet", TestContext.Current.CancellationToken);
        Directory.CreateDirectory(At("mine"));
        await File.WriteAllTextAsync(At("mine/letter.txt"), "not ours", TestContext.Current.CancellationToken);

        var again = await Run("plan", job, "--out", At("packet"));
        var foreign = await Run("plan", job, "--out", At("mine"));

        Assert.True(again.Code is ExitCode.Done or ExitCode.PlannedWithStop);
        Assert.False(File.Exists(At("packet/stale.txt")));
        Assert.Equal(ExitCode.Files, foreign.Code);
        Assert.Equal(["letter.txt"], Directory.EnumerateFileSystemEntries(At("mine")).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Plan_as_json_prints_a_file_that_its_published_schema_accepts_and_nothing_else()
    {
        var (_, output, errors) = await Run("plan", Starter(), "--json");

        Assert.Empty(errors);
        using var document = JsonDocument.Parse(output);
        var schema = await PublishedPlanSchema();
        var result = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("; ", result.Details!.Where(d => d.Errors is not null).Take(5).Select(d => d.InstanceLocation + " " + string.Join(",", d.Errors!.Values))));
        Assert.Equal(["starter.json"], Entries());
    }

    // A schema may be registered under its address once in a process.
    private async Task<JsonSchema> PublishedPlanSchema() => s_planSchema ??= JsonSchema.FromText((await Run("schema", "plan")).Output);

    [Fact]
    public async Task A_wrong_job_file_gives_every_error_with_its_path_and_exit_code_2()
    {
        var job = Starter(text => text.Replace("\"kerf\"", "\"kerfs\"", StringComparison.Ordinal));

        var (code, output, errors) = await Run("plan", job, "--out", At("packet"));

        Assert.Equal(ExitCode.JobWrong, code);
        Assert.Empty(output);
        Assert.Contains("shop.saw", errors);
        Assert.Contains("kerfs", errors);
        Assert.Equal(["starter.json"], Entries());
    }

    [Fact]
    public async Task A_missing_file_is_named_with_exit_code_4()
    {
        var (code, _, errors) = await Run("plan", At("nowhere.json"));

        Assert.Equal(ExitCode.Files, code);
        Assert.Contains("nowhere.json", errors);
    }

    [Fact]
    public async Task Stopping_a_plan_leaves_nothing_behind()
    {
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();

        var (code, output, errors) = await Run(stop.Token, "plan", Starter(), "--out", At("packet"));

        Assert.Equal(ExitCode.Cancelled, code);
        Assert.Empty(output);
        Assert.Contains("nothing was written", errors);
        Assert.Equal(["starter.json"], Entries());
    }

    [Fact]
    public async Task Check_prints_findings_and_writes_nothing()
    {
        var (code, output, _) = await Run("check", Starter());

        Assert.True(code is ExitCode.Done or ExitCode.PlannedWithStop);
        Assert.Matches(@"\d+ stop, \d+ caution, \d+ not checked, \d+ passed\.", output);
        Assert.Equal(["starter.json"], Entries());
    }

    [Theory]
    [InlineData("mm")]
    [InlineData("in")]
    public async Task New_writes_a_job_that_reads_and_never_overwrites(string units)
    {
        var first = await Run("new", At("mine.json"), "--units", units);
        var text = await File.ReadAllTextAsync(At("mine.json"), TestContext.Current.CancellationToken);
        var second = await Run("new", At("mine.json"), "--units", units);

        Assert.Equal(ExitCode.Done, first.Code);
        Assert.True(JobFile.Read(text).Succeeded);
        Assert.Equal(ExitCode.Files, second.Code);
        Assert.Equal(text, await File.ReadAllTextAsync(At("mine.json"), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Help_names_every_command_and_an_unknown_one_is_refused()
    {
        var help = await Run("--help");
        var unknown = await Run("saw");

        Assert.Equal(ExitCode.Done, help.Code);
        Assert.All(["plan", "check", "schema", "new", "serve"], name => Assert.Contains(name, help.Output));
        Assert.NotEqual(ExitCode.Done, unknown.Code);
    }

    [Fact]
    public async Task Serve_says_why_a_store_cannot_be_opened_and_touches_nothing()
    {
        await File.WriteAllTextAsync(At("notes.txt"), "This is a page of notes and no store of jobs, long enough to be read as one.", TestContext.Current.CancellationToken);

        var notAStore = await Run("serve", "--port", "0", "--store", At("notes.txt"));
        var noServer = await Run("serve", "--port", "0", "--database", $"Host={_folder};Database=jobs;Username=bench;Timeout=5");
        var badWord = await Run("serve", "--port", "0", "--database", "Hats=3");
        var both = await Run("serve", "--port", "0", "--store", At("jobs.db"), "--database", "Host=shop;Database=jobs");

        Assert.All([notAStore, noServer, badWord, both], run => Assert.Equal(ExitCode.Files, run.Code));
        Assert.Contains("notes.txt cannot be opened", notAStore.Errors);
        Assert.Contains("PostgreSQL", noServer.Errors);
        Assert.Contains("Hats", badWord.Errors, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Give one of them", both.Errors);
        Assert.Equal(["notes.txt"], Entries());
    }

    [Fact]
    public async Task Compare_sets_the_ways_side_by_side_and_one_can_be_adopted()
    {
        var job = Starter();

        var (code, output, errors) = await Run("compare", job, "--quick", "--json", "--adopt", "stacked", "--out", At("stacked.json"));
        var twice = await Run("compare", job, "--quick", "--adopt", "stacked", "--out", At("stacked.json"));
        var alone = await Run("compare", job, "--adopt", "stacked");

        Assert.Equal((ExitCode.Done, true), (code, errors.Contains("stacked.json", StringComparison.Ordinal)));
        using var document = JsonDocument.Parse(output);
        Assert.Equal(["designedAway", "stacked", "longSheets", "spliced", "mixed"], document.RootElement.GetProperty("schemes").EnumerateArray().Select(s => s.GetProperty("name").GetString()));
        Assert.Equal(2, JobFile.Read(await File.ReadAllTextAsync(At("stacked.json"), TestContext.Current.CancellationToken)).Value!.Runs[0].Tiers.Count);
        Assert.Equal(ExitCode.Files, twice.Code);
        Assert.Contains("Not feasible", twice.Output, StringComparison.Ordinal);
        Assert.NotEqual(ExitCode.Done, alone.Code);
        Assert.Contains("go together", alone.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_with_schemes_puts_the_ways_into_plan_json()
    {
        var (_, output, _) = await Run("plan", Starter(), "--schemes", "--json");

        using var document = JsonDocument.Parse(output);
        var schemes = document.RootElement.GetProperty("schemes").EnumerateArray().ToList();
        Assert.Equal(["designedAway", "stacked", "longSheets", "spliced", "mixed"], schemes.Select(s => s.GetProperty("name").GetString()));

        // The mix is the job as it stands: its figures are those of the plan itself.
        Assert.Equal(document.RootElement.GetProperty("sheets").GetArrayLength(), schemes[4].GetProperty("sheets").GetInt32());
        Assert.Equal(document.RootElement.GetProperty("price").GetProperty("net").GetDecimal(), schemes[4].GetProperty("total").GetDecimal());
        Assert.True((await PublishedPlanSchema()).Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public async Task A_way_that_cannot_be_built_is_not_adopted()
    {
        var (code, _, errors) = await Run("compare", Starter(), "--quick", "--adopt", "long-sheets", "--out", At("whole.json"));

        Assert.Equal(ExitCode.NoPlan, code);
        Assert.Contains("cannot be adopted", errors, StringComparison.Ordinal);
        Assert.False(File.Exists(At("whole.json")));
    }

    [Fact]
    public async Task Nudge_plans_no_more_changes_than_asked_and_says_how_many()
    {
        var (code, output, _) = await Run("nudge", Starter(), "--most", "2", "--json");
        var wrong = await Run("nudge", Starter(), "--most", "0");

        Assert.Equal(ExitCode.Done, code);
        using var document = JsonDocument.Parse(output);
        Assert.InRange(document.RootElement.GetProperty("tried").GetInt32(), 1, 2);
        Assert.NotEqual(ExitCode.Done, wrong.Code);
    }

    [Fact]
    public async Task Cut_records_what_is_sawn_and_the_job_it_writes_is_planned_around_it()
    {
        var job = Starter();
        var (code, output, errors) = await Run("cut", job, "--done", "S1", "--out", At("cut.json"));
        var twice = await Run("cut", job, "--done", "S1", "--out", At("cut.json"));
        var unknown = await Run("cut", job, "--done", "S99", "--lost", "nobody", "--out", At("other.json"));
        var planned = await Run("plan", At("cut.json"), "--json");

        Assert.True(code == ExitCode.Done, errors);
        Assert.Contains("Sawn so far: sheets 1, boards 0", output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Files, twice.Code);
        Assert.Equal(ExitCode.JobWrong, unknown.Code);
        Assert.Contains("S99", unknown.Errors, StringComparison.Ordinal);
        Assert.Contains("nobody", unknown.Errors, StringComparison.Ordinal);
        using var plan = JsonDocument.Parse(planned.Output);
        Assert.Equal(["S1"], plan.RootElement.GetProperty("sheets").EnumerateArray().Where(s => s.GetProperty("sawn").GetBoolean()).Select(s => s.GetProperty("id").GetString()));
        Assert.Equal(["cut.json", "starter.json"], Entries());
    }

    [Fact]
    public async Task Change_writes_a_change_order_and_never_over_a_file()
    {
        var old = Starter();
        await File.WriteAllTextAsync(At("new.json"), (await File.ReadAllTextAsync(old, TestContext.Current.CancellationToken)).Replace("\"height\": \"100 mm\"", "\"height\": \"110 mm\"", StringComparison.Ordinal), TestContext.Current.CancellationToken);

        var (code, _, errors) = await Run("change", old, At("new.json"), "--out", At("change.pdf"), "--why", "a thicker carpet");
        var twice = await Run("change", old, At("new.json"), "--out", At("change.pdf"));

        Assert.True(code is ExitCode.Done or ExitCode.PlannedWithStop, errors);
        Assert.Equal("%PDF"u8.ToArray(), (await File.ReadAllBytesAsync(At("change.pdf"), TestContext.Current.CancellationToken))[..4]);
        Assert.Equal(ExitCode.Files, twice.Code);
    }

    [Fact]
    public async Task Version_prints_a_version() => Assert.Matches(@"^\d+\.\d+\.\d+", (await Run("--version")).Output);

    private static Task<(int Code, string Output, string Errors)> Run(params string[] arguments) => Run(TestContext.Current.CancellationToken, arguments);

    private static async Task<(int Code, string Output, string Errors)> Run(CancellationToken cancellation, params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var code = await RootCommands.Build().Parse(arguments).InvokeAsync(new InvocationConfiguration { Output = output, Error = errors }, cancellation);
        return (code, output.ToString(), errors.ToString());
    }

    private string At(string name) => Path.Combine(_folder, name);

    private IEnumerable<string> Entries() => Directory.EnumerateFileSystemEntries(_folder).Select(e => Path.GetFileName(e)!).Order(StringComparer.Ordinal);

    private string Starter(Func<string, string>? change = null)
    {
        var text = StarterJob.Text(UnitSystem.Millimetres);
        File.WriteAllText(At("starter.json"), change is null ? text : change(text));
        return At("starter.json");
    }
}
