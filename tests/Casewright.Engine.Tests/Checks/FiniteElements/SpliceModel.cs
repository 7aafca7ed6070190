using static Casewright.Engine.Tests.Checks.FiniteElements.BrickMesh;

namespace Casewright.Engine.Tests.Checks.FiniteElements;

/// <summary>
/// Half of a panel spliced by a continuous spline at mid-thickness, as a slice 1 mm wide in plane stress. The butt plane is x = 0: the
/// spline is whole across it, the panel's faces are not glued and only press on one another. Which nodes press is found by trial:
/// those that pull are let go, those that pass through are held again. mm, N, N/mm².
/// </summary>
internal sealed record SpliceModel(double Thickness, double Spline, double Embedment, double HalfLength, Orthotropic Panel, Orthotropic Tenon)
{
    /// <summary>What the solved model shows for each mm of width.</summary>
    /// <param name="Moment">Bending moment at the butt, N·mm.</param>
    /// <param name="Share">Share of it that the spline takes by its own bending.</param>
    /// <param name="Contact">From the compressed face to the resultant of the pressure, mm.</param>
    /// <param name="Turn">Half of the turn between the panel's far ends, radians.</param>
    /// <param name="Sag">Sag of the butt below the far ends, mm.</param>
    /// <param name="Axial">Sum of all forces across the butt, N: must vanish.</param>
    public sealed record Result(double Moment, double Share, double Contact, double Turn, double Sag, double Axial);

    /// <summary>Bent by a moment alone, N·mm for each mm of width, applied at the far end.</summary>
    public Result Bent(double moment) => Solve((deck, mesh) =>
    {
        // A pressure that grows with the distance from the middle; its moment is summed as applied.
        var far = mesh.Elements.Where(e => Near(mesh.Nodes[e.Nodes[1] - 1].X, HalfLength)).ToList();
        var applied = far.Sum(e => Arm(mesh, e) * Arm(mesh, e) * Height(mesh, e));
        foreach (var element in far)
            deck.Pressure(element.Id, 4, moment * Arm(mesh, element) / applied);
    });

    /// <summary>Under a pressure on the upper face, N/mm².</summary>
    public Result Loaded(double pressure) => Solve((deck, mesh) =>
    {
        foreach (var element in mesh.Elements.Where(e => Near(mesh.Nodes[e.Nodes[4] - 1].Z, Thickness)))
            deck.Pressure(element.Id, 2, pressure);
    });

    private double Arm(BrickMesh mesh, (int Id, string Set, (int X, int Y, int Z) Cell, int[] Nodes) e) =>
        ((mesh.Nodes[e.Nodes[0] - 1].Z + mesh.Nodes[e.Nodes[4] - 1].Z) / 2) - (Thickness / 2);

    private static double Height(BrickMesh mesh, (int Id, string Set, (int X, int Y, int Z) Cell, int[] Nodes) e) =>
        mesh.Nodes[e.Nodes[4] - 1].Z - mesh.Nodes[e.Nodes[0] - 1].Z;

    private BrickMesh Mesh()
    {
        var (low, high) = ((Thickness - Spline) / 2, (Thickness + Spline) / 2);
        var x = Planes((0, Embedment, (int)Math.Round(Embedment)), (Embedment, Embedment + 1, 1), (Embedment + 1, Embedment + 21, 10), (Embedment + 21, HalfLength, 20));
        var z = Planes((0, low, 8), (low, high, 6), (high, Thickness, 12));
        return new BrickMesh(x, [0, 1], z, (i, _, k) =>
        {
            var inSlot = z[k] >= low - 1e-9 && z[k + 1] <= high + 1e-9;
            if (inSlot && x[i] >= Embedment - 1e-9 && x[i] < Embedment + 1 - 1e-9)
                return null;
            return inSlot && x[i + 1] <= Embedment + 1e-9 ? "TENON" : "PANEL";
        });
    }

    private Result Solve(Action<Deck, BrickMesh> load)
    {
        var mesh = Mesh();
        var (low, high) = ((Thickness - Spline) / 2, (Thickness + Spline) / 2);
        var butt = mesh.Pick((x, _, z) => Near(x, 0) && (z < low - 1e-6 || z > high + 1e-6));
        var pressing = butt.Where(n => mesh.Nodes[n - 1].Z > high).ToHashSet();
        for (var trial = 0; trial < 30; trial++)
        {
            var results = Calculix.Solve(Build(mesh, load, butt, [.. pressing.Order()]));
            var pulls = pressing.Where(n => results["RF PRESS"].Values[n].X < -1e-9).ToList();
            var passes = butt.Where(n => !pressing.Contains(n) && results["U BUTT"].Values[n].X < -1e-9).ToList();
            if (pulls.Count == 0 && passes.Count == 0)
                return Read(mesh, results);
            pressing.ExceptWith(pulls);
            pressing.UnionWith(passes);
        }

        throw new InvalidOperationException("The pressing zone was not found in 30 trials.");
    }

    private Deck Build(BrickMesh mesh, Action<Deck, BrickMesh> load, int[] butt, int[] pressing)
    {
        var (low, high) = ((Thickness - Spline) / 2, (Thickness + Spline) / 2);
        var deck = new Deck(mesh).Material("PANEL", Panel).Material("TENON", Tenon);
        deck.Nodes("TEN", mesh.Pick((x, _, z) => Near(x, 0) && z >= low - 1e-6 && z <= high + 1e-6)).Hold("TEN", 1);
        deck.Nodes("PRESS", pressing).Hold("PRESS", 1);
        deck.Nodes("SIDE", mesh.Pick((_, y, _) => Near(y, 0))).Hold("SIDE", 2);
        deck.Nodes("END", mesh.Pick((x, _, z) => Near(x, HalfLength) && Near(z, Thickness / 2))).Hold("END", 3);
        deck.Nodes("BUTT", butt).Nodes("FAR", mesh.Pick((x, _, z) => Near(x, HalfLength) && (Near(z, 0) || Near(z, Thickness))));
        deck.Nodes("MID", mesh.Pick((x, _, z) => Near(x, 0) && Near(z, Thickness / 2)));
        load(deck, mesh);
        return deck.Print("TEN", "RF").Print("PRESS", "RF").Print("BUTT", "U").Print("FAR", "U").Print("MID", "U");
    }

    private Result Read(BrickMesh mesh, IReadOnlyDictionary<string, NodeValues> results)
    {
        double About(string set) => results[set].Values.Sum(v => v.Value.X * (mesh.Nodes[v.Key - 1].Z - (Thickness / 2)));
        var (tenon, press) = (About("RF TEN"), About("RF PRESS"));
        var resultant = results["RF PRESS"].Values.Sum(v => v.Value.X * (Thickness - mesh.Nodes[v.Key - 1].Z)) / results["RF PRESS"].SumX;
        var far = results["U FAR"].Values;
        var top = far.Where(v => Near(mesh.Nodes[v.Key - 1].Z, Thickness)).Average(v => v.Value.X);
        var bottom = far.Where(v => Near(mesh.Nodes[v.Key - 1].Z, 0)).Average(v => v.Value.X);
        var sag = -results["U MID"].Values.Values.Average(v => v.Z);
        return new(tenon + press, tenon / (tenon + press), resultant, (bottom - top) / Thickness, sag, results["RF TEN"].SumX + results["RF PRESS"].SumX);
    }
}
