namespace Casewright.Engine.Tests.Checks.FiniteElements;

/// <summary>Twenty-node bricks on a grid of planes; cells without a set are left out. Millimetres.</summary>
internal sealed class BrickMesh
{
    // Corners, then mid-edge nodes, in half steps of the grid: the order of a C3D20 element.
    private static readonly (int X, int Y, int Z)[] Brick =
    [
        (0, 0, 0), (2, 0, 0), (2, 2, 0), (0, 2, 0), (0, 0, 2), (2, 0, 2), (2, 2, 2), (0, 2, 2),
        (1, 0, 0), (2, 1, 0), (1, 2, 0), (0, 1, 0), (1, 0, 2), (2, 1, 2), (1, 2, 2), (0, 1, 2),
        (0, 0, 1), (2, 0, 1), (2, 2, 1), (0, 2, 1),
    ];

    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double[] _z;
    private readonly Dictionary<(int, int, int), int> _ids = [];
    private readonly List<(double X, double Y, double Z)> _nodes = [];
    private readonly List<(int Id, string Set, (int X, int Y, int Z) Cell, int[] Nodes)> _elements = [];

    public BrickMesh(double[] x, double[] y, double[] z, Func<int, int, int, string?> set)
    {
        (_x, _y, _z) = (x, y, z);
        for (var i = 0; i < x.Length - 1; i++)
        {
            for (var j = 0; j < y.Length - 1; j++)
            {
                for (var k = 0; k < z.Length - 1; k++)
                {
                    if (set(i, j, k) is { } name)
                        _elements.Add((_elements.Count + 1, name, (i, j, k), [.. Brick.Select(b => Node((2 * i) + b.X, (2 * j) + b.Y, (2 * k) + b.Z))]));
                }
            }
        }
    }

    public IReadOnlyList<(double X, double Y, double Z)> Nodes => _nodes;

    public IReadOnlyList<(int Id, string Set, (int X, int Y, int Z) Cell, int[] Nodes)> Elements => _elements;

    /// <summary>Ids of nodes that a condition picks.</summary>
    public int[] Pick(Func<double, double, double, bool> where) =>
        [.. Enumerable.Range(1, _nodes.Count).Where(n => where(_nodes[n - 1].X, _nodes[n - 1].Y, _nodes[n - 1].Z))];

    public static bool Near(double a, double b) => Math.Abs(a - b) < 1e-6;

    /// <summary>Planes from stretches, each divided evenly.</summary>
    public static double[] Planes(params (double From, double To, int Parts)[] stretches)
    {
        var planes = new List<double> { stretches[0].From };
        foreach (var (from, to, parts) in stretches)
            planes.AddRange(Enumerable.Range(1, parts).Select(i => from + ((to - from) * i / parts)));
        return [.. planes];
    }

    private static double Half(double[] planes, int i) => i % 2 == 0 ? planes[i / 2] : (planes[i / 2] + planes[(i / 2) + 1]) / 2;

    private int Node(int i, int j, int k)
    {
        if (!_ids.TryGetValue((i, j, k), out var id))
        {
            _nodes.Add((Half(_x, i), Half(_y, j), Half(_z, k)));
            _ids[(i, j, k)] = id = _nodes.Count;
        }

        return id;
    }
}
