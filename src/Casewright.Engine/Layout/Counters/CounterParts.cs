using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Counters;

/// <summary>The layers and the front edge of a counter over a tier.</summary>
internal static class CounterParts
{
    /// <summary>Upper layer, lower layer, each from left to right, then the edge.</summary>
    public static IEnumerable<Part> Of(RunFigures run, TierSpan tier, IReadOnlyList<CaseFigures> cases, ProblemList problems)
    {
        if (tier.Counter is not { } counter)
            return [];
        var (left, right) = Ends(run, counter);
        var sheets = UsableSheets.Of(run.Job, counter.Material);
        var longest = sheets.None ? right - left : sheets.Reach(Width(run, counter).Result) ?? Length.Zero;
        var supports = Supports(run, [.. cases.Where(c => c.Tier.Index == tier.Index)]);
        var upper = CounterJoints.Find(left, right, longest, supports, [], Length.Zero);
        var lower = upper is null || counter.Design.Layers == 1 ? null : CounterJoints.Find(left, right, longest, supports, [.. upper.Skip(1).SkipLast(1)], CounterJoints.Apart(run));
        if (upper is null || (counter.Design.Layers == 2 && lower is null))
        {
            problems.Add(counter.Path, "The counter is longer than a sheet and no upright stands where its lengths could meet.", right - left, $"sheets that give more than {problems.Say(longest)}, or more uprights under it{(upper is null ? "" : $", so that the joints of its layers can lie {problems.Say(CounterJoints.Apart(run))} apart")}");
            return [];
        }

        return [.. Layer(run, tier, counter, upper, 0), .. lower is null ? [] : Layer(run, tier, counter, lower, 1), .. Edge(run, tier, counter)];
    }

    /// <summary>Ends of the counter: into the scribe at a wall, over a finished end, else where the run ends.</summary>
    private static (Length Left, Length Right) Ends(RunFigures run, CounterFigures counter) => (run.FaceLeft - Beyond(run, run.Left, counter), run.FaceRight + Beyond(run, run.Right, counter));

    private static Length Beyond(RunFigures run, EndFigures end, CounterFigures counter) => end.Kind switch
    {
        EndKind.Wall => run.Joinery.ScribeAllowance,
        EndKind.Finished => counter.Design.EndOverhang,
        _ => Length.Zero,
    };

    /// <summary>Middles of what it can be joined over.</summary>
    private static IReadOnlyList<Length> Supports(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        var lines = new SortedSet<Length>();
        foreach (var box in cases.Where(c => !c.IsKnee))
        {
            lines.Add(box.IsFirst ? box.X + (run.T / 2) : box.X);
            for (var bay = 0; bay < box.Bays - 1; bay++)
                lines.Add(box.BayRight(bay) + (run.T / 2));
            lines.Add(box.IsLast ? box.XEnd - (run.T / 2) : box.XEnd);
        }

        return [.. lines];
    }

    private static IEnumerable<Part> Layer(RunFigures run, TierSpan tier, CounterFigures counter, IReadOnlyList<Length> points, int layer)
    {
        var upper = tier.YEnd + counter.Thickness - (counter.Material.Thickness * layer);
        for (var i = 0; i < points.Count - 1; i++)
        {
            var length = Rule.Of(new DerivationInput("l", "from end to end, or to a joint over an upright; scribe stock at a wall included", points[i + 1] - points[i])).Nearest(Dimensions.Length, run.Step);
            var size = new PartSize(length, Width(run, counter), PartMaker.Thickness(counter.Material));
            var place = Pose.Level(run.Wall.Id, points[i], upper, run.Run.Depth + counter.Design.Overhang - (counter.Edge?.Thickness ?? Length.Zero));
            var id = Id(run, tier) + (counter.Design.Layers == 1 ? "" : layer == 0 ? "A" : "B") + (points.Count == 2 ? "" : string.Create(CultureInfo.InvariantCulture, $".{i + 1}"));
            var name = string.Create(CultureInfo.InvariantCulture, $"{(counter.Design.Layers == 1 ? "" : layer == 0 ? "upper layer of the " : "lower layer of the ")}{Word(counter.Design.Use)}{(points.Count == 2 ? "" : $", length {i + 1}")}, run {run.Run.Name}");
            var view = layer == 0 ? FaceView.Bottom : FaceView.HiddenLevel;
            yield return PartMaker.InRun(run, id, name, PartRole.Counter, counter.Material, size, place, view) with { FitOnSite = Fit(run) };
        }
    }

    private static string Id(RunFigures run, TierSpan tier) => string.Create(CultureInfo.InvariantCulture, $"{run.Letters}-U{tier.Index + 1}");

    private static Derivation Width(RunFigures run, CounterFigures counter)
    {
        var width = Rule.Of(Symbols.Depth(run));
        if (counter.Design.Overhang > Length.Zero)
            width = width.Plus(new("o", $"overhang ({counter.Path}.overhang)", counter.Design.Overhang));
        return width.MinusAny(Symbols.Nosing(counter.Edge)).Plus(Symbols.Scribe(run)).Nearest(Dimensions.Width, run.Step);
    }

    private static IEnumerable<Part> Edge(RunFigures run, TierSpan tier, CounterFigures counter)
    {
        if (counter.Edge is not { } edge)
            yield break;
        var (left, right) = Ends(run, counter);
        var length = Rule.Of(new DerivationInput("l", "along the front of the counter", right - left)).Nearest(Dimensions.Length, run.Step);
        var width = Rule.Of(Symbols.Thickness("tc", counter.Material), counter.Design.Layers).As(Dimensions.Width);
        var place = Pose.StripFromAbove(run.Wall.Id, left, tier.YEnd + counter.Thickness, run.Run.Depth + counter.Design.Overhang);
        yield return PartMaker.InRun(run, Id(run, tier) + "n", $"edge of the {Word(counter.Design.Use)}, run {run.Run.Name}", PartRole.Nosing, edge, new(length, width, PartMaker.Thickness(edge)), place, FaceView.FrontOnly) with { FitOnSite = Fit(run) };
    }

    private static string Fit(RunFigures run) => LengthFormat.Usual(run.Joinery.ScribeAllowance, run.Job.Units) + " left on along the wall, scribed to it; the same at an end against a wall";

    private static string Word(CounterUse use) => use switch
    {
        CounterUse.Desk => "desk top",
        CounterUse.Seat => "seat",
        _ => "counter",
    };
}
