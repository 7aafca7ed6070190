using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;
using Casewright.Model.Shop;

namespace Casewright.Model.Files.JobShapes;

/// <summary>The shop in a job file.</summary>
internal static class ShopShapes
{
    public static RecordShape<SawRules> Saw { get; } = new("saw", "How sheets and boards are sawn.", f => new()
    {
        Kerf = f.Required(
            "kerf",
            s => s.Kerf,
            LengthShape.ZeroOrMore(20),
            "Width of the saw cut. 0 only for stock that is sheared, not sawn."),
        EdgeTrim = f.Required(
            "edgeTrim",
            s => s.EdgeTrim,
            LengthShape.ZeroOrMore(150),
            "Cut off every factory edge of a sheet before it is used."),
        BoardEndTrim = f.Default(
            "boardEndTrim", s => s.BoardEndTrim, LengthShape.ZeroOrMore(500), Length.Zero, "Cut off each end of a board."),
        Stages = f.Default("stages", s => s.Stages ?? 0, Choices.Stages, 3, "Rounds of cuts, the sheet turned between them.") is > 0 and var stages ? stages : null,
        FirstCut = f.Default("firstCut", s => s.FirstCut, Choices.FirstCut, FirstCut.Rip, "Direction of the first round."),
        Aim = f.Default("aim", s => s.Aim, Choices.SheetAim, SheetAim.FewestSettings, "What decides between layouts of one cost."),
        LongestRip = f.OptionalValue(
            "longestRip",
            s => s.LongestRip,
            LengthShape.Between(300, 30_000),
            "Longest rip that the saw takes; left out, there is no limit."),
        NarrowestStrip = f.OptionalValue(
            "narrowestStrip",
            s => s.NarrowestStrip,
            LengthShape.ZeroOrMore(1000),
            "Narrowest strip that may be ripped; left out, there is no limit."),
        KeepLength = f.Default(
            "keepLength",
            s => s.KeepLength,
            LengthShape.ZeroOrMore(),
            Length.FromMillimetres(300),
            "Smallest leftover worth keeping, along the grain."),
        KeepWidth = f.Default(
            "keepWidth",
            s => s.KeepWidth,
            LengthShape.ZeroOrMore(),
            Length.FromMillimetres(100),
            "Smallest leftover worth keeping, across the grain."),
    });

    public static RecordShape<ShopMethod> Method { get; } = new("shopMethod", "A joint method that the shop is set up for.", f => new()
    {
        Method = f.Required("method", m => m.Method, Choices.SpliceMethod, "The method."),
        Minutes = f.Required(
            "minutes", m => m.Minutes, NumberShape.Positive(1000), "Hands-on minutes of one joint in a part 300 mm (12 in) wide."),
    });

    public static RecordShape<SpliceRules> Splicing { get; } = new(
        "splicing",
        "Rules of joining parts end to end. What is left out has the usual figure of the unit system (common practice, no source).",
        f => new()
        {
            ShortestPiece = f.Usual(
                "shortestPiece",
                r => r.ShortestPiece,
                LengthShape.Positive(5000),
                u => SpliceRules.For(u).ShortestPiece,
                "Shortest piece of a spliced part."),
            ShortestShare = f.Usual(
                "shortestShare",
                r => r.ShortestShare,
                new CountShape(2, 100),
                u => SpliceRules.For(u).ShortestShare,
                "No piece is shorter than the part's length divided by this number."),
            ClearOfDado = f.Usual(
                "clearOfDado",
                r => r.ClearOfDado,
                LengthShape.ZeroOrMore(1000),
                u => SpliceRules.For(u).ClearOfDado,
                "Nearest that a joint line may come to a dado."),
            ClearOfPinHole = f.Usual(
                "clearOfPinHole",
                r => r.ClearOfPinHole,
                LengthShape.ZeroOrMore(1000),
                u => SpliceRules.For(u).ClearOfPinHole,
                "Nearest that a joint line may come to a shelf pin hole."),
            ClearOfHardware = f.Usual(
                "clearOfHardware",
                r => r.ClearOfHardware,
                LengthShape.ZeroOrMore(1000),
                u => SpliceRules.For(u).ClearOfHardware,
                "Nearest that a joint line may come to a hinge plate, slide or bracket screw."),
            BelowShelf = f.Usual(
                "belowShelf",
                r => r.BelowShelf,
                LengthShape.ZeroOrMore(1000),
                u => SpliceRules.For(u).BelowShelf,
                "How far below a fixed shelf a joint hides best."),
            SquaringAllowance = f.Usual(
                "squaringAllowance",
                r => r.SquaringAllowance,
                LengthShape.ZeroOrMore(100),
                u => SpliceRules.For(u).SquaringAllowance,
                "Left on each side of a joint for squaring the ends before mortising."),
            EndAllowance = f.Usual(
                "endAllowance",
                r => r.EndAllowance,
                LengthShape.ZeroOrMore(200),
                u => SpliceRules.For(u).EndAllowance,
                "Left on the end opposite the datum end and trimmed after the cure."),
            MostJoints = f.Usual(
                "mostJoints",
                r => r.MostJoints,
                new CountShape(0, 10),
                u => SpliceRules.For(u).MostJoints,
                "Most joints in one part; 0 forbids splicing."),
            PositionStep = f.Usual(
                "positionStep",
                r => r.PositionStep,
                LengthShape.Between(0.1m, 500),
                u => SpliceRules.For(u).PositionStep,
                "Step of the grid on which joint positions are tried."),
            OneSightLine = f.Usual(
                "oneSightLine",
                r => r.OneSightLine,
                FlagShape.Instance,
                u => SpliceRules.For(u).OneSightLine,
                "Whether the joints of uprights along a run keep one height."),
            Methods = f.Usual(
                "methods",
                r => r.Methods,
                new ListShape<ShopMethod>(Method, 1, Choices.SpliceMethod.Values.Count()),
                u => SpliceRules.For(u).Methods,
                "Methods the shop is set up for, the preferred first; each once."),
            TenonWidth = f.Usual(
                "tenonWidth",
                r => r.TenonWidth,
                LengthShape.Between(3, 200),
                u => SpliceRules.For(u).TenonWidth,
                "Width of a loose tenon."),
            TenonEmbedment = f.Usual(
                "tenonEmbedment",
                r => r.TenonEmbedment,
                LengthShape.Between(3, 200),
                u => SpliceRules.For(u).TenonEmbedment,
                "Depth of a tenon in each piece."),
            BackBearing = f.Usual(
                "backBearing",
                r => r.BackBearing,
                LengthShape.ZeroOrMore(100),
                u => SpliceRules.For(u).BackBearing,
                "Least bearing of a back's joint on a fixed shelf, each side."),
            BandOverlap = f.Usual(
                "bandOverlap",
                r => r.BandOverlap,
                LengthShape.ZeroOrMore(200),
                u => SpliceRules.For(u).BandOverlap,
                "Least overlap of a trim band over a back's joint, each side."),
        })
    {
        Check = CheckMethods,
    };

    public static RecordShape<Workshop> Shop { get; } = new("shop", "The shop that builds the job.", f => new()
    {
        Saw = f.Required("saw", s => s.Saw, Saw, "Saw and breakdown."),
        Splicing = f.Section("splicing", s => s.Splicing, Splicing, "Joining parts end to end."),
        HourlyRate = f.Required("hourlyRate", s => s.HourlyRate, MoneyShape.Instance, "What an hour of work costs the job."),
        Glue = f.Section("glue", s => s.Glue, GlueShape.Shape, "Glue of splices and cases."),
        Temperature = f.OptionalValue(
            "temperature", s => s.Temperature, QuantityShape.Temperature, "Temperature of the shop while glue cures."),
        Times = f.Section("times", s => s.Times, TimelineShapes.Times, "The shop's own times; what is left out is usual in the trade."),
        Hours = f.Section("hours", s => s.Hours, TimelineShapes.Hours, "Working hours and days off."),
        People = f.Items("people", s => s.People, TimelineShapes.Person, 0, 50, "People. Without any there is no timetable."),
        Stations = f.Items(
            "stations", s => s.Stations, TimelineShapes.Station, 0, 100, "Bench places for glue-ups. Clamped splices need one."),
        Clamps = f.Items(
            "clamps",
            s => s.Clamps,
            TimelineShapes.Clamp,
            0,
            5,
            "Clamps, one entry a kind; a kind that is left out was not counted, and limits nothing."),
        FloorPlaces = f.OptionalValue(
            "floorPlaces",
            s => s.FloorPlaces,
            new CountShape(1, 1000),
            "Floor places for cases from assembly to delivery; left out, there is room for all."),
        Finish = f.Optional("finish", s => s.Finish, TimelineShapes.Finish, "Finish; left out when the shop does not finish the work."),
        Prices = f.Section("prices", s => s.Prices, PriceShapes.Prices, "How the job is priced."),
        Checks = f.Section("checks", s => s.Checks, CheckLimitsShape.Shape, "Limits that the checks hold a plan to."),
    })
    {
        Check = CheckClamps,
    };

    private static void CheckClamps(Workshop shop, Spot spot)
    {
        for (var i = 0; i < shop.Clamps.Count; i++)
        {
            if (shop.Clamps.Take(i).Any(c => c.Kind == shop.Clamps[i].Kind))
                spot["clamps"][i]["kind"].Fail("This kind of clamp is listed twice.", null, "one entry for each kind");
        }
    }

    private static void CheckMethods(SpliceRules rules, Spot spot)
    {
        for (var i = 0; i < rules.Methods.Count; i++)
        {
            if (rules.Methods.Take(i).Any(m => m.Method == rules.Methods[i].Method))
                spot["methods"][i]["method"].Fail("This method is listed twice.", null, "each method once, the preferred first");
        }
    }
}
