using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Model.Tests.Files;

/// <summary>Makes random surveys that the job file takes; their readings need not agree.</summary>
internal sealed class RandomSurvey
{
    private readonly Random _random;

    private RandomSurvey(int seed) => _random = new(seed);

    /// <summary>The survey of a seed.</summary>
    public static WallSurvey Make(int seed) => new RandomSurvey(seed).Survey();

    private WallSurvey Survey() => new()
    {
        Datum = Long(900, 1100),
        FrontLine = Maybe(() => Long(200, 600)),
        Floor = List(0, 4, _ => Station(990, 1030)),
        Ceiling = List(0, 4, _ => Station(1400, 1500)),
        Widths = List(0, 3, _ => Height(2000, 2100)),
        Diagonals = List(0, 2, _ => new DiagonalReading { LeftHeight = Long(0, 100), RightHeight = Long(2000, 2300), Line = Any<ReadingLine>(), Distance = Long(3000, 4000) }),
        LeftEnd = Chance() ? null : End(),
        RightEnd = Chance() ? null : End(),
        Strings = List(0, 2, _ => new StringLine { Height = Long(100, 2000), Readings = List(2, 4, _ => Line()) }),
        PlumbLines = List(0, 2, _ => new PlumbLine { At = Long(0, 2000), Readings = List(2, 4, _ => Line()) }),
        Structure = Maybe(Any<WallStructure>),
        Studs = List(0, 4, _ => Long(0, 2000)),
        Features = List(0, 3, Feature),
        Skirting = Chance() ? null : Moulding(),
        Cornice = Chance() ? null : Moulding(),
    };

    private WallEnd End() => new()
    {
        Wall = Chance() ? null : "w0",
        Corner = Chance() ? null : Corner(),
        Reach = Maybe(() => Long(100, 900)),
        Plumb = List(0, 4, _ => Height(5, 60)),
    };

    private CornerReading Corner() => Chance()
        ? new() { Degrees = 85 + (_random.NextDouble() * 10) }
        : new() { AlongWall = Long(550, 650), AlongOther = Long(750, 850), Across = Long(950, 1050) };

    private WallFeature Feature(int index)
    {
        var kind = Any<FeatureKind>();
        return new()
        {
            Name = $"Feature {index}",
            Kind = kind,
            X = Long(0, 2000),
            Y = Long(0, 2000),
            Width = Long(50, 900),
            Height = Long(50, 2000),
            Depth = Some(100),
            Casing = Some(90),
            Stool = Some(50),
            KeepClear = Some(300),
            Swing = kind == FeatureKind.Door ? Maybe(Any<DoorSwing>) : null,
            Moves = Chance(),
        };
    }

    private WallMoulding Moulding() => new() { Height = Long(50, 200), Projection = Long(10, 40), Stays = Chance() };

    private StationReading Station(long least, long most)
    {
        var front = Maybe(() => Long(least, most));
        return new() { At = Long(0, 2000), Back = front is null ? Long(least, most) : Maybe(() => Long(least, most)), Front = front };
    }

    private HeightReading Height(long least, long most)
    {
        var front = Maybe(() => Long(least, most));
        return new() { Height = Long(0, 2400), Back = front is null ? Long(least, most) : Maybe(() => Long(least, most)), Front = front };
    }

    private LineReading Line() => new(Long(0, 2000), Long(0, 40));

    private Length Some(long most) => Chance() ? Length.Zero : Long(1, most);

    private Length Long(long least, long most) => Length.FromNanometres(_random.NextInt64(least * 10, (most * 10) + 1) * 100_000);

    private bool Chance() => _random.Next(2) == 0;

    private T Any<T>()
        where T : struct, Enum => Enum.GetValues<T>()[_random.Next(Enum.GetValues<T>().Length)];

    private T? Maybe<T>(Func<T> make)
        where T : struct => Chance() ? make() : null;

    private ValueList<T> List<T>(int least, int most, Func<int, T> make) => Enumerable.Range(0, _random.Next(least, most + 1)).Select(make).ToValueList();
}
