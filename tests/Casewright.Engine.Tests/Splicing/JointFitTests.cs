using Casewright.Engine.Splicing.Keying;
using Casewright.Model.Measure;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>The predicate by which keys are judged, held to joints worked out by hand on paper.</summary>
public class JointFitTests
{
    [Fact]
    public void An_uneven_pattern_closes_the_right_way_and_not_turned_over()
    {
        var (foot, head) = Pair([45, 130, 252]);

        Assert.True(JointFit.GoesTogether(foot, head, EndPlacement.EdgesTogether));

        // Turned over in a width of 300 the mortises lie at 48, 170 and 255: off by 3, 40 and 3.
        Assert.False(JointFit.GoesTogether(foot, head, EndPlacement.EdgesOpposed));
        Assert.Equal(Mm(40), JointFit.Mismatch(foot, head, EndPlacement.EdgesOpposed));
    }

    [Fact]
    public void An_even_pattern_closes_both_ways_and_so_has_no_key()
    {
        var (foot, head) = Pair([40, 150, 260]);

        Assert.True(JointFit.GoesTogether(foot, head, EndPlacement.EdgesTogether));
        Assert.True(JointFit.GoesTogether(foot, head, EndPlacement.EdgesOpposed));
    }

    [Fact]
    public void A_piece_of_the_other_hand_closes_with_its_faces_exchanged_when_tenons_lie_at_mid_thickness()
    {
        // A mirror image laid front edge to front edge shows its inside where the other shows its outside; mid-thickness is mid-thickness.
        var foot = End([45, 130, 252], atHead: true, rightHanded: true, depth: 9);
        var other = End([45, 130, 252], atHead: false, rightHanded: false, depth: 9);

        Assert.True(JointFit.GoesTogether(foot, other, EndPlacement.EdgesTogether));
    }

    [Fact]
    public void A_piece_of_the_other_hand_does_not_close_when_tenons_lie_off_mid_thickness()
    {
        // 7 from the reference face is 11 from the other: off by 4.
        var foot = End([45, 130, 252], atHead: true, rightHanded: true, depth: 7);
        var other = End([45, 130, 252], atHead: false, rightHanded: false, depth: 7);

        Assert.False(JointFit.GoesTogether(foot, other, EndPlacement.EdgesTogether));
    }

    [Fact]
    public void A_piece_turned_end_for_end_flat_on_the_bench_shows_its_other_face()
    {
        // Two heads put together: edges together means faces exchanged, which mid-thickness does not notice.
        var one = End([45, 130, 252], atHead: true, rightHanded: true, depth: 9);

        Assert.True(JointFit.GoesTogether(one, one, EndPlacement.EdgesTogether));
        Assert.False(JointFit.GoesTogether(one with { Mortises = [.. one.Mortises.Select(m => m with { Depth = Mm(7) })] }, one, EndPlacement.EdgesTogether));
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(2, true)]
    [InlineData(2.5, false)]
    public void Play_lets_a_tenon_pass_as_far_as_both_mortises_leave_open(double off, bool passes)
    {
        // Two mortises 2 wider than the tenon leave it (2 + 2)/2 = 2 of shift; the first, tight one is not moved here.
        var (foot, _) = Pair([45, 130, 252]);
        var moved = End([45, 130 + (decimal)off, 252], atHead: false, rightHanded: true, depth: 9);

        Assert.Equal(passes, JointFit.GoesTogether(foot, moved, EndPlacement.EdgesTogether));
    }

    [Fact]
    public void The_tight_mortise_lets_nothing_pass()
    {
        var (foot, _) = Pair([45, 130, 252]);

        Assert.False(JointFit.GoesTogether(foot, End([46, 130, 252], atHead: false, rightHanded: true, depth: 9) with { Mortises = Tight([46, 130, 252]) }, EndPlacement.EdgesTogether));
    }

    [Fact]
    public void Pieces_of_different_width_are_tried_flush_at_either_edge()
    {
        // 320 wide with all mortises 20 further from the reference edge: flush at the rear edges they meet.
        var (foot, _) = Pair([45, 130, 252]);
        var wider = End([65, 150, 272], atHead: false, rightHanded: true, depth: 9) with { Width = Mm(320) };

        Assert.True(JointFit.GoesTogether(foot, wider, EndPlacement.EdgesTogether));
    }

    [Fact]
    public void A_different_number_of_mortises_never_closes()
    {
        var (foot, _) = Pair([45, 130, 252]);

        Assert.False(JointFit.GoesTogether(foot, End([45, 252], atHead: false, rightHanded: true, depth: 9), EndPlacement.EdgesTogether));
        Assert.Null(JointFit.Mismatch(foot, End([45, 252], atHead: false, rightHanded: true, depth: 9), EndPlacement.EdgesTogether));
    }

    [Theory]
    [InlineData(0, "A")]
    [InlineData(25, "Z")]
    [InlineData(26, "AA")]
    [InlineData(51, "AZ")]
    [InlineData(52, "BA")]
    [InlineData(701, "ZZ")]
    [InlineData(702, "AAA")]
    public void Pair_letters_run_like_the_columns_of_a_table(int index, string letters) => Assert.Equal(letters, PairLetters.Of(index));

    private static (PieceEnd Foot, PieceEnd Head) Pair(decimal[] offsets) =>
        (End(offsets, atHead: true, rightHanded: true, depth: 9), End(offsets, atHead: false, rightHanded: true, depth: 9));

    private static PieceEnd End(decimal[] offsets, bool atHead, bool rightHanded, decimal depth) => new(
        Mm(300), Mm(18), atHead, rightHanded,
        [.. offsets.Select((offset, i) => new EndMortise(Mm(offset), Mm(depth), Mm(6), Mm(i == 0 ? 22 : 24), Mm(22)))]);

    private static Model.Collections.ValueList<EndMortise> Tight(decimal[] offsets) =>
        [.. offsets.Select(offset => new EndMortise(Mm(offset), Mm(9), Mm(6), Mm(22), Mm(22)))];

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}
