using Casewright.Engine.Surveying;
using Casewright.Engine.Tests.Layout;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Surveying;

/// <summary>Skirting, cornice, door swings, space to be kept clear and stools against casework, by hand.</summary>
public sealed class RoomFeatureTests
{
    private static Run Standing(BaseDesign foot, Length? height = null) => Plain(UnitSystem.Millimetres, Mm(900), height ?? Mm(2000), Mm(300)) with { Base = foot };

    private static BaseDesign Plinth(decimal height) => new() { Kind = BaseKind.Plinth, Height = Mm(height), Setback = Mm(50), ShimRoom = Mm(10) };

    private static Job With(Run run, WallSurvey survey, UnitSystem units = UnitSystem.Millimetres)
    {
        var job = Job(units, run);
        return job with { Walls = [job.Walls[0] with { Survey = survey, Width = Mm(3000), Height = Mm(2600) }] };
    }

    private static WallSurvey Skirted(decimal height, bool stays) => new() { Datum = Mm(1000), Skirting = new() { Height = Mm(height), Projection = Mm(20), Stays = stays } };

    private static Finding Of(Laid laid, string check) => laid.Casework.Findings.Single(f => f.Check == check);

    [Fact]
    public void ALadderBaseStandsOffASkirtingThatStays()
    {
        // Rear rail 20 + 3 off the wall, front at 23 + 18; rungs 300 − 50 − 3·18 − 23 = 173. Bottoms at 150, skirting 145.
        var laid = Laid.Of(With(Standing(Plinth(150)), Skirted(145, stays: true)));
        Assert.Equal((Mm(23), Mm(41)), (RoomBox.Of(laid["A-G1R"]).Low.Z, RoomBox.Of(laid["A-G1R"]).High.Z));
        Assert.Equal(Mm(173), laid["A-G1.1"].Length);
        Assert.Equal(Severity.Pass, Of(laid, "skirting").Severity);

        // A base of 100 leaves bottoms and backs against it; cut back, it is in nobody's way.
        Assert.Equal(Severity.Stop, Of(Laid.Of(With(Standing(Plinth(100)), Skirted(145, stays: true))), "skirting").Severity);
        var cut = Laid.Of(With(Standing(Plinth(100)), Skirted(145, stays: false)));
        Assert.Equal(Severity.Pass, Of(cut, "skirting").Severity);
        Assert.Equal(Mm(196), cut["A-G1.1"].Length);
    }

    [Fact]
    public void SidesToTheFloorAreNotchedRoundIt()
    {
        // 145 + 3 high, 20 + 3 into a side 300 wide.
        var laid = Laid.Of(With(Standing(new() { Kind = BaseKind.SidesToFloor, Height = Mm(150), Setback = Mm(50) }), Skirted(145, stays: true)));
        Assert.All(new[] { "C1-L", "C1-R" }, id => Assert.Contains(new Notch("skirting", Length.Zero, Mm(277), Mm(148), Mm(23)), laid[id].Machining));
    }

    [Fact]
    public void InInches()
    {
        // 5 1/2 high, 3/4 out, 3 mm of play: into a side 12 wide.
        var run = Plain(UnitSystem.Inches, In(36), In(80), In(12)) with { Base = new() { Kind = BaseKind.SidesToFloor, Height = In(6), Setback = In(2) } };
        var survey = new WallSurvey { Datum = In(40), Skirting = new() { Height = In(5.5m), Projection = In(0.75m), Stays = true } };
        Assert.Contains(
            new Notch("skirting", Length.Zero, In(11.25m) - Mm(3), In(5.5m) + Mm(3), In(0.75m) + Mm(3)),
            Laid.Of(With(run, survey, UnitSystem.Inches))["C1-L"].Machining);
    }

    [Fact]
    public void CasesKeepUnderACorniceThatStays()
    {
        // Ceiling 2600 less 120: 2480.
        WallSurvey Corniced(bool stays) => new() { Datum = Mm(1000), Cornice = new() { Height = Mm(120), Projection = Mm(80), Stays = stays } };
        Severity At(decimal height, bool stays) => Of(Laid.Of(With(Standing(Plinth(100), Mm(height)), Corniced(stays))), "cornice").Severity;

        Assert.Equal((Severity.Pass, Severity.Stop, Severity.Pass), (At(2480, true), At(2481, true), At(2481, false)));
    }

    [Theory]
    // A seat with its top at 600 under a window at 640: 640 − 32 = 608.
    [InlineData(640, Severity.Pass)]
    [InlineData(630, Severity.Caution)]
    public void AStoolLiesOverTheTopBelowIt(int window, Severity severity)
    {
        var feature = new WallFeature { Name = "window", Kind = FeatureKind.Window, X = Mm(100), Y = Mm(window), Width = Mm(600), Height = Mm(1200), Stool = Mm(45) };
        var run = Standing(Plinth(100), Mm(600)) with { Tiers = [new() { Interior = new() }] };
        var job = With(run, new() { Datum = Mm(1000), Features = [feature] });
        var finding = SurveyStage.Read(job, Laid.Of(job).Casework).Findings.Single(f => f.Check == "window-stool");

        Assert.Equal((severity, 600), (finding.Severity, finding.Value!.Value));
    }

    /// <summary>Run a, 300 deep, through to the right end of a wall of 3000; a door on the next wall, its opening from <paramref name="x"/> on, 800 wide.</summary>
    private static Job BesideDoor(decimal x, DoorSwing? swing, decimal keepClear = 0)
    {
        var door = new WallFeature { Name = "pantry door", Kind = FeatureKind.Door, X = Mm(x), Y = Mm(0), Width = Mm(800), Height = Mm(2000), Swing = swing, KeepClear = Mm(keepClear) };
        var run = Plain(UnitSystem.Millimetres, Mm(3000), Mm(2000), Mm(300)) with { Right = new() { Kind = EndKind.Wall, Filler = Mm(30) }, Division = new() { Bays = 3 } };
        return Job(UnitSystem.Millimetres, run) with
        {
            Walls =
            [
                new() { Id = "north", Name = "north", Width = Mm(3000), Height = Mm(2600), Survey = new() { Datum = Mm(1000), RightEnd = new() { Wall = "east" } } },
                new() { Id = "east", Name = "east", Width = Mm(2500), Height = Mm(2600), Survey = new() { Datum = Mm(1000), Features = [door] } },
            ],
        };
    }

    [Fact]
    public void ARunInTheSwingOfADoorIsRefused()
    {
        // The door opens from 200 along the east wall, so out from the north wall: its leaf, hung at 1000, sweeps 800 round it; at 970 from the
        // corner of the case (30 of filler) it reaches √(800² − 30²) = 799.4 from its hinge, to 1000 − 799.4 = 200.6, inside the 300 of the case.
        var problem = Laid.ProblemAt("runs[0]", BesideDoor(200, DoorSwing.InHungRight));
        Assert.Contains("swing of pantry door (walls[1].survey.features[0])", problem.Message, StringComparison.Ordinal);
        Assert.Contains("800", problem.Accepted, StringComparison.Ordinal);

        // From 301 on it clears the case; so does a door that opens out of the room, or that slides.
        Assert.NotNull(Laid.Of(BesideDoor(301, DoorSwing.InHungRight)));
        Assert.NotNull(Laid.Of(BesideDoor(200, DoorSwing.Out)));
        Assert.NotNull(Laid.Of(BesideDoor(200, DoorSwing.None)));

        // Hung at 301, its leaf opens along the front of the case, 1 clear of it.
        Assert.NotNull(Laid.Of(BesideDoor(301, DoorSwing.InHungLeft)));
        Laid.ProblemAt("runs[0]", BesideDoor(290, DoorSwing.InHungLeft));
    }

    [Fact]
    public void ARunInSpaceToBeKeptClearIsRefused()
    {
        // 900 before the door, from 250 on: the case reaches from 2970 back, 300 out. Less than its filler of 30 meets nothing.
        var problem = Laid.ProblemAt("runs[0]", BesideDoor(250, DoorSwing.Out, keepClear: 900));
        Assert.Contains("kept clear before pantry door", problem.Message, StringComparison.Ordinal);
        Assert.NotNull(Laid.Of(BesideDoor(250, DoorSwing.Out, keepClear: 29)));
        Assert.NotNull(Laid.Of(BesideDoor(301, DoorSwing.Out, keepClear: 900)));
    }

    [Fact]
    public void ADoorWithoutASwingIsAskedFor()
    {
        var job = BesideDoor(301, null);
        Assert.Contains(SurveyStage.Read(job, Laid.Of(job).Casework).Missing, m => m.What == "how pantry door opens");
        job = BesideDoor(301, DoorSwing.Out);
        Assert.DoesNotContain(SurveyStage.Read(job, Laid.Of(job).Casework).Missing, m => m.What == "how pantry door opens");
    }
}
