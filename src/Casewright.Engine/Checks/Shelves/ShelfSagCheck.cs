using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Sag of every loaded shelf, top and bottom under its stated load, before creep.</summary>
public sealed class ShelfSagCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-sag",
        "Sag of each shelf under its load and own weight on the first day.",
        "δ = 5wL⁴/384EI + wL²/8GA′; over several spans the three-moment equation; with a nosing or a carried back the two-parameter strip model × 1.06",
        "Standard beam theory; strip model of our own within 6 % of solid finite elements; span/360 is common practice for fine built-ins",
        Standing.CommonPractice)
    {
        Limits = [new("span over sag", l => l.SagRatio, 360, "", "common practice for fine built-ins, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return ShelfLoads.Each(context, this, One, Missing);
    }

    /// <summary>Whether a shelf keeps the limit.</summary>
    public static bool Passes(Shelf shelf, double ratio)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return shelf.Sag <= shelf.LongestSpan / ratio;
    }

    private Finding Missing(CheckContext context, Part part) =>
        NotChecked(context, part.Id, "nobody has said what this shelf will carry.", "Give the load per metre of shelf: 25 to 35 kg/m for books, 45 for music or magazines, 60 for archive boxes.");

    private Finding One(CheckContext context, Part part, Shelf shelf)
    {
        var say = context.Say;
        var ratio = context.Limits.SagRatio;
        var (sag, limit) = (shelf.Sag, shelf.LongestSpan / ratio);
        var figures = new Figures(sag * 1000, limit * 1000, "mm", ShelfInputs.Of(shelf));
        var found = $"{part.Name} sags {say.Fine(sag)} over a clear span of {say.Fine(shelf.LongestSpan)}; {say.Fine(limit)} is allowed.";
        if (Passes(shelf, ratio))
            return Report(context, Severity.Pass, part.Id, found, figures);

        // A loose shelf can be turned over or changed; a fixed one is built in.
        var severity = part.Role == PartRole.AdjustableShelf && Passes(shelf, ratio / 2) ? Severity.Caution : Severity.Stop;
        return Report(context, severity, part.Id, found, figures, ShelfRemedies.For(shelf, s => Passes(s, ratio), say.Units).Advice(say));
    }
}

/// <summary>Walks over the shelves that carry something.</summary>
internal static class ShelfLoads
{
    /// <summary>One finding for each shelf; parts carried along their length pass with a word, tops without a stated load are left out.</summary>
    public static IEnumerable<Finding> Each(
        CheckContext context, ICheck check, Func<CheckContext, Part, Shelf, Finding> one, Func<CheckContext, Part, Finding> missing)
    {
        foreach (var part in context.PartsWith(ShelfReader.Roles))
        {
            if (ShelfReader.Hold(context, part) == ShelfHold.Along)
                yield return CarriedAlong(check.Sheet, part);
            else if (part.LoadPerMetre is { } load)
                yield return one(context, part, ShelfReader.Read(context, part, load));
            else if (part.Role is not (PartRole.Top or PartRole.Bottom))
                yield return missing(context, part);
        }
    }

    private static Finding CarriedAlong(CheckSheet sheet, Part part) => new()
    {
        Check = sheet.Id,
        Severity = Severity.Pass,
        Subject = part.Id,
        Message = $"{part.Name} lies on base rails along its whole length.",
        Source = sheet.Source,
        Standing = sheet.Standing,
    };
}

/// <summary>Inputs of a shelf's figures, in the units of the finding.</summary>
internal static class ShelfInputs
{
    public static ValueList<FindingInput> Of(Shelf shelf)
    {
        var figures = shelf.Figures;
        var list = new List<FindingInput>
        {
            new("clear spans", string.Join(" + ", shelf.Spans.Select(s => Say.Number(s * 1000))), "mm"),
            new("depth", Say.Number(shelf.Depth * 1000), "mm"),
            new("thickness", Say.Number(shelf.Thickness.Metres * 1000, 2), "mm"),
            new("load", Say.Number(shelf.LoadPerMetre), "kg/m"),
            new("own weight", Say.Number(shelf.OwnWeight / Shelf.Gravity, 2), "kg/m"),
            new("modulus of elasticity along the span", Say.Number(figures.Elasticity(shelf.AlongGrain) / 1e6, 0), "N/mm²"),
            new("where that comes from", figures.Source, ""),
            new("back edge", shelf.BackCarried ? "on a cleat" : "free", ""),
        };
        if (shelf.Nosing is { } nosing)
            list.Add(new("nosing", $"{Say.Number(nosing.Width * 1000)} × {Say.Number(nosing.Height * 1000)}", "mm"));
        return list.ToValueList();
    }
}
