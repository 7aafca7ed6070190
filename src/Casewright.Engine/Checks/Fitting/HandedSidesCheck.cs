using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Left and right sides that must not be made alike.</summary>
public sealed class HandedSidesCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "handed-sides",
        "Whether the two sides of each case are told apart as left and right where their work is not the same both ways up.",
        "",
        "Geometry",
        Standing.Arithmetic);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var side in context.PartsWith(PartRole.Side).Where(p => p.Machining.Count > 0))
        {
            yield return side.Hand == Hand.None && !SameTurnedOver(side)
                ? Rule(context, Severity.Stop, side.Id, $"{side.Name} has work that is not the same turned end for end, and is marked neither left nor right.", "Mark it left or right; draw both, never \"mirror\" in words.")
                : Rule(context, Severity.Pass, side.Id, $"{side.Name} cannot be taken for the other hand.");
        }
    }

    /// <summary>Whether a side turned end for end, face kept, has the same work: only then do left and right come out alike.</summary>
    private static bool SameTurnedOver(Part side)
    {
        var turned = side.Machining.Select(m => Turn(side, m)).ToHashSet();
        return turned.SetEquals(side.Machining.Select(Bare));
    }

    // End for end with the face kept turns front to rear too.
    private static Machining Turn(Part side, Machining machining) => Bare(machining) switch
    {
        Dado d => d with { X = side.Length - d.X - d.Width, FromY = side.Width - d.ToY, ToY = side.Width - d.FromY },
        Groove g => g with { Y = side.Width - g.Y - g.Width, FromX = side.Length - g.ToX, ToX = side.Length - g.FromX },
        Rabbet r => r with { Edge = Opposite(r.Edge) },
        PinRow p => p with { Y = side.Width - p.Y, FirstX = side.Length - p.LastX },
        Notch n => n with { X = side.Length - n.X - n.LengthX, Y = side.Width - n.Y - n.LengthY },
        HardwareZone z => z with { FromX = side.Length - z.ToX, ToX = side.Length - z.FromX },
        CutOut c => c with { X = side.Length - c.X - c.LengthX, Y = side.Width - c.Y - c.LengthY },
        Bore b => b with { X = side.Length - b.X, Y = side.Width - b.Y },
        Bevel b => b with { Edge = Opposite(b.Edge) },
        Clip c => c with { End = Opposite(c.End), Edge = Opposite(c.Edge) },
        var other => other,
    };

    private static Machining Bare(Machining machining) => machining with { For = "" };

    private static PartEdge Opposite(PartEdge edge) => edge switch
    {
        PartEdge.Reference => PartEdge.Opposite,
        PartEdge.Opposite => PartEdge.Reference,
        PartEdge.Start => PartEdge.End,
        _ => PartEdge.Start,
    };
}
