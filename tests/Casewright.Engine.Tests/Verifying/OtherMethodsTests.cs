using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Verifying;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;
using CsCheck;

namespace Casewright.Engine.Tests.Verifying;

/// <summary>
/// The hall case again, planned by the program with joints of every other kind, with two joints in a part, and with parts glued up of
/// strips: each plan is proven, and a falsified field of it is caught where the same field of the plan by hand is.
/// </summary>
public sealed class OtherMethodsTests
{
    private static readonly Dictionary<string, Job> s_jobs = new(StringComparer.Ordinal)
    {
        ["half-laps"] = With(SpliceMethod.HalfLap),
        ["scarfs"] = With(SpliceMethod.Scarf),
        ["splines"] = With(SpliceMethod.Spline),
        // The partition shows both faces, so that it can have no plate.
        ["backed butts"] = With(SpliceMethod.BackedButt, SpliceMethod.LooseTenons),
        ["two joints"] = Short(1250, 1220),
    };

    /// <summary>The case without pin holes, which leave too little room for long overlaps and for two joints.</summary>
    private static readonly Casework s_case = GoodPlan.GoodCasework with
    {
        Parts = [.. GoodPlan.GoodCasework.Parts.Select(part => part with { Machining = [.. part.Machining.Where(work => work is not PinRow)] })],
    };

    public static TheoryData<string> Names => new(s_jobs.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_falsified_field_is_caught(string name)
    {
        var job = s_jobs[name];
        var outcome = CuttingStage.Plan(job, s_case, effort: PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Problems));
        var plan = outcome.Value;
        Assert.Contains(plan.Splices, splice => splice.Method == (job.Shop.Splicing.Methods[0].Method));
        if (name == "two joints")
            Assert.Contains(plan.Splices.GroupBy(splice => splice.Part), part => part.Count(splice => splice.Method != SpliceMethod.CoveredButt) == 2);
        Assert.Empty(PlanVerifier.Verify(job, s_case, plan));

        var spots = Spot.Of(plan).Where(spot => !RandomCorruptionTests.MayBeFree(spot.Field)).ToList();
        Gen.Select(Gen.Int[0, spots.Count - 1], Gen.Int[0, 1000]).Sample(
            (at, way) => PlanVerifier.Verify(job, s_case, spots[at].Plans[way % spots[at].Plans.Count]()).Count > 0,
            print: pick => $"{spots[pick.Item1].Path}, way {pick.Item2 % spots[pick.Item1].Plans.Count}",
            iter: 600,
            threads: 1);
    }

    private static Job With(params SpliceMethod[] methods)
    {
        var job = GoodPlan.GoodJob;
        return job with { Shop = job.Shop with { Splicing = job.Shop.Splicing with { Methods = [.. methods.Select(method => new ShopMethod { Method = method, Minutes = 30 })] } } };
    }

    private static Job Short(decimal length, decimal width)
    {
        var job = GoodPlan.GoodJob;
        return job with
        {
            Stock = job.Stock with
            {
                Sheets = [.. job.Stock.Sheets.Select(sheet => sheet.Material == "ply18" ? sheet with { Length = Length.FromMillimetres(length), Width = Length.FromMillimetres(width) } : sheet)],
            },
        };
    }
}
