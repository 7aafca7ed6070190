using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Papers.Documents;

/// <summary>What lies nearest to a joint on either side, in words.</summary>
internal static class NearTheJoint
{
    private const int MostLines = 5;

    public static IReadOnlyList<string> Lines(Part part, Splice splice, PlanIndex index)
    {
        var (towardsStart, towardsEnd) = part.Place.AlongLength switch
        {
            Axis.Up => ("below", "above"),
            Axis.Down => ("above", "below"),
            _ => ("before", "after"),
        };
        return [.. part.Machining.SelectMany(Stretches)
            .Select(stretch => Distance(stretch, splice.Position))
            .Where(near => near.Distance >= Length.Zero)
            .GroupBy(near => (near.Kind, near.After))
            .Select(group => group.MinBy(near => near.Distance)!)
            .OrderBy(near => near.Distance)
            .Take(MostLines)
            .Select(near => $"{near.Kind} {index.Figures.Main(near.Distance)} {(near.After ? towardsEnd : towardsStart)}")];
    }

    private sealed record Stretch(string Kind, Length From, Length To);

    private sealed record Near(string Kind, Length Distance, bool After);

    private static IEnumerable<Stretch> Stretches(Machining work) => work switch
    {
        Dado dado => [new($"dado edge ({dado.For})", dado.X, dado.X + dado.Width)],
        PinRow row => Enumerable.Range(0, row.Count).Select(i => new Stretch("pin hole", row.FirstX + (row.Pitch * i), row.FirstX + (row.Pitch * i))),
        HardwareZone zone => [new($"hardware ({zone.For})", zone.FromX, zone.ToX)],
        Notch notch => [new("notch", notch.X, notch.X + notch.LengthX)],
        CutOut cut => [new($"cut-out ({cut.For})", cut.X, cut.X + cut.LengthX)],
        _ => [],
    };

    private static Near Distance(Stretch stretch, Length joint) =>
        stretch.From >= joint ? new(stretch.Kind, stretch.From - joint, true)
        : stretch.To <= joint ? new(stretch.Kind, joint - stretch.To, false)
        : new(stretch.Kind, -Length.FromNanometres(1), false);
}
