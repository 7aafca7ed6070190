using System.Globalization;
using Casewright.Engine.Layout;
using Casewright.Engine.Verifying.Rules;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using CsCheck;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Laws that hold of every run under every slope: plain geometry, over random designs and slopes of either hand.</summary>
public sealed class SlopeLawTests
{
    [Fact]
    public void EveryRunUnderASlopeFitsOrSaysWhyNot()
    {
        var laid = 0;
        Jobs.Sample(
            job =>
            {
                var outcome = LayoutStage.Lay(job);
                if (outcome.Succeeded)
                {
                    Interlocked.Increment(ref laid);
                    CheckParts(job, outcome.Value);
                }
                else
                {
                    Assert.All(outcome.Problems, problem => Assert.All([problem.Path, problem.Message, problem.Found, problem.Accepted], Assert.NotEmpty));
                }
            },
            iter: 300);

        // The rest ask for shelves or fronts that the slope leaves no room for, and are told so.
        Assert.True(laid >= 60, $"Only {laid} of 300 could be laid out.");
    }

    [Fact]
    public void AMirroredRoomGivesTheSameSizesInTheOtherHand() => Jobs.Sample(
        job =>
        {
            var (right, left) = (LayoutStage.Lay(Alone(job)), LayoutStage.Lay(Turned(Alone(job))));
            Assert.Equal(right.Succeeded, left.Succeeded);
            if (!right.Succeeded)
                return;
            var turned = left.Value!.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
            Assert.Equal(right.Value!.Parts.Count, turned.Count);
            var step = job.Runs[0].Joinery.RoundingStep;
            foreach (var part in right.Value.Parts)
            {
                var other = turned[OtherHand(part.Id, right.Value)];
                Assert.True((part.Length - other.Length).Abs() <= step && (part.Width - other.Width).Abs() <= step, $"{part.Id} {part.Length} × {part.Width}, {other.Id} {other.Length} × {other.Width}");
                Assert.Equal(part.Place.Tilt is null, other.Place.Tilt is null);
                if (part.Hand != Hand.None)
                    Assert.NotEqual(part.Hand, other.Hand);
            }
        },
        iter: 100);

    private static void CheckParts(Job job, Casework casework)
    {
        Assert.Empty(new RakedPartsFit().Check(new(job, casework, SlopedCeilingTests.NoPlan)));
        var step = job.Runs[0].Joinery.RoundingStep;
        foreach (var part in casework.Parts)
        {
            Assert.True(part.Length > Length.Zero && part.Width > Length.Zero, part.Id);
            Assert.Equal(part.Length, part.Derivations[0].Result);
            foreach (var derivation in part.Derivations)
                Assert.True(Math.Abs(FormulaReader.Compute(derivation) - derivation.Exact.Nanometres) < 1, $"{part.Id} {derivation.Dimension}: {derivation.Formula}");
            Assert.All(part.Machining.OfType<Bevel>(), bevel => Assert.True(bevel.Setback > Length.Zero && bevel.Setback < part.Length, part.Id));
            Assert.All(part.Machining.OfType<Clip>(), clip => Assert.True(clip.AlongX > Length.Zero && clip.AlongX < part.Length, part.Id));
            if (casework.Cases.FirstOrDefault(c => c.Id == part.Case) is { } box)
                Assert.True(part.HighCorner.Y <= box.Y + box.Height + step && part.LowCorner.X >= box.X - Mm(20) && part.HighCorner.X <= box.X + box.Width + Mm(20), part.Id);
        }
    }

    /// <summary>
    /// A random run under a slope that falls over its whole width, from the height that it asks for at one end to at least 40 % of that at the
    /// other. What is not laid out under a slope (face frames, crowns, several tiers) is left off.
    /// </summary>
    private static Gen<Job> Jobs { get; } =
        from job in RandomRuns.Jobs
        from share in Gen.Int[5, 60]
        from falls in Gen.Bool
        select UnderSlope(job, share, falls);

    private static Job UnderSlope(Job job, int share, bool fallsRight)
    {
        var run = job.Runs[0];
        var height = run.Head.Height!.Value;
        var (near, far) = (run.Offset, run.Offset + run.Width!.Value);
        var drop = Length.Max(Length.Min(height * share / 100, run.Width.Value * 9 / 10), run.Width.Value / 40);
        var (left, right) = fallsRight ? (height + Mm(30), height + Mm(30) - drop) : (height + Mm(30) - drop, height + Mm(30));
        return job with
        {
            Walls = [job.Walls[0] with { CeilingSlopes = [new() { FromX = near, FromHeight = left, ToX = far, ToHeight = right }] }],
            Runs =
            [
                run with
                {
                    Construction = Construction.Frameless,
                    FaceFrame = null,
                    Head = new() { Height = height, SlopeGap = Mm(30), SlopeFiller = share % 2 == 0 ? "panel" : null },
                    Tiers = [run.Tiers[^1] with { Height = null, Interior = run.Tiers[^1].Interior with { Fronts = [], Loose = 0 } }],
                },
            ],
        };
    }

    /// <summary>The run between neighbours, so that nothing but the slope has a hand.</summary>
    private static Job Alone(Job job)
    {
        var neighbour = new RunEnd { Kind = EndKind.Neighbour };
        return job with { Runs = [job.Runs[0] with { Left = neighbour, Right = neighbour, Division = new() { Bays = job.Runs[0].Division!.Bays, BaysPerCase = 1 }, Base = new() { Kind = BaseKind.None } }] };
    }

    private static Job Turned(Job job)
    {
        var (slope, run) = (job.Walls[0].CeilingSlopes[0], job.Runs[0]);
        var far = run.Offset + run.Width!.Value;
        return job with { Walls = [job.Walls[0] with { CeilingSlopes = [new CeilingSlope { FromX = run.Offset, FromHeight = slope.At(far), ToX = far, ToHeight = slope.At(run.Offset) }] }] };
    }

    /// <summary>The id that a part has in the turned run: the first case is then the last, its left side the right one.</summary>
    private static string OtherHand(string id, Casework casework)
    {
        if (id.StartsWith("A-XS", StringComparison.Ordinal))
            return string.Create(CultureInfo.InvariantCulture, $"A-XS{casework.Cases.Count(c => c.Rake is not null) + 1 - int.Parse(id.AsSpan(4), CultureInfo.InvariantCulture)}");
        var dash = id.IndexOf('-', StringComparison.Ordinal);
        var rest = id[dash..] switch { "-L" => "-R", "-R" => "-L", "-Ln" => "-Rn", "-Rn" => "-Ln", var same => same };
        return string.Create(CultureInfo.InvariantCulture, $"C{casework.Cases.Count + 1 - int.Parse(id.AsSpan(1, dash - 1), CultureInfo.InvariantCulture)}{rest}");
    }
}
