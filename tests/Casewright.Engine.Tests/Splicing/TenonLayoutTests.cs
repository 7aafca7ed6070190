using Casewright.Engine.Splicing;
using Casewright.Engine.Splicing.Methods;
using Casewright.Engine.Splicing.Options;
using Casewright.Engine.Tests.Verifying;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>Tenons and connectors across single joints, against the figures of the trade (common practice, no source).</summary>
public class TenonLayoutTests
{
    /// <summary>Two tenons in 150, three in 300, four in 400.</summary>
    [Theory]
    [InlineData(150, 2)]
    [InlineData(300, 3)]
    [InlineData(400, 4)]
    [InlineData(600, 6)]
    public void The_number_of_tenons_goes_by_the_width(int width, int tenons) =>
        Assert.Equal(tenons, Only(Upright(width, 18), SpliceMethod.LooseTenons).Tenons.Count);

    /// <summary>A third of the thickness: 18 takes 6, 25 takes 8.</summary>
    [Theory]
    [InlineData(18, 6)]
    [InlineData(25, 8)]
    [InlineData(15, 5)]
    public void Tenons_are_a_third_of_the_thickness(int thickness, int tenon) =>
        Assert.All(Only(Upright(300, thickness), SpliceMethod.LooseTenons).Tenons, t => Assert.Equal(Mm(tenon), t.Thickness));

    [Fact]
    public void The_first_mortise_is_tight_and_the_others_are_wider()
    {
        var tenons = Only(Upright(400, 18), SpliceMethod.LooseTenons).Tenons;

        Assert.Equal(Length.Zero, tenons[0].Play);
        Assert.All(tenons.Skip(1), t => Assert.InRange(t.Play.Millimetres, 1, 2));
    }

    /// <summary>Connectors 60 or more from the edges, between tenons, two in 300.</summary>
    [Fact]
    public void Connectors_lie_between_tenons()
    {
        var splice = Only(Upright(300, 18), SpliceMethod.TenonsAndConnectors);

        Assert.Equal(2, splice.Connectors.Count);
        Assert.All(splice.Connectors, c => Assert.InRange(c.Offset.Millimetres, 60, 240));
        Assert.All(splice.Connectors, c => Assert.Contains(splice.Tenons, t => t.Offset < c.Offset));
        Assert.All(splice.Connectors, c => Assert.Contains(splice.Tenons, t => t.Offset > c.Offset));
        Assert.Equal(Face.Opposite, splice.AccessFace);
        Assert.Equal(HoldingMethod.DrawConnectors, splice.Holding);
    }

    [Fact]
    public void Tenons_keep_clear_of_a_groove_for_the_back()
    {
        // A groove 270 to 276 in a part 300 wide: its nearest tenon's mortise, 24 wide, ends 8 short of it.
        var part = Upright(300, 18) with { Machining = [new Groove("back", Face.Reference, Mm(240), Mm(6), Mm(6), Mm(0), Mm(2700))] };
        var tenons = Only(part, SpliceMethod.LooseTenons).Tenons;

        Assert.All(tenons, t => Assert.True(t.Offset + Mm(11) + Mm(8) <= Mm(240) || t.Offset - Mm(11) - Mm(8) >= Mm(246), $"{t.Offset}"));
    }

    [Fact]
    public void Left_and_right_get_keys_of_their_own_and_like_parts_share_one()
    {
        var left = Upright(300, 18);
        var right = left with { Id = "R", Hand = Hand.Right, Place = left.Place with { IntoThickness = Axis.Right } };
        var layout = Lay([left, right, left with { Id = "L2" }], SpliceMethod.LooseTenons);

        Assert.NotEqual(layout.Splices[0].KeyClass, layout.Splices[1].KeyClass);
        Assert.Equal(layout.Splices[0].KeyClass, layout.Splices[2].KeyClass);
        Assert.Equal(layout.Splices[0].Tenons, layout.Splices[2].Tenons);
        Assert.Equal(["A", "B", "C"], layout.Splices.Select(s => s.PairLetter));
        Assert.All(layout.Splices, s => Assert.True(s.KeyMismatch >= Mm(6), $"{s.KeyMismatch}"));
        Assert.Empty(layout.Findings);
    }

    [Fact]
    public void Joints_too_narrow_for_keys_of_their_own_are_reported()
    {
        // 112 wide leaves the tenon centres 40 to 72: one place each 32 apart at most, so no two kinds can differ by 6.
        var parts = Enumerable.Range(0, 4).Select(i => Upright(112, 18) with { Id = $"P{i}", Length = Mm(2700 + i) }).ToArray();
        var layout = Lay(parts, SpliceMethod.LooseTenons);

        Assert.NotEmpty(layout.Findings);
        Assert.All(layout.Findings, f => Assert.Equal((Severity.Caution, "splice-key"), (f.Severity, f.Check)));
        Assert.All(layout.Splices.Where(s => s.KeyMismatch < Mm(6)), s => Assert.Contains(layout.Findings, f => f.Subject == s.Id));
    }

    [Fact]
    public void Sixty_kinds_of_joint_in_one_width_all_differ()
    {
        var parts = Enumerable.Range(0, 60).Select(i => Upright(320, 18) with { Id = $"P{i}", Length = Mm(2700 + i) }).ToArray();
        var layout = Lay(parts, SpliceMethod.LooseTenons);

        Assert.Equal(60, layout.Splices.Select(s => s.KeyClass).Distinct(StringComparer.Ordinal).Count());
        Assert.All(layout.Splices.Where(s => s.KeyMismatch < Mm(6)), s => Assert.Contains(layout.Findings, f => f.Subject == s.Id));
    }

    [Theory]
    [InlineData(300, 2700, false, HoldingMethod.SpreaderAgainstStop)]
    [InlineData(300, 2300, false, HoldingMethod.EndClamps)]
    [InlineData(150, 2700, true, HoldingMethod.PinchDogs)]
    public void Without_a_hidden_face_the_holding_goes_by_width_and_length(int width, int length, bool nosed, HoldingMethod holding)
    {
        var part = Upright(width, 18) with { Length = Mm(length), OppositeFace = Exposure.Shows, Nosing = nosed ? "N" : null };

        Assert.Equal(holding, Only(part, SpliceMethod.LooseTenons).Holding);
    }

    /// <summary>Bevel of an 18 mm panel at 1:8: 144 mm (geometry; figure J-SCARF-LEN of the check values).</summary>
    [Fact]
    public void A_scarf_is_eight_thicknesses_long() => Assert.Equal(Mm(144), SpliceTechniques.Of(SpliceMethod.Scarf).Overlap(Mm(18)));

    /// <summary>A half-lap is four to six thicknesses.</summary>
    [Fact]
    public void A_half_lap_is_four_to_six_thicknesses_long() =>
        Assert.InRange(SpliceTechniques.Of(SpliceMethod.HalfLap).Overlap(Mm(18)).Millimetres, 72, 108);

    [Fact]
    public void Minutes_are_in_proportion_to_the_width() =>
        Assert.Equal(42m, SpliceTechniques.Of(SpliceMethod.TenonsAndConnectors).Minutes(GoodPlan.GoodJob.Shop.Splicing, Mm(450)));

    private static Splice Only(Part part, SpliceMethod method) => Assert.Single(Lay([part], method).Splices);

    private static SpliceLayout Lay(Part[] parts, SpliceMethod method) =>
        SpliceLayout.Of(GoodPlan.GoodJob, GoodPlan.GoodCasework with { Parts = parts.ToValueList() }, parts.Select(p => new JointedPart(p, Option(p, method), true)));

    private static PartOption Option(Part part, SpliceMethod method) => new(
        "option", method, [Mm(1945)],
        [
            new(Length.Zero, Mm(1945), Length.Zero, Mm(3), part.Width),
            new(Mm(1945), part.Length, Mm(3), Mm(10), part.Width),
        ],
        0);

    private static Part Upright(int width, int thickness)
    {
        var side = GoodPlan.GoodCasework.Parts.Single(p => p.Id == "C1-L");
        return side with { Id = "L", Width = Mm(width), Thickness = Mm(thickness), Machining = [] };
    }

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}
