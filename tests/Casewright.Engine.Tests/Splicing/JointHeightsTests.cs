using Casewright.Engine.Editing;
using Casewright.Engine.Layout;
using Casewright.Engine.Splicing;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>The heights that a drawing offers for a splice line, held against what the planner takes when such a height is stated.</summary>
public sealed class JointHeightsTests
{
    private static readonly Job s_job = Tall();

    private static readonly Casework s_laid = LayoutStage.Lay(s_job).Value!;

    private static readonly JointHeights s_heights = JointHeights.Of(s_job, s_laid, s_job.Runs[0].Id)!;

    [Fact]
    public void Every_height_offered_is_one_that_the_planner_takes()
    {
        Assert.NotEmpty(s_heights.Open);
        foreach (var height in s_heights.Open.SelectMany(o => new[] { o.From, o.To, (o.From + o.To) / 2 }))
            Assert.True(JointsAt(height), $"{height} is offered and not taken.");
    }

    [Fact]
    public void No_height_that_is_closed_is_one_at_which_the_planner_joins_all_uprights_once()
    {
        Assert.NotEmpty(s_heights.Closed);
        foreach (var closed in s_heights.Closed)
            Assert.False(JointsAt((closed.From + closed.To) / 2), $"{closed} is taken.");
    }

    [Fact]
    public void Open_and_closed_heights_fill_the_uprights_from_foot_to_head()
    {
        var side = s_laid.Parts.First(p => p.Role == PartRole.Side);
        var edges = s_heights.Open.Select(o => (o.From, o.To)).Concat(s_heights.Closed.Select(c => (c.From, c.To))).OrderBy(e => e.From).ThenBy(e => e.To).ToList();

        Assert.Equal(side.Place.Origin.Y, edges[0].From);
        Assert.Equal(side.Place.Origin.Y + side.Length, edges[^1].To);
        Assert.All(edges.Zip(edges.Skip(1)), pair => Assert.Equal(pair.First.To, pair.Second.From));
    }

    [Fact]
    public void Near_the_foot_the_shortest_piece_and_near_the_head_the_same_keep_the_line_off()
    {
        // By hand: the longer piece must come out of a 2440 sheet with 10 trimmed off each end, 3 left for squaring at the joint and
        // 10 at the head: a joint lies at most 2420 − 3 = 2417 above the foot of the side, and at least length + 3 + 10 − 2420.
        var side = s_laid.Parts.First(p => p.Role == PartRole.Side);
        var (foot, length) = (side.Place.Origin.Y, side.Length.Millimetres);
        var low = Math.Max(300m, length + 13 - 2420);

        Assert.True(s_heights.Open[0].From - foot >= Length.FromMillimetres(low));
        Assert.True(s_heights.Open[^1].To - foot <= Length.FromMillimetres(Math.Min(2417, length - 300)));
        Assert.Contains("shorter than", s_heights.Closed[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_nearest_height_is_itself_where_allowed_and_an_end_of_an_open_stretch_where_not()
    {
        var open = s_heights.Open[0];
        var shut = s_heights.Closed.First(c => c.To == open.From);

        Assert.Equal(open.From, s_heights.Nearest(open.From));
        Assert.Equal(open.From, s_heights.Nearest(open.From - Length.FromMillimetres(1)));
        Assert.NotNull(s_heights.WhyNot(shut.To - Length.FromMillimetres(1)));
        Assert.Null(s_heights.WhyNot(open.From));
    }

    [Fact]
    public void A_base_raised_by_the_overrun_brings_the_sides_whole_out_of_the_sheet()
    {
        var run = s_job.Runs[0];
        var over = SheetReach.Overrun(s_job, s_laid, run.Id)!.Value;

        var raised = RunEditing.SetBaseHeight(s_job, run.Id, run.Base.Height + over);
        var laid = LayoutStage.Lay(raised).Value!;

        // 2440 less 10 trimmed off each end.
        Assert.Equal(Length.FromMillimetres(2420), laid.Parts.Where(p => p.Role == PartRole.Side).Max(p => p.Length));
        Assert.Null(JointHeights.Of(raised, laid, run.Id));
    }

    private static bool JointsAt(Length height)
    {
        var stated = RunEditing.SetSpliceHeight(s_job, s_job.Runs[0].Id, height);
        var options = SplicingOptions.For(stated, s_laid);
        return options.Succeeded && options.Value.Materials.SelectMany(m => m.Demands)
            .Where(d => d.Parts[0].Role is PartRole.Side or PartRole.Partition)
            .All(d => d.Options.Any(o => o.Joints.Count == 1 && o.Joints.All(j => d.Parts[0].Place.Origin.Y + j == height)));
    }

    private static Job Tall()
    {
        var job = JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value!;
        return job with { Walls = [.. job.Walls.Select(w => w with { Height = Length.FromMillimetres(2900) })] };
    }
}
