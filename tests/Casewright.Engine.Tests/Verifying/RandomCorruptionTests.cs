using Casewright.Engine.Verifying;
using Casewright.Model.Cutting;
using CsCheck;

namespace Casewright.Engine.Tests.Verifying;

/// <summary>
/// Whatever single field of a good plan is falsified, the verifier says so; except in the fields below, where another value may be
/// as good as the one it replaces.
/// </summary>
public sealed class RandomCorruptionTests
{
    /// <summary>Fields in which a change can be harmless, and why.</summary>
    private static readonly Dictionary<string, string> s_free = new(StringComparer.Ordinal)
    {
        ["Piece.Id"] = "a name that nothing else refers to",
        ["Splice.Id"] = "a name that nothing else refers to",
        ["Splice.PairLetter"] = "any letter not taken serves as well",
        ["Splice.KeyClass"] = "any name not taken serves as well",
        ["Splice.KeyMismatch"] = "a joint may claim to be less far off than it is",
        ["Splice.Holding"] = "clamps, spreader and dogs hold the same joints",
        ["Splice.MarkOffset"] = "the mark may stand anywhere clear of holes",
        ["Splice.CoveredBy"] = "each of the parts that carry the joint may be named",
        ["Tenon.Offset"] = "tenons may stand anywhere within the rules",
        ["Tenon.Depth"] = "tenons may lie anywhere within the rules",
        ["Tenon.Thickness"] = "tenons may be of any thickness within the rules",
        ["Tenon.MortiseDepth"] = "mortises may be of any depth within the rules",
        ["Tenon.Play"] = "mortises may have any play within the rules",
        ["DrawConnector.Offset"] = "connectors may stand anywhere within the rules",
        ["Tenons[]"] = "one tenon fewer may still be enough",
        ["Connectors[]"] = "one connector fewer may still be enough",
        ["Cut.Setting"] = "either side of the cut may be measured",
        ["CutBounds.SheetsLowerBound"] = "a weaker bound of boards is still a bound, and the whole counts sheets only",
    };

    /// <summary>Whether a change in a field may be harmless.</summary>
    internal static bool MayBeFree(string field) => s_free.ContainsKey(field);

    private static readonly IReadOnlyList<Spot> s_spots = Spot.Of(GoodPlan.GoodCut);

    [Fact]
    public void A_falsified_field_is_caught_or_is_one_that_is_free() =>
        Gen.Select(Gen.Int[0, s_spots.Count - 1], Gen.Int[0, 1000]).Sample(
            (at, way) => s_free.ContainsKey(s_spots[at].Field) || IsCaught(s_spots[at].Plans[way % s_spots[at].Plans.Count]()),
            print: pick => $"{s_spots[pick.Item1].Path}, way {pick.Item2 % s_spots[pick.Item1].Plans.Count}",
            iter: 6000,
            threads: 1);

    [Fact]
    public void No_field_is_called_free_that_is_not()
    {
        foreach (var field in s_free.Keys)
        {
            var plans = s_spots.Where(spot => spot.Field == field).SelectMany(spot => spot.Plans).ToList();
            Assert.NotEmpty(plans);
            Assert.Contains(plans, plan => !IsCaught(plan()));
            if (!field.EndsWith(".Id", StringComparison.Ordinal))
                Assert.Contains(plans, plan => IsCaught(plan()));
        }
    }

    private static bool IsCaught(CutPlan plan) => PlanVerifier.Verify(GoodPlan.GoodJob, GoodPlan.GoodCasework, plan).Count > 0;
}
