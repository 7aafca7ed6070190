using Casewright.Engine.Layout;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using CsCheck;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Laws that hold for every run: plain geometry, checked over random designs.</summary>
public sealed class GeometryLawTests
{
    [Fact]
    public void CasesAndEndsAddUpExactlyToTheRun() => RandomRuns.Jobs.Sample(job =>
    {
        var laid = Laid.Of(job);
        var run = job.Runs[0];
        var x = run.Offset + Taken(job, run.Left);
        foreach (var column in laid.Casework.Cases.Where(c => c.Tier == 0))
        {
            Assert.Equal(x, column.X);
            x += column.Width;
        }

        Assert.Equal(run.Offset + run.Width!.Value, x + Taken(job, run.Right));

        // Tiers add up too, from the floor or the base to the top.
        foreach (var column in laid.Casework.Cases.GroupBy(c => c.Column))
        {
            var top = column.Aggregate(run.Base.Kind == BaseKind.Plinth ? run.Base.Height : Length.Zero, (y, c) =>
            {
                Assert.Equal(y, c.Y);
                return y + c.Height;
            });
            Assert.Equal(run.Head.Height!.Value, top);
        }
    });

    [Fact]
    public void PartsMeetOnlyWhereAJointSaysSo() => RandomRuns.Jobs.Sample(
        job => Assert.Empty(Clashes(Laid.Of(job).Casework.Parts, job.Runs[0].Joinery.RoundingStep)), iter: 200);

    [Fact]
    public void AShiftedPartIsCaught()
    {
        // A shelf 30 too high leaves its dados; a back 5 too low leaves its grooves.
        var run = Plain(UnitSystem.Millimetres, Mm(900), Mm(2000), Mm(300)) with { Back = new() { Kind = BackKind.Captured, Material = "back", Inset = Mm(15) } };
        var parts = Laid.Of(UnitSystem.Millimetres, run).Casework.Parts;

        Assert.Empty(Clashes(parts, run.Joinery.RoundingStep));
        Assert.Contains("C1-L and C1-F1", Clashes(parts.Select(p => p.Id == "C1-F1" ? Raised(p, Mm(30)) : p), run.Joinery.RoundingStep));
        Assert.Contains("C1-B and C1-K", Clashes(parts.Select(p => p.Id == "C1-K" ? Raised(p, Mm(-5)) : p), run.Joinery.RoundingStep));
    }

    private static Part Raised(Part part, Length by) =>
        part with { Place = part.Place with { Origin = part.Place.Origin with { Y = part.Place.Origin.Y + by } } };

    /// <summary>Parts whose boxes reach into each other beyond what their machining takes out.</summary>
    private static List<string> Clashes(IEnumerable<Part> laid, Length step)
    {
        var parts = laid.Select(p => (Part: p, Box: RoomBox.Of(p), Removed: RoomBox.Removed(p).ToArray())).ToArray();
        var clashes = new List<string>();
        for (var i = 0; i < parts.Length; i++)
        {
            for (var j = i + 1; j < parts.Length; j++)
            {
                if (!parts[i].Box.Meets(parts[j].Box, step) || MeetOnSite(parts[i].Part, parts[j].Part))
                    continue;
                var common = parts[i].Box.Common(parts[j].Box);
                if (!parts[i].Removed.Concat(parts[j].Removed).Any(r => r.Contains(common, step)))
                    clashes.Add($"{parts[i].Part.Id} and {parts[j].Part.Id}");
            }
        }

        return clashes;
    }

    [Fact]
    public void EveryPartLiesWithinItsRun() => RandomRuns.Jobs.Sample(job =>
    {
        var run = job.Runs[0];
        var step = run.Joinery.RoundingStep;
        foreach (var part in Laid.Of(job).Casework.Parts)
        {
            // Parts fitted on site carry stock beyond the run: scribe stock 10, waste of a crown 50 and the crown itself.
            var beyond = part.FitOnSite is null ? Length.Zero : Mm(80);
            var head = part.Role == PartRole.Crown ? Mm(60) : Length.Zero;

            // An overlaid front of 18 stands on buffers of 2 (in inches 1/16).
            var front = part.Role is PartRole.Door or PartRole.DrawerFront ? Mm(20) : part.Role is PartRole.DrawerSide or PartRole.DrawerEnd ? Mm(2) : Length.Zero;
            var envelope = new RoomBox(
                new(run.Offset - beyond, -beyond, -beyond),
                new(run.Offset + run.Width!.Value + beyond, run.Head.Height!.Value + head, run.Depth + beyond + front));
            Assert.True(envelope.Contains(RoomBox.Of(part), step), $"{part.Id} {RoomBox.Of(part)} outside {envelope}");
        }
    });

    [Fact]
    public void MachiningLiesWithinItsPart() => RandomRuns.Jobs.Sample(job =>
    {
        foreach (var part in Laid.Of(job).Casework.Parts)
        {
            var box = RoomBox.Of(part);
            Assert.All(RoomBox.Removed(part), removed => Assert.True(box.Contains(removed, Length.Zero), $"{part.Id}: {removed} outside {box}"));
            foreach (var row in part.Machining.OfType<PinRow>())
            {
                Assert.True(row.FirstX > Length.Zero && row.LastX < part.Length && row.Y > Length.Zero && row.Y < part.Width, $"{part.Id}: {row}");
                Assert.True(row.Depth < part.Thickness);
            }

            foreach (var bore in part.Machining.OfType<Bore>())
            {
                var r = bore.Diameter / 2;
                Assert.True(bore.X > r && bore.Y > r && bore.X < part.Length - r && bore.Y < part.Width - r && bore.Depth <= part.Thickness, $"{part.Id}: {bore}");
            }

            foreach (var zone in part.Machining.OfType<HardwareZone>())
                Assert.True(zone.FromX >= Length.Zero && zone.FromX < zone.ToX && zone.ToX <= part.Length, $"{part.Id}: {zone}");
        }
    });

    [Fact]
    public void DadosLieWhereTheirPanelsAre() => RandomRuns.Jobs.Sample(job =>
    {
        var laid = Laid.Of(job);
        foreach (var part in laid.Casework.Parts)
        {
            foreach (var dado in part.Machining.OfType<Dado>())
            {
                var panel = RoomBox.Of(laid[dado.For]);
                var housed = RoomBox.Removed(part with { Machining = [dado] }).Single();
                Assert.True(housed.Meets(panel, job.Runs[0].Joinery.DadoDepth / 2), $"{part.Id} has a dado for {dado.For} where that is not");
            }
        }
    });

    [Fact]
    public void LooseShelvesLieOnPins() => RandomRuns.Jobs.Sample(job =>
    {
        var laid = Laid.Of(job);
        var radius = job.Runs[0].Joinery.PinDiameter / 2;
        foreach (var shelf in laid.Casework.Parts.Where(p => p.Role == PartRole.AdjustableShelf))
        {
            var box = RoomBox.Of(shelf);
            var pin = box.Low.Y - radius;
            var uprights = laid.Casework.Parts.Where(p => p.Case == shelf.Case && p.Role is PartRole.Side or PartRole.Partition)
                .Select(p => (Part: p, Box: RoomBox.Of(p)))
                .ToArray();
            var left = uprights.Where(u => u.Box.High.X <= box.Low.X).MaxBy(u => u.Box.High.X).Part;
            var right = uprights.Where(u => u.Box.Low.X >= box.High.X).MinBy(u => u.Box.Low.X).Part;
            Assert.Equal(2, HolesAt(left, pin, facesRight: true));
            Assert.Equal(2, HolesAt(right, pin, facesRight: false));
        }
    });

    [Fact]
    public void EveryDerivationComputesToItsValue() => RandomRuns.Jobs.Sample(job =>
    {
        var step = job.Runs[0].Joinery.RoundingStep;
        foreach (var part in Laid.Of(job).Casework.Parts)
        {
            Assert.Equal(["length", "width", "thickness"], part.Derivations.Take(3).Select(d => d.Dimension));
            Assert.Equal([part.Length, part.Width, part.Thickness], part.Derivations.Take(3).Select(d => d.Result));
            Assert.True(part.Length > Length.Zero && part.Width > Length.Zero && part.Thickness > Length.Zero, part.Id);
            foreach (var derivation in part.Derivations)
            {
                var computed = FormulaReader.Compute(derivation);
                Assert.True(Math.Abs(computed - derivation.Exact.Nanometres) < 1, $"{part.Id} {derivation.Dimension}: {derivation.Formula} is {computed}, not {derivation.Exact.Nanometres} nm");
                Assert.True((derivation.Result - derivation.Exact).Abs() < step);
            }
        }
    }, iter: 200);

    [Fact]
    public void UnitsOfTheJobChangeNoSize() => RandomRuns.MetricJobs.Sample(job =>
    {
        var metric = Laid.Of(job).Casework.Parts;
        var inches = Laid.Of(job with { Units = UnitSystem.Inches }).Casework.Parts;

        // Rung spacing (600 mm or 24 in), the crown's waste (50 mm or 2 in) and drawer slides (by 50 mm or 2 in) are round figures of the unit system.
        Assert.Equal(Sizes(metric), Sizes(inches));
    });

    [Fact]
    public void TheSameJobGivesTheSameParts() => RandomRuns.Jobs.Sample(job =>
        Assert.Equal(Laid.Of(job).Casework, Laid.Of(job with { }).Casework), iter: 50);

    [Fact]
    public void IdsAreUnique() => RandomRuns.Jobs.Sample(job =>
    {
        var ids = LayoutStage.Lay(Job(job.Units, job.Runs[0], job.Runs[0] with { Id = "b", Offset = Mm(20_000) })).Value!.Parts.Select(p => p.Id).ToArray();
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
    });

    [Fact]
    public void AThousandBaysAddUp()
    {
        // 1 000 bays in 59 m with a panel of 18 mm: (59 000 − 2 000 · 18)/1 000 = 23 clear, cases 59 wide; the last ends at 59 m.
        var run = Plain(UnitSystem.Millimetres, Mm(59_000), Mm(2000), Mm(300)) with { Division = new() { Bays = 1000 } };
        var cases = Laid.Of(UnitSystem.Millimetres, run).Casework.Cases;

        Assert.Equal(1000, cases.Count);
        Assert.All(cases, c => Assert.Equal((Mm(59), Mm(23)), (c.Width, c.ClearBay)));
        Assert.Equal(Mm(59_000), cases[^1].X + cases[^1].Width);
        Assert.Equal("C1000", cases[^1].Id);
    }

    private static Length Taken(Job job, RunEnd end) => end.Filler + (end.Panel is { } panel ? job.Stock.Material(panel).Thickness : Length.Zero);

    private static IEnumerable<(string, Length, Length, Length, Placement)> Sizes(IEnumerable<Part> parts) => parts
        .Where(p => p.Role is not (PartRole.BaseRung or PartRole.Crown or PartRole.BaseMould or PartRole.DrawerSide or PartRole.DrawerEnd or PartRole.DrawerBottom))
        .Select(p => (p.Id, p.Length, p.Width, p.Thickness, p.Place));

    /// <summary>Mitres of a crown, joints of its lengths and a stile that is trimmed flush meet by their waste.</summary>
    private static bool MeetOnSite(Part a, Part b) =>
        (a.FitOnSite is not null || b.FitOnSite is not null) && (IsMoulding(a) || IsMoulding(b));

    private static bool IsMoulding(Part part) => part.Role is PartRole.Crown or PartRole.BaseMould;

    private static int HolesAt(Part upright, Length height, bool facesRight)
    {
        var face = upright.Role == PartRole.Partition && facesRight ? Face.Opposite : Face.Reference;
        var x = height - upright.Place.Origin.Y;
        return upright.Machining.OfType<PinRow>().Count(r => r.Face == face && x >= r.FirstX && x <= r.LastX && (x - r.FirstX) % r.Pitch == Length.Zero);
    }
}
