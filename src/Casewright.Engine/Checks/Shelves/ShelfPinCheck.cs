using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Uprights;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Whether the pins of loose shelves crush their holes.</summary>
public sealed class ShelfPinCheck : Check
{
    /// <summary>From the upright's face to the middle of what lies on the pin, in m (judgement).</summary>
    private const double Arm = 0.004;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-pins",
        "Load on each of the four pins of a loose shelf, against crushing of the hole.",
        "γ w L/4 ≤ k_mod/γ_M · f d (√((l + 2e)² + l²) − (l + 2e)), e = 4 mm",
        "Bearing strength after EN 1995-1-1 8.5 (from memory); stiff pin in plastic bearing; four pins take equal shares",
        Standing.FromMemory)
    {
        Limits = [new("factor on loads", l => l.LoadFactor, 1.5, "", "EN 1990, variable loads (from memory)", Standing.FromMemory)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var part in context.PartsWith(PartRole.AdjustableShelf))
        {
            if (part.LoadPerMetre is not { } load)
                yield return ShelfLoads.Unloaded(this, part);
            else if (TooDamp(context, part.Id) is { } damp)
                yield return damp;
            else if (Carrier(context, part) is var (upright, row))
                yield return One(context, part, ShelfReader.Read(context, part, load), upright, row);
            else
                yield return NotChecked(context, part.Id, "no row of pin holes was found beside this shelf.", "Say how the shelf is held.");
        }
    }

    /// <summary>Load in N that a pin in this upright bears, for good.</summary>
    public static double PinStrength(Material upright, Length thickness, PinRow row)
    {
        ArgumentNullException.ThrowIfNull(upright);
        ArgumentNullException.ThrowIfNull(row);
        var figures = MaterialTable.For(upright with { Measured = thickness });
        var (diameter, depth) = (row.Diameter.Metres, row.Depth.Metres);
        var bearing = upright.Kind switch
        {
            MaterialKind.BirchPlywood or MaterialKind.HardwoodPlywood or MaterialKind.SoftwoodPlywood => PinBearing.PlywoodBearing(figures.Density, diameter),
            MaterialKind.Hardwood or MaterialKind.Softwood => PinBearing.SolidBearing(figures.Density, diameter),
            _ => PinBearing.BoardBearing(diameter, thickness.Metres),
        };
        var factor = ClimateFactors.StrengthFactor(upright.Kind, LoadDuration.Permanent) / figures.MaterialFactor;
        return factor * PinBearing.Load(bearing, diameter, depth, Arm);
    }

    private static double Demand(Shelf shelf, CheckLimits limits) => limits.LoadFactor * shelf.TotalLoad * shelf.LongestSpan / 4;

    // The weakest row of the case that the shelf is in.
    private static (Part Upright, PinRow Row)? Carrier(CheckContext context, Part shelf)
    {
        (Part Upright, PinRow Row)? weakest = null;
        var least = double.PositiveInfinity;
        foreach (var upright in context.Together(shelf).Where(p => p.Role is PartRole.Side or PartRole.Partition))
        {
            foreach (var row in upright.Machining.OfType<PinRow>())
            {
                var strength = PinStrength(context.Material(upright), upright.Thickness, row);
                if (strength < least)
                    (weakest, least) = ((upright, row), strength);
            }
        }

        return weakest;
    }

    private Finding One(CheckContext context, Part part, Shelf shelf, Part upright, PinRow row)
    {
        var (demand, strength) = (Demand(shelf, context.Limits), PinStrength(context.Material(upright), upright.Thickness, row));
        var say = context.Say;
        var most = ((shelf.TotalLoad * strength / demand) - shelf.OwnWeight) / Shelf.Gravity;
        var deepest = upright.Role == PartRole.Partition ? (upright.Thickness - PinRowsMeetCheck.WoodBetween) / 2 : upright.Thickness - PinRowsMeetCheck.WoodBehind;
        var ways = new List<string>();
        if (most >= 1)
            ways.Add($"keep the load to {say.LoadAtMost(most)}");
        if (Solving.Least(say.Step, row.Depth, deepest, d => demand <= PinStrength(context.Material(upright), upright.Thickness, row with { Depth = d })) is { } deep)
            ways.Add($"bore the holes {say.Size(deep)} deep");
        ways.Add("use thicker pins or metal sleeves");
        return Report(
            context,
            demand <= strength ? Severity.Pass : Severity.Caution,
            part.Id,
            $"Each pin of {part.Name} bears {say.Force(demand)} with safety; its hole holds {say.Force(strength)} for good.",
            new(demand, strength, "N", ShelfInputs.Of(shelf).Add(new("pin diameter", Say.Number(row.Diameter.Metres * 1000, 2), "mm")).Add(new("hole depth", Say.Number(row.Depth.Metres * 1000, 2), "mm")).Add(Air(context))),
            Say.Sentence(ways));
    }
}
