using Casewright.Model.Collections;
using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Shelves;

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
