using System.Reflection;
using System.Text.RegularExpressions;
using Casewright.Engine.Checks;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Engine.Tests.Surveying;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;
using Casewright.Model.Splices;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Checks;

/// <summary>A missing input is said, with where to give it, and never passes by silence.</summary>
public partial class MissingInputTests
{
    private const string NoLoad = "nobody has said what the shelves carry.";
    private const string NoShelfLoad = "nobody has said what this shelf will carry.";
    private const string NoTenons = "the plan gives this joint no tenons to reckon with.";
    private const string TooDamp = "there are no strength figures here for damp places.";
    private const string NoSeason = "the room's temperature and its driest and dampest humidity are not known.";
    private const string NoCeiling = "the ceiling height at this case is not known.";
    private const string NoSheet = "no sheet of panel is on offer.";

    private static readonly SiteFacts Site = new()
    {
        FloorRating = 20,
        Climate = Climate.Heated,
        RoomTemperature = 21,
        DriestHumidity = 35,
        DampestHumidity = 55,
        AcclimatisingDays = 4,
        Walls = WallStructure.WoodStuds,
        StudSpacing = Bookcase.Mm(400),
        Route = [],
        YearBuilt = 1990,
    };

    private static readonly ValueList<Splice> Joints =
    [
        Bookcase.TenonSplice("L", 1000), Bookcase.TenonSplice("R", 1000) with { Id = "R/1" }, Bookcase.TenonSplice("F1", 380),
    ];

    private static Bookcase Whole => With(job => job);

    private static Bookcase With(Func<Job, Job> change) => new()
    {
        Nosing = (19, 38),
        Site = Site,
        Splices = Joints,
        Sheets = [Sheet],
        ChangeJob = job => change(job with
        {
            Date = new(2026, 1, 2),
            StockNeededBy = new(2026, 2, 2),
            Revision = 2,
            ApprovedRevision = 2,
            Shop = job.Shop with { Temperature = 20 },
            Walls = [job.Walls[0] with { Survey = CrookedAlcove.Metric }],
        }),
    };

    private static SheetLayout Sheet => new()
    {
        Id = "S1",
        Stock = "full",
        Material = "panel",
        Length = Bookcase.Mm(2440),
        Width = Bookcase.Mm(1220),
        Trim = Bookcase.Mm(5),
        Kerf = Bookcase.Mm(3),
        Cost = 80,
        Bought = true,
        Cuts = [],
    };

    private static Bookcase On(Func<SiteFacts, SiteFacts> change) => Whole with { Site = change(Site) };

    private static Bookcase Surveyed(Func<WallSurvey, WallSurvey> change) => With(j => j with { Walls = [j.Walls[0] with { Survey = change(CrookedAlcove.Metric) }] });

    private static WallFeature Door => new() { Name = "hall door", Kind = FeatureKind.Door, X = Bookcase.Mm(2000), Y = Length.Zero, Width = Bookcase.Mm(800), Height = Bookcase.Mm(2000) };

    private static Bookcase Unloaded => Whole with { Load = null };

    private static Bookcase Board => new() { Kind = MaterialKind.Mdf, Load = null };

    private static Bookcase Continuous => new() { Load = null, Bays = 2, Width = 1854, FixedShelves = 0, LooseShelves = 0, More = [Bookcase.Level("X", PartRole.FixedShelf, 42, 1200, 1830, 300, new(), null)] };

    private static Bookcase NoWall => With(j => j with { Walls = [] });

    private static Bookcase Bare => Whole with { Splices = [.. Joints.Select(s => s with { Tenons = [] })] };

    private static Bookcase Damp => On(s => s with { Climate = Climate.Damp });

    // Each check, what it says, and the bookcase that lacks the input.
    private static IEnumerable<(string Check, string Words, Bookcase Lacking)> Cases =>
    [
        ("room-doors-open", "nobody has said how hall door opens.", Surveyed(s => s with { Features = [Door] })),
        ("shelf-sag", NoShelfLoad, Unloaded),
        ("shelf-sag-in-time", NoShelfLoad, Unloaded),
        ("shelf-sag-in-time", "the job does not say whether the room is heated, and creep depends on it.", On(s => s with { Climate = null })),
        ("shelf-sag-in-time", "there is no creep figure for this material in so damp a place.", Damp with { Kind = MaterialKind.Mdf }),
        ("shelf-strength", NoShelfLoad, Unloaded),
        ("shelf-strength", TooDamp, Damp),
        ("loose-shelf-visible-sag", NoShelfLoad, Unloaded),
        ("board-shelf-span", NoShelfLoad, Board),
        ("shelf-one-bay-loaded", NoShelfLoad, Continuous),
        ("shelf-pins", NoShelfLoad, Unloaded),
        ("shelf-pins", TooDamp, Damp),
        ("shelf-pins", "no row of pin holes was found beside this shelf.", Whole with { Change = p => p with { Machining = [] } }),
        ("splice-strength", NoLoad, Unloaded),
        ("splice-strength", NoTenons, Bare),
        ("splice-strength", TooDamp, Damp),
        ("splice-handling", NoTenons, Bare),
        ("splice-handling", TooDamp, Damp),
        ("splice-tilt-up", NoTenons, Bare),
        ("splice-tilt-up", TooDamp, Damp),
        ("splice-axial", NoLoad, Unloaded),
        ("splice-axial", NoTenons, Bare),
        ("splice-axial", TooDamp, Damp),
        ("splice-sag", NoShelfLoad, Unloaded),
        ("dado-bearing", NoShelfLoad, Unloaded),
        ("dado-bearing", TooDamp, Damp),
        ("dado-bearing", "no dado carries this shelf.", Whole with { Dado = 0 }),
        ("upright-buckling", NoLoad, Unloaded),
        ("case-racking", NoLoad, Unloaded),
        ("tilt-up", NoCeiling, NoWall),
        ("lift-room", NoCeiling, NoWall),
        ("access-route", "nobody has measured the way in.", On(s => s with { Route = null })),
        ("floor-load", NoLoad, Unloaded),
        ("floor-load", "the rating of the floor is not stated.", On(s => s with { FloorRating = null })),
        ("case-anchorage", "the job does not say what the wall is made of.", On(s => s with { Walls = null }) with { ChangeJob = Unmade }),
        ("case-anchorage", "the rating of the masonry fixings is not known.", Surveyed(s => s with { Structure = WallStructure.Masonry })),
        ("nailers-hit-studs", "the stud spacing is not known.", Surveyed(s => s with { Studs = [] }) with { Site = Site with { StudSpacing = null } }),
        ("part-over-sheet", NoSheet, Whole with { SheetLength = null }),
        ("small-overrun", NoSheet, Whole with { SheetLength = null }),
        ("just-over-a-division", NoSheet, Whole with { SheetLength = null }),
        ("stock-lead-time", "the job gives no date, or no date by which stock is needed.", With(j => j with { Date = null })),
        ("stock-lead-time", "the job gives no date, or no date by which stock is needed.", With(j => j with { StockNeededBy = null })),
        ("revision-approved", "no revision has been approved yet.", With(j => j with { ApprovedRevision = null })),
        ("glue-temperature", "the job does not say how warm the shop is while glue cures.", With(j => j with { Shop = j.Shop with { Temperature = null } })),
        ("material-in-climate", "the job does not say whether the room is heated.", On(s => s with { Climate = null })),
        ("solid-wood-movement", NoSeason, On(s => s with { RoomTemperature = null })),
        ("solid-wood-movement", NoSeason, On(s => s with { DriestHumidity = null })),
        ("run-movement", NoSeason, On(s => s with { DampestHumidity = null })),
        ("acclimatising", "the job does not say how long the stock will lie before it is cut.", On(s => s with { AcclimatisingDays = null })),
        ("old-paint", "the year of the building is not known.", On(s => s with { YearBuilt = null })),
        ("survey-readings", "the plan holds the tightest width and the lowest ceiling; plumb, bow, floor level and outlets are not in it.", With(j => j with { Walls = [j.Walls[0] with { Survey = null }] })),
        .. Readings.Select(r => ("survey-readings", $"nobody has read {r.Words}.", Surveyed(r.Without))),
    ];

    private static IEnumerable<(string Words, Func<WallSurvey, WallSurvey> Without)> Readings =>
    [
        ("the floor, every 600 mm, at the wall and at the front", s => s with { Floor = [] }),
        ("the floor at the front line", s => s with { Floor = [.. s.Floor.Select(f => f with { Front = null })] }),
        ("floor stations nearer together than 650 mm, from end to end of the run", s => s with { Floor = [s.Floor[0], s.Floor[2]] }),
        ("the ceiling, at the stations of the floor", s => s with { Ceiling = [] }),
        ("the ceiling at more than one station", s => s with { Ceiling = [s.Ceiling[0]] }),
        ("widths at three heights, at the wall and at the front", s => s with { Widths = [] }),
        ("widths at three heights", s => s with { Widths = [s.Widths[0], s.Widths[1]] }),
        ("widths at the front line", s => s with { Widths = [.. s.Widths.Select(w => w with { Front = null })] }),
        ("front readings as far out as the cases are deep", s => s with { FrontLine = Bookcase.Mm(250) }),
        ("a diagonal", s => s with { Diagonals = [] }),
        ("the plumb of the left end at floor, 1 m, 2 m and ceiling", s => s with { LeftEnd = s.LeftEnd! with { Plumb = [] } }),
        ("the angle of the right corner", s => s with { RightEnd = s.RightEnd! with { Corner = null } }),
        ("the bow of the wall, by a string", s => s with { Strings = [] }),
        ("the lean of the wall, by a plumb line", s => s with { PlumbLines = [] }),
        ("the centres of the studs", s => s with { Studs = [] }),
        ("how hall door opens", s => s with { Features = [Door] }),
        ("doors, windows, outlets, switches, registers, radiators and pipes, or that there are none", s => s with { Features = [] }),
    ];

    [Fact]
    public void With_every_input_given_nothing_is_left_unchecked() => Assert.Empty(
        CheckCatalogue.All.SelectMany(c => c.Run(Whole.Context)).Where(f => f.Severity == Severity.NotChecked).Select(f => $"{f.Check} {f.Subject}: {f.Message}"));

    [Fact]
    public void Each_missing_input_is_said_with_where_to_give_it()
    {
        foreach (var (check, words, lacking) in Cases)
        {
            var findings = CheckCatalogue.All.Single(c => c.Sheet.Id == check).Run(lacking.Context).ToList();
            var said = findings.Where(f => f.Severity == Severity.NotChecked && f.Message.StartsWith("Not checked: ", StringComparison.Ordinal) && f.Message.Contains(words, StringComparison.Ordinal)).ToList();
            Assert.True(said.Count > 0, $"{check} does not say '{words}' but: " + string.Join(" | ", findings.Select(f => $"{f.Subject} {f.Severity} {f.Message}")));
            Assert.All(said, f => Assert.NotEmpty(f.Advice));
            Assert.DoesNotContain(findings, f => f.Severity == Severity.Pass && said.Exists(s => s.Subject == f.Subject));
        }
    }

    [Fact]
    public void Nothing_that_a_site_may_lack_goes_by_in_silence()
    {
        var site = typeof(SiteFacts).GetProperties().Where(p => p.CanWrite).ToList();
        Assert.All(site, p => Assert.True(p.GetValue(Site) is not null, $"{p.Name} is not given"));
        foreach (var property in site)
        {
            var lacking = Whole with { Site = Without(property), ChangeJob = property.Name is nameof(SiteFacts.Walls) or nameof(SiteFacts.StudSpacing) ? Unmade : Whole.ChangeJob };
            Assert.True(CheckCatalogue.All.SelectMany(c => c.Run(lacking.Context)).Any(f => f.Severity == Severity.NotChecked), $"No check says that {property.Name} is missing.");
        }
    }

    [Fact]
    public void Every_sentence_of_a_missing_input_is_held_by_a_case()
    {
        var held = Cases.Select(c => c.Words).ToList();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Root(), "src", "Casewright.Engine", "Checks"), "*.cs", SearchOption.AllDirectories))
        {
            foreach (Match match in Sentences().Matches(File.ReadAllText(file)))
            {
                // Up to the first figure that is filled in.
                var fixedPart = match.Groups["text"].Value.Split('{').MaxBy(t => t.Length)!.Split('}')[^1].Trim(' ', '.', ';');
                Assert.True(held.Exists(h => h.Contains(fixedPart, StringComparison.Ordinal)) || fixedPart.Length < 4, $"{Path.GetFileName(file)}: no case holds '{match.Groups["text"].Value}'");
            }
        }
    }

    // A wall of which nobody said what it is made of and where its studs stand.
    private static Job Unmade(Job job) => With(j => j with { Walls = [j.Walls[0] with { Survey = CrookedAlcove.Metric with { Structure = null, Studs = [] } }] }).ChangeJob(job);

    private static SiteFacts Without(PropertyInfo property)
    {
        var copy = Site with { };
        property.SetValue(copy, null);
        return copy;
    }

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
                return folder.FullName;
        }

        throw new DirectoryNotFoundException("The solution's folder is not above the tests.");
    }

    [GeneratedRegex(@"(NotChecked\(\s*context,[^""$;]+\$?""|""Not checked: "" \+ \$?""|""Not checked: )(?<text>[^""]{4,})", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Sentences();
}
