using System.Reflection;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Pricing;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using Casewright.Model.Splices;
using Casewright.Model.Stock;
using Casewright.Model.Timeline;

namespace Casewright.Model.Tests.Files;

/// <summary>
/// Makes random jobs that are right by every rule of the job file, though no maker would build most of them. Every member of every
/// record takes different values, which a test holds: a member that is added to a record must be added here and to the file's shape.
/// </summary>
public sealed class RandomJob
{
    private static readonly string[] s_sheets = ["ply-18", "ply-6"];
    private static readonly string[] s_boards = ["stile", "nosing"];
    private readonly Random _random;
    private readonly UnitSystem _units;

    private RandomJob(int seed)
    {
        _random = new(seed);
        _units = Pick(UnitSystem.Inches, UnitSystem.Millimetres);
    }

    /// <summary>The job of a seed.</summary>
    public static Job Make(int seed) => new RandomJob(seed).Job();

    private Job Job() => new()
    {
        Name = Pick("Library", "Bücherwand “Nord”", "棚 \"A\" \\ 1/2", "x"),
        Client = Pick("", "R. Ames"),
        Date = Maybe(() => new DateOnly(2026, 1, 1).AddDays(_random.Next(1000))),
        Revision = _random.Next(1, 20),
        ApprovedRevision = Maybe(() => _random.Next(1, 20)),
        StockNeededBy = Maybe(() => new DateOnly(2026, 1, 1).AddDays(_random.Next(1000))),
        StartOn = Maybe(() => new DateOnly(2026, 1, 1).AddDays(_random.Next(1000))),
        Progress = Chance() ? null : Progress(),
        Sawn = Chance() ? null : Sawn(),
        FinishBy = Maybe(() => new DateOnly(2029, 1, 1).AddDays(_random.Next(1000))),
        Units = _units,
        Currency = Pick("EUR", "USD", "JPY"),
        Site = Site(),
        Walls = List(2, 4, Wall),
        Runs = List(1, 3, Run),
        Stock = Stock(),
        Shop = Shop(),
    };

    private ShopProgress Progress()
    {
        var now = new DateTime(2027, 3, 4, 15, 6, 0).AddMinutes(_random.Next(10_000));
        return new(now, List(0, 4, i => new WorkRecord($"glue/C{i}-L", now.AddMinutes(-500 + i), Maybe(() => now.AddMinutes(-100 - i))) { HandsOn = Maybe(() => _random.Next(1, 100) / 2m) }));
    }

    private SawnWork Sawn() => new()
    {
        Sheets = List(0, 3, i => new SawnSheet
        {
            Id = $"S{i}",
            Stock = $"s{_random.Next(4)}",
            Material = Pick(s_sheets),
            Length = Long(2000, 3000),
            Width = Long(1900, 2500),
            Trim = Long(0, 10),
            Kerf = Long(0, 5),
            Cost = Money(),
            Bought = true,
            LeftOver = i == 0 || Chance() ? null : new LeftoverPlace($"S{_random.Next(i)}", Long(0, 900), Long(0, 900)),
            Cuts = List(0, 3, _ => new SawnCut(Any<CutKind>(), _random.Next(0, 4), Long(0, 900), Long(0, 900), Long(1, 900), Long(1, 900))),
            Pieces = List(0, 3, _ => SawnPiece(onBoard: false)),
        }).Select(s => Chance() ? s : s with { Bought = false, Cost = 0 }).ToValueList(),
        Boards = List(0, 3, i => new SawnBoard
        {
            Id = $"B{i}",
            Stock = $"b{_random.Next(4)}",
            Material = Pick(s_boards),
            Length = Long(3000, 5000),
            Trim = Long(0, 10),
            Kerf = Long(0, 5),
            Cost = Money(),
            Bought = true,
            LeftOver = i == 0 || Chance() ? null : new LeftoverPlace($"B{_random.Next(i)}", Long(0, 900), Length.Zero),
            Cuts = List(0, 3, _ => Long(0, 900)),
            Pieces = List(0, 3, _ => SawnPiece(onBoard: true)),
        }).Select(b => Chance() ? b : b with { Bought = false, Cost = 0 }).ToValueList(),
    };

    private SawnPiece SawnPiece(bool onBoard)
    {
        var (from, run, start, end) = (Long(0, 900), Long(1, 900), Pick(Length.Zero, Long(0, 10)), Pick(Length.Zero, Long(0, 10)));
        return new()
        {
            Id = $"C{_random.Next(1, 9)}-L/a",
            Part = $"C{_random.Next(1, 9)}-L",
            Length = run + start + end,
            Width = Long(1, 900),
            X = Long(0, 900),
            Y = onBoard ? Length.Zero : Pick(Length.Zero, Long(0, 900)),
            Rotated = !onBoard && Chance(),
            From = from,
            To = from + run,
            AllowanceStart = start,
            AllowanceEnd = end,
            Strip = _random.Next(0, 3),
            Lost = Chance(),
        };
    }

    private SiteFacts Site()
    {
        var dry = _random.NextDouble() * 50;
        return new()
        {
            FloorRating = Maybe(() => 0.5 + (_random.NextDouble() * 5)),
            Climate = Maybe(Any<Climate>),
            RoomTemperature = Maybe(() => -5 + (_random.NextDouble() * 30)),
            DriestHumidity = Maybe(() => dry),
            DampestHumidity = Maybe(() => dry + (_random.NextDouble() * 40)),
            AcclimatisingDays = Maybe(() => _random.Next(0, 30)),
            Walls = Maybe(Any<WallStructure>),
            StudSpacing = Maybe(() => Long(300, 700)),
            Route = Chance() ? null : List(0, 3, Passage),
            YearBuilt = Maybe(() => _random.Next(1700, 2026)),
        };
    }

    private Passage Passage(int index)
    {
        var kind = Any<PassageKind>();
        return new()
        {
            Name = $"Passage {index}",
            Kind = kind,
            Width = Long(600, 1500),
            Height = Long(1900, 2500),
            NextWidth = kind is PassageKind.Doorway or PassageKind.Window ? null : Long(600, 1500),
            DoorWidth = kind == PassageKind.LiftCar ? Maybe(() => Long(600, 1500)) : null,
            DoorHeight = kind == PassageKind.LiftCar ? Maybe(() => Long(1900, 2500)) : null,
            Leaf = kind == PassageKind.Doorway && Chance() ? Long(1, 89) : Length.Zero,
            Pitch = kind == PassageKind.Stair ? 30 + (_random.NextDouble() * 15) : null,
        };
    }

    private Wall Wall(int index)
    {
        var survey = Chance() ? RandomSurvey.Make(_random.Next()) : null;
        var slopes = List(0, 2, _ => new CeilingSlope { FromX = Long(0, 2000), FromHeight = Long(1000, 3000), ToX = Long(2000, 5000), ToHeight = Long(0, 3000) });
        return new()
        {
            Id = $"w{index}",
            Name = $"Wall {index}",
            StatedWidth = survey is null ? Long(3000, 20_000) : Maybe(() => Long(3000, 20_000)),
            StatedHeight = survey is null || slopes.Count > 0 ? Long(2000, 4000) : Maybe(() => Long(2000, 4000)),
            CeilingSlopes = slopes,
            Survey = survey,
        };
    }

    private StockRoom Stock() => new()
    {
        Materials =
        [
            .. s_sheets.Select(id => Material(id, null)),
            .. s_boards.Select(id => Material(id, Long(20, 200))),
        ],
        Sheets = List(0, 4, i => new SheetStock
        {
            Id = $"s{i}",
            Material = Pick(s_sheets),
            Length = Long(300, 3500),
            Width = Long(300, 2000),
            GrainAcross = Chance(),
            Price = Money(),
            OnHand = _random.Next(0, 3),
            Limit = Maybe(() => _random.Next(0, 9)),
            LeadDays = _random.Next(0, 3),
            IsOffcut = Chance(),
        }),
        Boards = List(0, 4, i => new BoardStock
        {
            Id = $"b{i}",
            Material = Pick(s_boards),
            Length = Long(300, 5000),
            Price = Money(),
            OnHand = _random.Next(0, 3),
            Limit = Maybe(() => _random.Next(0, 9)),
            LeadDays = _random.Next(0, 3),
        }),
    };

    private Material Material(string id, Length? boardWidth)
    {
        var nominal = Long(18, 25);
        return new()
        {
            Id = id,
            Name = Pick("Birch", "Ash 3/4\""),
            Kind = Any<MaterialKind>(),
            Nominal = nominal,
            Measured = Maybe(() => nominal - Length.FromMillimetres(Pick(0.1m, 0.25m, -0.3m))),
            BoardWidth = boardWidth,
            HasGrain = Chance(),
            Density = Maybe(() => 400 + (_random.NextDouble() * 400)),
            Elasticity = Maybe(() => 2000 + (_random.NextDouble() * 9000)),
        };
    }

    private Workshop Shop() => new()
    {
        Saw = new()
        {
            Kerf = Pick(Length.Zero, Long(1, 5)),
            EdgeTrim = Pick(Length.Zero, Long(1, 20)),
            BoardEndTrim = Pick(Length.Zero, Long(1, 20)),
            Stages = Pick<int?>(2, 3, null),
            FirstCut = Any<FirstCut>(),
            Aim = Any<SheetAim>(),
            LongestRip = Maybe(() => Long(1000, 4000)),
            NarrowestStrip = Maybe(() => Long(10, 50)),
            KeepLength = Long(100, 400),
            KeepWidth = Long(50, 200),
        },
        Splicing = Vary(SpliceRules.For(_units)) with { Methods = Methods() },
        HourlyRate = Money(),
        Glue = Vary(new GlueFacts()) with { Factors = Chance() ? new GlueFacts().Factors : [new(12.5, 1.7), new(21, Pick(0.9, 1.1))] },
        Temperature = Maybe(() => _random.NextDouble() * 30),
        Times = new()
        {
            Own = Chance() ? [] : [new() { Operation = Any<Operation>(), Minutes = _random.Next(1, 500) / 8m, Jobs = _random.Next(0, 4) }],
            Logs = List(0, 3, i => new LoggedTime { Job = $"job {i}", Operation = Any<Operation>(), Quantity = _random.Next(1, 90) / 4m, Minutes = _random.Next(1, 900) / 8m }),
            ClearFinishFactor = Pick(1.4m, 2),
            OutputOfTwo = Pick(1.7m, 1.5m),
        },
        Hours = Hours(),
        People = List(0, 3, i => new Person
        {
            Id = $"p{i}",
            Name = Pick("Ada", "Bo"),
            Skills = Chance() ? [] : [Any<Skill>()],
            DaysOff = Days(),
        }),
        Stations = List(
            0, 3, i => new Station { Id = $"st{i}", Name = Pick("Bench", "Wall"), Length = Long(1000, 5000), Places = _random.Next(1, 4) }),
        Clamps = List(0, 5, i => new ClampStock((ClampKind)i, _random.Next(0, 20))),
        FloorPlaces = Maybe(() => _random.Next(1, 9)),
        Finish = Chance() ? null : Finish(),
        Prices = Chance() ? new() : Pricing(),
        Checks = Vary(new CheckLimits()),
    };

    private PriceRules Pricing() => new()
    {
        MarkUp = Pick(0.25m, 0.3m),
        Overhead = Pick(0, 0.1m),
        Consumables = Pick(0.04m, 0.05m),
        Contingency = Pick(0.05m, 0.15m),
        Tax = Maybe(() => Pick(0.2m, 0.0825m)),
        RoundUpTo = Pick(0m, 50),
        GlueLitre = Maybe(Money),
        Hardware = List(0, 8, i => new HardwarePrice((HardwareKind)i, Money())),
        Rates = List(0, 4, i => new PhaseRate((WorkPhase)i, Money())),
        DeliveryLoad = Money(),
        SiteDay = Money(),
        Payments = Chance() ? [new("all of it", 1)] : [new("first", 0.3m), new("last", 0.7m)],
        ValidDays = _random.Next(10, 60),
    };

    private WorkingHours Hours() => Chance() ? new() : new()
    {
        Day = [new(new(7, _random.Next(60)), new(12, 0)), new(new(12, 30), new(16, 0))],
        Weekdays = [DayOfWeek.Saturday, DayOfWeek.Monday],
        DaysOff = Days(),
    };

    private ValueList<DateOnly> Days() => List(0, 2, i => new DateOnly(2026, 5, 1).AddDays((i * 40) + _random.Next(30)));

    private FinishSystem Finish() => new()
    {
        Name = Pick("Paint", "Oil"),
        Clear = Chance(),
        Coats = List(1, 3, i => new Coat
        {
            Name = $"coat {i}",
            Application = Any<CoatApplication>(),
            DryHours = _random.Next(0, 48) / 2m,
            DenibFirst = Chance(),
            Coverage = Pick(8m, 6.5m),
            LitrePrice = Money(),
        }),
        DaysBeforeLoading = _random.Next(0, 30),
    };

    private ValueList<ShopMethod> Methods() => new[] { SpliceMethod.HalfLap, SpliceMethod.LooseTenons, SpliceMethod.Scarf }
        .OrderBy(_ => _random.Next())
        .Take(_random.Next(1, 4))
        .Append(SpliceMethod.Spline)
        .Select(m => new ShopMethod { Method = m, Minutes = 1 + (_random.NextDouble() * 50) })
        .ToValueList();

    private Run Run(int index)
    {
        var construction = Any<Construction>();
        var back = Back();
        var tiers = Tiers();
        var divided = Chance();
        var allowed = Chance();
        return new()
        {
            Id = $"run.{index}",
            Name = Pick("Left", "Right"),
            Wall = Pick("w0", "w1"),
            Offset = Pick(Length.Zero, Long(1, 500)),
            Width = Maybe(() => Long(1000, 9000)),
            Construction = construction,
            Material = Pick(s_sheets),
            Depth = Long(200, 700),
            Left = End(),
            Right = End(),
            Base = Base(),
            Head = Head(),
            Back = back,
            Joinery = Vary(Joinery.For(_units)) with { TopOverSides = Chance(), RabbetDepth = Maybe(() => Long(3, 9)) },
            Nailers = Chance() ? null : new() { Height = Long(50, 150), Material = MaybeOf(s_sheets) },
            Nosing = Nosing(),
            FaceFrame = construction == Construction.Frameless ? null : FaceFrame(),
            TrimBand = back.Kind == BackKind.None || Chance() ? null : new() { Material = Pick(s_boards) },
            Bridge = Chance() ? null : new() { Casing = Maybe(() => Long(1900, 2200)), Cleat = Pick(Length.Zero, Long(20, 80)) },
            Ladder = Chance() ? null : Vary(new LadderRail { Height = Length.FromMillimetres(2200), Reach = Length.FromMillimetres(590) }),
            FrontGaps = Chance() ? null : Vary(FrontGaps.For(_units)),
            Division = divided ? Division() : null,
            Columns = divided ? [] : List(1, 4, i => Column(i, tiers.Count)),
            Tiers = tiers,
            Splices = new()
            {
                Allowed = allowed,
                Height = allowed ? Maybe(() => Long(500, 2000)) : null,
                Method = allowed && Chance() ? SpliceMethod.Spline : null,
                AllowEdgeJoint = Chance(),
            },
        };
    }

    private RunEnd End()
    {
        var kind = Any<EndKind>();
        var panel = kind == EndKind.Finished ? MaybeOf(s_sheets) : null;
        return new()
        {
            Kind = kind,
            Filler = kind is EndKind.Wall or EndKind.Corner ? Pick(Length.Zero, Long(10, 90)) : Length.Zero,
            FillerMaterial = kind is EndKind.Wall or EndKind.Corner ? MaybeOf(s_sheets) : null,
            Panel = panel,
            Lipping = kind != EndKind.Finished || panel is not null || Chance() ? null : new() { Front = Pick(s_boards), Rear = MaybeOf(s_sheets) },
            Corner = kind == EndKind.Corner ? Corner(Any<CornerKind>()) : null,
        };
    }

    private CornerDesign Corner(CornerKind kind)
    {
        var corner = new CornerDesign { Run = Pick("run.0", "run.1"), Kind = kind, Angle = Maybe(() => 80 + (_random.NextDouble() * 20)) };
        return kind != CornerKind.Diagonal || Chance() ? corner : corner with { Leg = Long(600, 1200), Shelves = _random.Next(4), Door = MaybeOf(s_sheets) };
    }

    private BaseDesign Base()
    {
        var kind = Any<BaseKind>();
        var usual = new BaseDesign { Kind = kind };
        return kind == BaseKind.None ? usual : kind == BaseKind.Hung ? usual with { Height = Long(500, 2400), LightRail = MaybeOf(s_boards) } : usual with
        {
            Height = Long(50, 300),
            Setback = Pick(Length.Zero, Long(10, 90)),
            Mould = MaybeOf(s_boards),
            Material = MaybeOf(s_sheets),
            ShimRoom = kind == BaseKind.Plinth ? Long(0, 30) : Length.Zero,
            LongestSection = kind == BaseKind.Plinth && Chance() ? Long(1000, 3000) : usual.LongestSection,
        };
    }

    private HeadDesign Head()
    {
        var crown = MaybeOf(s_boards);
        var stated = Chance();
        return new()
        {
            Height = stated ? Long(1000, 3000) : null,
            Gap = stated ? null : Long(0, 300),
            Crown = crown,
            CrownLap = crown is null ? Length.Zero : Long(0, 50),
            SlopeGap = Maybe(() => Long(0, 100)),
            SlopeFiller = MaybeOf(s_sheets),
        };
    }

    private BackDesign Back()
    {
        var kind = Any<BackKind>();
        return new()
        {
            Kind = kind,
            Material = kind == BackKind.None ? null : Pick(s_sheets),
            Inset = kind == BackKind.Captured ? Pick(Length.Zero, Long(5, 30)) : Length.Zero,
        };
    }

    private NosingDesign? Nosing() => _random.Next(3) switch
    {
        0 => null,
        1 => new() { Shelves = Pick(s_boards), Uprights = MaybeOf(s_boards) },
        _ => new() { Shelves = MaybeOf(s_boards), Uprights = Pick(s_boards) },
    };

    private FaceFrameDesign FaceFrame() => new()
    {
        EndStile = Pick(s_boards),
        MidStile = Pick(s_boards),
        TopRail = Pick(s_boards),
        BottomRail = Pick(s_boards),
        MidRail = MaybeOf(s_boards),
        JointStile = MaybeOf(s_boards),
        SlidePacker = MaybeOf(s_boards),
        FinishedOverlap = Pick(Length.Zero, Long(1, 5)),
    };

    private BayDivision Division()
    {
        var counted = Chance();
        return new()
        {
            Bays = counted ? _random.Next(1, 12) : null,
            WidestClear = counted ? null : Long(400, 1000),
            BaysPerCase = _random.Next(1, 4),
        };
    }

    private ColumnDesign Column(int index, int tiers) => new()
    {
        Id = $"c{index}",
        Width = Maybe(() => Long(400, 1000)),
        Bays = _random.Next(1, 4),
        Open = Chance(),
        Interiors = Chance() ? [] : List(tiers, tiers, _ => Interior()),
    };

    private ValueList<TierDesign> Tiers()
    {
        var open = _random.Next(4);
        return List(1, 3, i => new TierDesign { Height = i == open ? null : Long(300, 2000), Depth = Maybe(() => Long(200, 700)), Counter = Chance() ? null : Counter(), Interior = Interior() });
    }

    private CounterDesign Counter() => new()
    {
        Use = Any<CounterUse>(),
        Material = Pick(s_sheets),
        Layers = _random.Next(1, 3),
        Overhang = Pick(Length.Zero, Long(1, 60)),
        EndOverhang = Pick(Length.Zero, Long(1, 60)),
        Edge = MaybeOf(s_boards),
        Apron = Pick(Length.Zero, Long(40, 90)),
        Cushion = Pick(Length.Zero, Long(40, 90)),
    };

    private Interior Interior()
    {
        var placed = Chance();
        var height = Length.Zero;
        return new()
        {
            FixedAt = placed ? List(0, 3, _ => height += Long(100, 500)) : [],
            Fixed = placed ? 0 : _random.Next(0, 5),
            Loose = _random.Next(0, 5),
            LoadPerMetre = Maybe(() => _random.NextDouble() * 60),
            Fronts = List(0, 2, _ => Chance() ? Doors() : Drawers()),
        };
    }

    private FrontDesign Doors() => new()
    {
        Kind = FrontKind.Doors,
        Fit = Any<FrontFit>(),
        Material = Pick(s_sheets),
        Opening = _random.Next(1, 4),
        Openings = _random.Next(1, 3),
        Leaves = _random.Next(1, 3),
        Hinged = Any<HingeSide>(),
    };

    private FrontDesign Drawers() => new()
    {
        Kind = FrontKind.Drawers,
        Fit = Any<FrontFit>(),
        Material = Pick(s_sheets),
        Opening = _random.Next(1, 4),
        Drawers = _random.Next(1, 5),
        Heights = List(0, 2, _ => Long(80, 300)),
        BoxMaterial = Pick(s_sheets),
        BottomMaterial = Pick(s_sheets),
    };

    /// <summary>A copy in which every number and length is a little smaller, every count one higher and every flag by chance.</summary>
    private T Vary<T>(T record)
        where T : class
    {
        var copy = typeof(T).GetMethod("<Clone>$")!.Invoke(record, null)!;
        foreach (var property in typeof(T).GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite))
        {
            object? value = property.GetValue(copy) switch
            {
                double number => Chance() ? number : number * (0.9 + (_random.NextDouble() * 0.1)),
                int count => count + _random.Next(0, 2),
                bool => Chance(),
                Length length => Chance() ? length : Length.FromNanometres(length.Nanometres - _random.NextInt64(0, (length.Nanometres / 10) + 1)),
                var other => other,
            };
            property.SetValue(copy, value);
        }

        return (T)copy;
    }

    /// <summary>A length between two of millimetres, in a step that people use or in nanometres.</summary>
    private Length Long(long least, long most)
    {
        var step = Pick(1L, 100_000L, 1_000_000L, 396_875L, 2_540L);
        var (low, high) = (least * Length.NanometresPerMillimetre, most * Length.NanometresPerMillimetre);
        return Length.FromNanometres(_random.NextInt64((low + step - 1) / step, (high / step) + 1) * step);
    }

    private decimal Money() => _random.Next(0, 1_000_000) / Pick(1m, 100m, 10_000m);

    private bool Chance() => _random.Next(2) == 0;

    private T Pick<T>(params T[] choices) => choices[_random.Next(choices.Length)];

    private T Any<T>()
        where T : struct, Enum => Pick(Enum.GetValues<T>());

    private T? Maybe<T>(Func<T> make)
        where T : struct => Chance() ? make() : null;

    private string? MaybeOf(string[] choices) => Chance() ? null : Pick(choices);

    private ValueList<T> List<T>(int least, int most, Func<int, T> make) =>
        Enumerable.Range(0, _random.Next(least, most + 1)).Select(make).ToValueList();
}
