using Casewright.Engine.Layout;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Tests.Verifying;

/// <summary>The example jobs are what their notes say they are.</summary>
public sealed class ExampleTests
{
    public static TheoryData<string> Names => new(Examples.Names);

    [Fact]
    public void These_are_the_examples() => Assert.Equal(
        [
            "alcove-pair", "archive", "crooked-music-room", "desk-wall", "dining-dresser", "display-wall", "hall-dresser", "pantry-corner",
            "reading-corner", "stair-wall", "study-corner", "window-bench",
        ],
        Examples.Names);

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_reads_lays_out_and_has_a_note(string name)
    {
        Assert.True(LayoutStage.Lay(Examples.Read(name)).Succeeded);
        Assert.NotEqual("", Examples.Note(name));
    }

    /// <summary>2584 − 60 gap − 100 plinth = 2424, and a sheet gives 2440 − 2 · 5 trim = 2430.</summary>
    [Fact]
    public void The_sides_of_the_alcove_pair_come_whole_out_of_a_sheet()
    {
        var sides = Parts("alcove-pair").Where(part => part.Role == PartRole.Side).ToList();
        Assert.Equal(4, sides.Count);
        Assert.All(sides, side => Assert.Equal(Length.FromMillimetres(2424), side.Length));
    }

    /// <summary>12 sides of 111 in; a 96 in sheet gives 95 1/2. The two ends show on both faces, the ten between on one.</summary>
    [Fact]
    public void The_display_wall_has_twelve_overlong_sides_two_of_them_without_a_hidden_face()
    {
        var sides = Parts("display-wall").Where(part => part.Role == PartRole.Side).ToList();
        Assert.Equal(12, sides.Count);
        Assert.All(sides, side => Assert.Equal(Length.FromInches(111), side.Length));
        Assert.Equal(["C1-L", "C6-R"], sides.Where(side => side.ReferenceFace == Exposure.Shows && side.OppositeFace == Exposure.Shows).Select(side => side.Id));
    }

    /// <summary>40 bays in cases of two: 40 sides and 20 partitions, none of which fits a 2440 sheet.</summary>
    [Fact]
    public void The_archive_has_sixty_overlong_uprights()
    {
        var uprights = Parts("archive").Where(part => part.Role is PartRole.Side or PartRole.Partition).ToList();
        Assert.Equal(60, uprights.Count);
        Assert.All(uprights, upright => Assert.True(upright.Length > Length.FromMillimetres(2430)));
    }

    /// <summary>
    /// Soffit 3 in 4 from 2760 at x = 900, 40 left: 2720 − 3/4·(x − 900) above the floor, base 90, tops 18/(4/5) = 22.5 plumb. Case 2 from 900:
    /// left side 2720 − 22.5 − 90 = 2607.5, right side inside at 1782: 2607.5 − 661.5 = 1946. A sheet gives 2430.
    /// </summary>
    [Fact]
    public void The_stair_wall_has_raked_cases_two_of_whose_uprights_outrun_the_sheet()
    {
        var parts = Parts("stair-wall").ToDictionary(part => part.Id, StringComparer.Ordinal);
        Assert.Equal(Length.FromMillimetres(2607.5m), parts["C2-L"].Length);
        Assert.Equal(Length.FromMillimetres(1946), parts["C2-R"].Length);
        Assert.Equal(["C2-T", "C3-T", "C4-T"], parts.Values.Where(part => part.Role == PartRole.Top && part.Place.Tilt is not null).Select(part => part.Id));
        Assert.Equal(
            ["C1-L", "C1-P1", "C1-R", "C2-L"],
            parts.Values.Where(part => part.Role is PartRole.Side or PartRole.Partition && part.Length > Length.FromMillimetres(2430)).Select(part => part.Id));
    }

    private static IReadOnlyList<Part> Parts(string name) => LayoutStage.Lay(Examples.Read(name)).Value!.Parts;
}
