using CsCheck;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Engine.Verifying;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>
/// Random jobs, every option of which is taken by chance: each plan is proven by the verifier, and every joint held to the rules of
/// the trade in the form in which a maker would check them, with a rule from the joint to the nearest thing in the way.
/// </summary>
public class RandomJobTests
{
    private const int Jobs = 250;

    [Fact]
    public void Every_plan_of_a_random_job_keeps_every_rule_or_says_why_there_is_none()
    {
        var (planned, spliced) = (0, 0);
        Gen.Select(RandomJobs.Any, Gen.Int[0, 1000]).Sample(
            (job, seed) =>
            {
                var layout = LayoutStage.Lay(job);
                if (!layout.Succeeded)
                    return;
                var outcome = CuttingStage.Plan(job, layout.Value, solver: new OneByOneSolver(seed));
                if (!outcome.Succeeded)
                {
                    Assert.All(outcome.Problems, p => Assert.True(p.Path.Length > 0 && p.Message.Length > 0 && p.Accepted.Length > 0, p.ToString()));
                    return;
                }

                Interlocked.Increment(ref planned);
                Interlocked.Add(ref spliced, outcome.Value.Splices.Count);
                var broken = PlanVerifier.Verify(job, layout.Value, outcome.Value);
                Assert.True(broken.Count == 0, string.Join("\n", broken));
                foreach (var splice in outcome.Value.Splices)
                    JointKeepsRules(job, layout.Value.Parts.Single(p => p.Id == splice.Part), splice, outcome.Value);
                WrongAssembly.NoneCloses(layout.Value, outcome.Value);
            },
            iter: Jobs,
            threads: 1,
            seed: "0000Casewrig");

        Assert.True(planned > Jobs / 5, $"only {planned} of {Jobs} jobs could be planned");
        Assert.True(spliced > Jobs, $"only {spliced} joints in {planned} plans");
    }

    /// <summary>Rules of trade.md part C (common practice, no source), measured from the joint outwards.</summary>
    private static void JointKeepsRules(Job job, Part part, Splice splice, CutPlan plan)
    {
        var rules = job.Shop.Splicing;
        var at = splice.Position;
        var place = $"{splice.Id} ({splice.Method}) at {at} of {part.Length}";
        Assert.All(Neighbours(plan, part, at), stretch => Assert.True(
            stretch >= rules.ShortestPiece && stretch * rules.ShortestShare >= part.Length, $"{place}: a stub of {stretch}"));
        if (splice.Method == SpliceMethod.CoveredButt)
            return;

        // Half a lap of 5 or a scarf of 8 thicknesses, or a tenon of 22 mm (7/8 in), and 5 mm beyond.
        var inside = splice.Method switch
        {
            SpliceMethod.HalfLap => part.Thickness * 5 / 2,
            SpliceMethod.Scarf => part.Thickness * 4,
            SpliceMethod.LooseTenons or SpliceMethod.TenonsAndConnectors => rules.TenonEmbedment,
            _ => Length.Zero,
        };
        foreach (var work in part.Machining)
        {
            var (distance, least) = work switch
            {
                Dado dado => (Gap(at, dado.X, dado.X + dado.Width), Length.Max(rules.ClearOfDado, inside + Mm(5))),
                PinRow row => (Enumerable.Range(0, row.Count).Min(i => (at - row.FirstX - (row.Pitch * i)).Abs()), Length.Max(rules.ClearOfPinHole, inside)),
                HardwareZone zone => (Gap(at, zone.FromX, zone.ToX), Length.Max(rules.ClearOfHardware, inside)),
                Notch notch => (Gap(at, notch.X, notch.X + notch.LengthX), Length.Max(rules.ClearOfDado, inside)),
                CutOut cutOut => (Gap(at, cutOut.X, cutOut.X + cutOut.LengthX), Length.Max(rules.ClearOfDado, inside)),
                _ => (part.Length, Length.Zero),
            };
            Assert.True(distance >= least, $"{place}: {distance} from {work}, {least} is the least");
        }

        if (part.Role is PartRole.Side or PartRole.Partition)
            NotInMiddleThird(part, part.Role == PartRole.Partition ? job.Runs[0].Joinery.DadoDepth : Length.Zero, at, place);
    }

    /// <summary>
    /// Between the dados below and above (or the ends of the part, as far as they are not sunk into bottom and top) the joint keeps to
    /// the lower or the upper third.
    /// </summary>
    private static void NotInMiddleThird(Part part, Length sunk, Length at, string place)
    {
        var dados = part.Machining.OfType<Dado>().ToArray();
        var low = dados.Where(d => d.X + d.Width <= at).Select(d => d.X + d.Width).Append(sunk).Max();
        var high = dados.Where(d => d.X >= at).Select(d => d.X).Append(part.Length - sunk).Min();
        var slack = Length.FromNanometres(2);
        Assert.True((at - low) * 3 <= high - low + slack || (high - at) * 3 <= high - low + slack, $"{place}: in the middle third of {low} to {high}");
    }

    private static IEnumerable<Length> Neighbours(CutPlan plan, Part part, Length at) =>
        plan.Pieces.Where(p => p.Part == part.Id && (p.To == at || p.From == at)).Select(p => p.To - p.From);

    private static Length Gap(Length at, Length from, Length to) => at < from ? from - at : at > to ? at - to : -Mm(1);

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}
