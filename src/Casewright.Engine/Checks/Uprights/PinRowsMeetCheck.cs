using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Uprights;

/// <summary>Pin holes bored from both faces of a partition do not meet, and none goes through.</summary>
public sealed class PinRowsMeetCheck : Check
{
    /// <summary>Least wood between holes that face each other: 2 mm (common practice, no source).</summary>
    internal static readonly Length WoodBetween = Length.FromMillimetres(2);

    /// <summary>Least wood behind a hole: 5 mm (common practice, no source).</summary>
    internal static readonly Length WoodBehind = Length.FromMillimetres(5);

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "pin-holes-meet",
        "Wood left behind pin holes, and between holes bored from both faces of a partition.",
        "t − l ≥ 5 mm; where centres are nearer than a diameter, t − l − l′ ≥ 2 mm",
        "Common practice",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var part in context.PartsWith(PartRole.Side, PartRole.Partition))
        {
            var rows = part.Machining.OfType<PinRow>().ToList();
            if (rows.Count > 0)
                yield return One(context, part, rows);
        }
    }

    private static bool Meet(PinRow a, PinRow b)
    {
        if (a.Face == b.Face || (a.Y - b.Y).Abs() >= Length.Max(a.Diameter, b.Diameter))
            return false;
        var near = Length.Max(a.Diameter, b.Diameter);
        for (var i = 0; i < a.Count; i++)
        {
            for (var j = 0; j < b.Count; j++)
            {
                if ((a.FirstX + (a.Pitch * i) - b.FirstX - (b.Pitch * j)).Abs() < near)
                    return true;
            }
        }

        return false;
    }

    private Finding One(CheckContext context, Part part, List<PinRow> rows)
    {
        var say = context.Say;
        var behind = part.Thickness - rows.Max(r => r.Depth);
        if (behind < WoodBehind)
            return Report(context, Severity.Stop, part.Id, $"Only {say.Size(behind)} of {part.Name} is left behind its pin holes.", new((double)behind.Millimetres, 5, "mm", []), $"Bore at most {say.AtMost((part.Thickness - WoodBehind).Metres)} deep.");
        foreach (var a in rows)
        {
            foreach (var b in rows.Where(b => Meet(a, b)))
            {
                var between = part.Thickness - a.Depth - b.Depth;
                if (between < WoodBetween)
                    return Report(context, Severity.Stop, part.Id, $"Pin holes on both faces of {part.Name} meet: {say.Size(between)} is left between them.", new((double)between.Millimetres, 2, "mm", []), $"Bore at most {say.AtMost(((part.Thickness - WoodBetween) / 2).Metres)} deep, or stagger the rows by half a pitch.");
            }
        }

        return Rule(context, Severity.Pass, part.Id, $"Pin holes of {part.Name} leave wood behind and between them.");
    }
}
