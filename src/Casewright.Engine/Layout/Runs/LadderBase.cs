using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Runs;

/// <summary>A ladder base in sections, with its toe face and the face's returns at finished ends.</summary>
internal static class LadderBase
{
    /// <summary>Section by section the front rail, rear rail, rungs and toe face; then the returns.</summary>
    /// <param name="run">The run, or the stretch of it between knee spaces.</param>
    /// <param name="sections">Its sections.</param>
    /// <param name="before">Sections before it in the run.</param>
    /// <param name="suffix">Told behind the ids of returns; empty for the first stretch.</param>
    public static IEnumerable<Part> Of(RunFigures run, IReadOnlyList<BaseSection> sections, int before, string suffix)
    {
        for (var i = 0; i < sections.Count; i++)
        {
            foreach (var part in Section(run, sections[i], before + i + 1))
                yield return part;
        }

        if (run.Left.ToeReturns)
            yield return Return(run, "TL" + suffix, "left toe return", Pose.ReturnFacingLeft(run.Wall.Id, run.CasesLeft + run.Run.Base.Setback, run.BaseHeight, ToeRear(run)));
        if (run.Right.ToeReturns)
            yield return Return(run, "TR" + suffix, "right toe return", Pose.ReturnFacingRight(run.Wall.Id, run.CasesRight - run.Run.Base.Setback, run.BaseHeight, ToeRear(run)));
    }

    private static Length ToeRear(RunFigures run) => run.Run.Depth - run.Run.Base.Setback - run.Base.Thickness;

    private static IEnumerable<Part> Section(RunFigures run, BaseSection section, int number)
    {
        var t = run.Base.Thickness;
        var owner = string.Create(CultureInfo.InvariantCulture, $"{run.Letters}-G{number}");
        var of = string.Create(CultureInfo.InvariantCulture, $"base section {number}, run {run.Run.Name}");
        yield return Rail(run, section, owner + "F", "front rail, " + of, ToeRear(run));
        yield return Rail(run, section, owner + "R", "rear rail, " + of, t + run.SkirtingRoom);
        for (var r = 0; r < section.Rungs.Count; r++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"rung {r + 1}, {of}");
            yield return Rung(run, section.Rungs[r], string.Create(CultureInfo.InvariantCulture, $"{owner}.{r + 1}"), name);
        }

        yield return ToeFace(run, section, number);
    }

    private static Rule Height(RunFigures run) => Rule.Of(Symbols.Base(run))
        .Minus(new("k", $"room for shims ({run.Path}.base.shimRoom)", run.Run.Base.ShimRoom));

    private static Part Rail(RunFigures run, BaseSection section, string id, string name, Length front)
    {
        var length = new DerivationInput("l", "from the section's left end to its right end, at walls, ends and middles of uprights", section.Right - section.Left);
        var size = new PartSize(Rule.Of(length).Down(Dimensions.Length, run.Step), Height(run).Nearest(Dimensions.Width, run.Step), PartMaker.Thickness(run.Base));
        var place = Pose.StripFromAbove(run.Wall.Id, section.Left, run.BaseHeight, front);
        return PartMaker.InRun(run, id, name, PartRole.BaseRail, run.Base, size, place, FaceView.HiddenStrip);
    }

    private static Part Rung(RunFigures run, Length left, string id, string name)
    {
        var length = Rule.Of(Symbols.Depth(run))
            .Minus(Setback(run))
            .Minus(Symbols.Thickness("t", run.Base), 3)
            .MinusAny(Symbols.Skirting(run))
            .Down(Dimensions.Length, run.Step);
        var size = new PartSize(length, Height(run).Nearest(Dimensions.Width, run.Step), PartMaker.Thickness(run.Base));
        var place = Pose.ReturnFacingLeft(run.Wall.Id, left, run.BaseHeight, ToeRear(run) - run.Base.Thickness);
        return PartMaker.InRun(run, id, name, PartRole.BaseRung, run.Base, size, place, FaceView.Rung);
    }

    private static DerivationInput Setback(RunFigures run) => new("z", $"setback of the toe face ({run.Path}.base.setback)", run.Run.Base.Setback);

    private static Part ToeFace(RunFigures run, BaseSection section, int number)
    {
        var length = new DerivationInput("l", "from joint to joint over the rungs, or to the end of the base; scribe stock at a wall included", section.ToeRight - section.ToeLeft);
        var size = new PartSize(Rule.Of(length).Down(Dimensions.Length, run.Step), ToeHeight(run), PartMaker.Thickness(run.Base));
        var place = Pose.StripFromAbove(run.Wall.Id, section.ToeLeft, run.BaseHeight, run.Run.Depth - run.Run.Base.Setback);
        var name = string.Create(CultureInfo.InvariantCulture, $"toe face {number}, run {run.Run.Name}");
        return PartMaker.InRun(run, PartIds.Numbered(run.Letters, "T", number), name, PartRole.ToeFace, run.Base, size, place, FaceView.FrontOnly) with
        {
            FitOnSite = FloorScribe(run),
        };
    }

    /// <summary>The height of a toe face with stock to scribe to the floor.</summary>
    public static Derivation ToeHeight(RunFigures run) =>
        Rule.Of(Symbols.Base(run)).PlusAny(Symbols.FloorFall(run)).Plus(Symbols.Scribe(run)).Nearest(Dimensions.Width, run.Step);

    /// <summary>What is left on a toe face for the floor.</summary>
    public static string FloorScribe(RunFigures run) =>
        $"{LengthFormat.Usual(run.Joinery.ScribeAllowance, run.Job.Units)} left on along the lower edge, scribed to the floor";

    private static Part Return(RunFigures run, string family, string name, Placement place)
    {
        var length = Rule.Of(Symbols.Depth(run)).Minus(Setback(run)).Minus(Symbols.Thickness("t", run.Base)).Plus(Symbols.Scribe(run));
        var size = new PartSize(length.Nearest(Dimensions.Length, run.Step), ToeHeight(run), PartMaker.Thickness(run.Base));
        return PartMaker.InRun(run, $"{run.Letters}-{family}", $"{name}, run {run.Run.Name}", PartRole.ToeFace, run.Base, size, place, new(Exposure.Shows, Exposure.Hidden, "front", "rear")) with
        {
            FitOnSite = FloorScribe(run) + "; the same at the wall end",
        };
    }
}
