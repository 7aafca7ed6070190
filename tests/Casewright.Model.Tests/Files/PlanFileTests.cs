using System.Text.Json;
using Casewright.Model.Files;
using Casewright.Model.Measure;
using CsCheck;
using Json.Schema;

namespace Casewright.Model.Tests.Files;

public sealed class PlanFileTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(PlanSchema.Text);

    [Fact]
    public void A_plan_is_written_as_its_schema_says()
    {
        using var document = JsonDocument.Parse(PlanFile.Write(SamplePlan.Plan));
        Assert.True(s_schema.Evaluate(document.RootElement).IsValid);
        using var untimed = JsonDocument.Parse(PlanFile.Write(SamplePlan.Plan with { Schedule = null, Estimate = null, Schemes = [] }));
        Assert.True(s_schema.Evaluate(untimed.RootElement).IsValid);
        using var schema = JsonDocument.Parse(PlanSchema.Text);
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
    }

    [Fact]
    public void A_plan_with_a_field_missing_or_added_is_not_what_the_schema_says()
    {
        var text = PlanFile.Write(SamplePlan.Plan);
        foreach (var (written, by) in new[] { ("\"position\"", "\"place\""), ("\"rotated\": true", "\"rotated\": \"yes\""), ("\"rip\"", "\"slash\"") })
        {
            Assert.Contains(written, text, StringComparison.Ordinal);
            using var document = JsonDocument.Parse(text.Replace(written, by, StringComparison.Ordinal));
            Assert.False(s_schema.Evaluate(document.RootElement).IsValid);
        }
    }

    /// <summary>The names that other programs rely on, as the plan file's description promises them.</summary>
    [Theory]
    [InlineData("", "parts pieces splices sheets boards bounds findings")]
    [InlineData("parts", "id name case material length width thickness grain x y z pieces splices")]
    [InlineData("pieces", "id part sheet board length width x y rotated allowanceStart allowanceEnd")]
    [InlineData("splices", "id part position method consumes accessFace tenons connectors marks sightLine")]
    [InlineData("splices.tenons", "offset thickness width length")]
    [InlineData("splices.connectors", "offset")]
    [InlineData("sheets", "id stock length width trim kerf cost cuts offcuts")]
    [InlineData("sheets.cuts", "order kind x0 y0 x1 y1")]
    [InlineData("sheets.offcuts", "x y length width")]
    [InlineData("boards", "id stock length trim kerf cost cuts")]
    [InlineData("bounds", "cost lowerBound sheets sheetsLowerBound gap proven")]
    [InlineData("timeline", "start finish tasks lowerBound proven")]
    [InlineData("price", "currency lines hours net tax gross payments markUpShare marginShare")]
    [InlineData("schemes", "name feasible why sheets material hours stationDays leadDays linesInView heaviest total")]
    [InlineData("findings", "check severity subject value limit unit formula source standing advice")]
    public void The_promised_names_are_there(string path, string names)
    {
        using var document = JsonDocument.Parse(PlanFile.Write(SamplePlan.Plan));
        var element = document.RootElement;
        foreach (var step in path.Split('.', StringSplitOptions.RemoveEmptyEntries))
            element = element.GetProperty(step) is { ValueKind: JsonValueKind.Array } list ? list[0] : element.GetProperty(step);
        Assert.All(names.Split(' '), name => Assert.True(element.TryGetProperty(name, out _), $"{path} lacks {name}"));
    }

    [Fact]
    public void Values_stand_where_they_belong()
    {
        using var document = JsonDocument.Parse(PlanFile.Write(SamplePlan.Plan));
        var root = document.RootElement;
        var side = root.GetProperty("parts")[0];
        // The side spans x 47.8 − 17.8 = 30, y 100, z 300 − 300 = 0.
        Assert.Equal((30m, 100m, 0m), (side.GetProperty("x").GetDecimal(), side.GetProperty("y").GetDecimal(), side.GetProperty("z").GetDecimal()));
        Assert.Equal(["C1-L/a", "C1-L/b"], side.GetProperty("pieces").EnumerateArray().Select(p => p.GetString()));
        Assert.Equal(["C1-L/1"], side.GetProperty("splices").EnumerateArray().Select(p => p.GetString()));
        var pieces = root.GetProperty("pieces");
        Assert.Equal(("S1", null), (pieces[0].GetProperty("sheet").GetString(), pieces[0].GetProperty("board").GetString()));
        Assert.Equal((null, "B1"), (pieces[2].GetProperty("sheet").GetString(), pieces[2].GetProperty("board").GetString()));
        Assert.Equal("312.8", pieces[1].GetProperty("y").GetRawText());
        Assert.Equal("0.25", root.GetProperty("bounds").GetProperty("gap").GetRawText()); // (100 − 75) / 100
        Assert.Equal(JsonValueKind.Null, root.GetProperty("findings")[1].GetProperty("value").ValueKind);
        Assert.Equal("2026-03-09T09:30:00", root.GetProperty("timeline").GetProperty("finish").GetString());
        Assert.Equal("A", root.GetProperty("splices")[0].GetProperty("marks").GetProperty("pair").GetString());
    }

    [Fact]
    public void One_plan_always_gives_the_same_bytes()
    {
        var text = PlanFile.Write(SamplePlan.Plan);
        Assert.Equal(text, PlanFile.Write(SamplePlan.Plan with { Parts = [.. SamplePlan.Plan.Parts] }));
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_length_is_written_exactly() => Gen.Long[-long.MaxValue, long.MaxValue].Sample(nanometres =>
    {
        var plan = SamplePlan.Plan;
        var board = plan.Cutting.Boards[0] with { Left = Length.FromNanometres(nanometres) };
        using var document = JsonDocument.Parse(PlanFile.Write(plan with { Cutting = plan.Cutting with { Boards = [board] } }));
        return Length.FromMillimetres(document.RootElement.GetProperty("boards")[0].GetProperty("left").GetDecimal()) == board.Left;
    }, iter: 200);
}
