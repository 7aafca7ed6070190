using Casewright.Engine.Surveying;
using Casewright.Engine.Tests.Layout;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Tests.Surveying;

/// <summary>
/// An alcove of our own with crooked walls, a run of two cases in it, and the same alcove in inches. All expected figures of the tests
/// are worked out by hand beside them.
/// </summary>
internal static class CrookedAlcove
{
    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    public static Length In(decimal inches) => Length.FromInches(inches);

    public static WallSurvey Metric { get; } = new()
    {
        Datum = Mm(1000),
        FrontLine = Mm(350),
        Floor = [At(0, 1004, 1006), At(600, 1000, 1003), At(1200, 1007, 1009), At(1800, 1010, 1012)],
        Ceiling = [At(0, 1498, 1496), At(900, 1490, 1491), At(1800, 1493, 1495)],
        Widths = [Up(0, 1806, 1812.5m), Up(1200, 1806, null), Up(2400, 1806, null)],
        Diagonals = [new() { LeftHeight = Mm(0), RightHeight = Mm(2400), Distance = Mm(3007) }],
        LeftEnd = new()
        {
            Corner = new() { Degrees = 90 },
            Plumb = [Up(0, 40, 40), Up(1000, 38, 39), Up(2000, 35, 37), Up(2480, 34, 35)],
        },
        RightEnd = new()
        {
            Corner = new() { Degrees = 91 },
            Plumb = [Up(0, 50, 50), Up(1000, 52, 51), Up(2000, 55, 53), Up(2480, 56, 56)],
        },
        Strings = [new() { Height = Mm(1200), Readings = [new(Mm(0), Mm(20)), new(Mm(900), Mm(14)), new(Mm(1800), Mm(20))] }],
        PlumbLines = [new() { At = Mm(900), Readings = [new(Mm(0), Mm(30)), new(Mm(2400), Mm(34))] }],
        Structure = WallStructure.WoodStuds,
        Studs = [Mm(250), Mm(650), Mm(1050), Mm(1450)],
        Features = [new() { Name = "radiator pipe", Kind = FeatureKind.Pipe, X = Mm(640), Y = Mm(0), Width = Mm(20), Height = Mm(2400) }],
    };

    /// <summary>The same in inches: floor and ceiling in sixteenths, an 84 in high opening.</summary>
    public static WallSurvey Inches { get; } = new()
    {
        Datum = In(40),
        FrontLine = In(14),
        Floor =
        [
            new() { At = In(0), Back = In(40.25m), Front = In(40.375m) },
            new() { At = In(24), Back = In(40), Front = In(40.125m) },
            new() { At = In(48), Back = In(40.5m), Front = In(40.625m) },
        ],
        Ceiling = [new() { At = In(0), Back = In(56.5m) }, new() { At = In(48), Back = In(56.25m) }],
        Widths = [new() { Height = In(0), Back = In(49.25m) }, new() { Height = In(80), Back = In(49) }],
        LeftEnd = new() { Plumb = [new() { Height = In(0), Back = In(2) }, new() { Height = In(80), Back = In(1.75m) }] },
        RightEnd = new() { Plumb = [new() { Height = In(0), Back = In(2) }, new() { Height = In(80), Back = In(2) }] },
        Studs = [In(8), In(24), In(40)],
    };

    public static Job Job(WallSurvey? survey = null, Func<Run, Run>? change = null) => Of(UnitSystem.Millimetres, survey ?? Metric, Run(UnitSystem.Millimetres), change);

    public static Job InchJob(WallSurvey? survey = null, Func<Run, Run>? change = null) => Of(UnitSystem.Inches, survey ?? Inches, Run(UnitSystem.Inches), change);

    public static (Laid Laid, SurveyResult Survey) Read(Job job)
    {
        var laid = Laid.Of(job);
        return (laid, SurveyStage.Read(job, laid.Casework));
    }

    public static StationReading At(decimal at, decimal? back, decimal? front = null) => new() { At = Mm(at), Back = back is { } b ? Mm(b) : null, Front = front is { } f ? Mm(f) : null };

    public static HeightReading Up(decimal height, decimal? back, decimal? front = null) => new() { Height = Mm(height), Back = back is { } b ? Mm(b) : null, Front = front is { } f ? Mm(f) : null };

    private static Job Of(UnitSystem units, WallSurvey survey, Run run, Func<Run, Run>? change)
    {
        var job = SampleRuns.Job(units, change?.Invoke(run) ?? run);
        return job with { Walls = [new() { Id = "north", Name = "north wall", Survey = survey }] };
    }

    private static Run Run(UnitSystem units)
    {
        var inches = units == UnitSystem.Inches;
        return SampleRuns.Plain(units, Length.Zero, inches ? In(90) : Mm(2300), inches ? In(14) : Mm(350)) with
        {
            Width = null,
            Left = new() { Kind = EndKind.Wall, Filler = inches ? In(1.25m) : Mm(30) },
            Right = new() { Kind = EndKind.Wall, Filler = inches ? In(1.25m) : Mm(30) },
            Base = new() { Kind = BaseKind.Plinth, Height = inches ? In(4) : Mm(100), Setback = inches ? In(2) : Mm(50), ShimRoom = inches ? In(0.375m) : Mm(10) },
            Division = new() { Bays = 2, BaysPerCase = 1 },
            Nailers = new() { Height = inches ? In(3.5m) : Mm(90) },
        };
    }
}
