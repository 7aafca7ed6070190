using static Casewright.Engine.Tests.Checks.FiniteElements.BrickMesh;

namespace Casewright.Engine.Tests.Checks.FiniteElements;

/// <summary>
/// A shelf in solid elements: x along the span, y from the back edge to the front, z up from the underside. Supported along the
/// mid-thickness line over its depth; a strip on the front edge, top flush, is not supported itself. mm, N, N/mm².
/// </summary>
internal sealed record ShelfModel(double[] Spans, double Depth, double Thickness, double Pressure, Orthotropic Panel)
{
    public (double Width, double Height, Orthotropic Material)? Strip { get; init; }

    public bool BackOnCleat { get; init; }

    /// <summary>Sags in mm by position: midspan of the first span at the back and front edge, and the largest of each span at mid-depth.</summary>
    public (double Back, double Front, double[] Middle) Solve()
    {
        var ends = Spans.Aggregate(new List<double> { 0 }, (list, span) => [.. list, list[^1] + span]);
        var x = Planes([.. Spans.Select((s, i) => (ends[i], ends[i + 1], 2 * (int)Math.Round(s / 50)))]);
        var y = Strip is { } front ? Planes((0, Depth, 10), (Depth, Depth + front.Width, 2)) : Planes((0, Depth, 10));
        var drop = Strip is { } s && s.Height > Thickness ? s.Height - Thickness : 0;
        var z = drop > 0 ? Planes((-drop, 0, Math.Max(2, (int)Math.Round(drop / 5))), (0, Thickness, 2)) : Planes((0, Thickness, 2));
        var mesh = new BrickMesh(x, y, z, (i, j, k) => y[j] >= Depth - 1e-9 ? "STRIP" : z[k] < -1e-9 ? null : "PANEL");
        var middle = Thickness / 2;
        var deck = new Deck(mesh).Material("PANEL", Panel);
        if (Strip is { } strip)
            deck.Material("STRIP", strip.Material);
        bool OnLine(double py, double pz) => Near(pz, middle) && py <= Depth + 1e-6;
        deck.Nodes("HELD", mesh.Pick((px, py, pz) => ends.Any(e => Near(px, e)) && OnLine(py, pz)));
        deck.Nodes("LEFT", mesh.Pick((px, py, pz) => Near(px, 0) && OnLine(py, pz)));
        deck.Nodes("CORNER", mesh.Pick((px, py, pz) => (Near(px, 0) || Near(px, ends[^1])) && Near(py, 0) && Near(pz, middle)));
        deck.Hold("HELD", 3).Hold("LEFT", 1).Hold("CORNER", 2);
        if (BackOnCleat)
            deck.Nodes("CLEAT", mesh.Pick((_, py, pz) => Near(py, 0) && Near(pz, middle))).Hold("CLEAT", 3);
        foreach (var element in mesh.Elements.Where(e => e.Set == "PANEL" && e.Cell.Z == z.Length - 2))
            deck.Pressure(element.Id, 2, Pressure);
        deck.Nodes("BACK", mesh.Pick((px, py, pz) => Near(px, Spans[0] / 2) && Near(py, 0) && Near(pz, middle))).Print("BACK", "U");
        deck.Nodes("FRONT", mesh.Pick((px, py, pz) => Near(px, Spans[0] / 2) && Near(py, Depth) && Near(pz, middle))).Print("FRONT", "U");
        for (var i = 0; i < Spans.Length; i++)
            deck.Nodes($"SPAN{i}", mesh.Pick((px, py, pz) => px >= ends[i] - 1e-6 && px <= ends[i + 1] + 1e-6 && Near(py, Depth / 2) && Near(pz, middle))).Print($"SPAN{i}", "U");
        var results = Calculix.Solve(deck);
        double Sag(string set) => results["U " + set].Values.Values.Max(v => -v.Z);
        return (Sag("BACK"), Sag("FRONT"), [.. Enumerable.Range(0, Spans.Length).Select(i => Sag($"SPAN{i}"))]);
    }
}
