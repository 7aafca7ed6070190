using Casewright.Engine.Cutting;
using Google.OrTools.Sat;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>
/// The least cost of a small problem by an integer program, written apart from the engine and solved by a general solver: pieces are
/// stacked, stacks stand side by side in strips of the sheet's full length, strips lie over each other on sheets. In two stages a stack
/// holds one piece; in three it may hold several. Pieces smaller than their place are trimmed, as the engine's rules allow.
/// </summary>
/// <remarks>
/// The stacks and strips are those of the models for level and three-stage bin packing of Lodi, Martello and Vigo (2004) and of Puchinger
/// and Raidl (2007), from memory; each stack, strip and sheet goes by its lowest piece. Kerf is added once to every piece and sheet.
/// </remarks>
internal sealed class GuillotineProgram
{
    private readonly CpModel _model = new();
    private readonly CuttingProblem _problem;
    private readonly List<CuttingPiece> _pieces;
    private readonly long _kerf;
    private readonly long _mostX;
    private readonly long _mostY;

    private GuillotineProgram(CuttingProblem problem)
    {
        _problem = problem;
        _kerf = problem.Rules.Kerf;
        _pieces = [.. problem.Demands.SelectMany(d => Enumerable.Repeat(d.Options.Single().Pieces.Single(), d.Count))];
        _mostX = problem.Sheets.Max(s => s.Length) + _kerf;
        _mostY = problem.Sheets.Max(s => s.Width) + _kerf;
    }

    /// <summary>Least cost of whole pieces, rips first, in two or three stages, without edge trim; null when nothing can be cut.</summary>
    public static decimal? LeastCost(CuttingProblem problem)
    {
        if (problem.Rules is not { EdgeTrim: 0, FirstCut: FirstCut.Along, Stages: 2 or 3, MinimumStrip: null, LongestRip: null })
            throw new ArgumentException("The program models two and three stages, rips first, without limits of the saw.", nameof(problem));
        return new GuillotineProgram(problem).Solve();
    }

    private decimal? Solve()
    {
        var n = _pieces.Count;
        var (sizeX, sizeY) = Sizes();
        var (inStack, stackX, stackY) = Nest(n, "stack");
        var (inStrip, _, stripY) = Nest(n, "strip");
        for (var stack = 0; stack < n; stack++)
        {
            if (_problem.Rules.Stages == 2)
                _model.Add(LinearExpr.Sum(Enumerable.Range(stack + 1, n - stack - 1).Select(p => inStack[stack, p])) == 0);
            _model.Add(stackY[stack] == LinearExpr.Sum(Enumerable.Range(stack, n - stack).Select(p => Product(inStack[stack, p], sizeY[p], _mostY))));
            for (var p = stack; p < n; p++)
                _model.Add(stackX[stack] >= sizeX[p]).OnlyEnforceIf(inStack[stack, p]);
        }

        // A strip holds stacks that are there, and is as high as the highest of them.
        var strips = Members(inStrip, n, member => inStack[member, member]);
        for (var strip = 0; strip < n; strip++)
        {
            for (var stack = strip; stack < n; stack++)
                _model.Add(stripY[strip] >= stackY[stack]).OnlyEnforceIf(inStrip[strip, stack]);
        }

        var (onSheet, _, _) = Nest(n, "sheet");
        Members(onSheet, n, member => strips[member]);
        return Minimize(n, inStrip, stackX, onSheet, stripY);
    }

    private decimal? Minimize(int n, BoolVar[,] inStrip, IntVar[] stackX, BoolVar[,] onSheet, IntVar[] stripY)
    {
        var costs = new List<LinearExpr>();
        var used = _problem.Sheets.Select(_ => new List<BoolVar>()).ToArray();
        for (var sheet = 0; sheet < n; sheet++)
        {
            BoolVar[] kinds = [.. _problem.Sheets.Select((s, k) => _model.NewBoolVar($"sheet {sheet} of kind {k}"))];
            _model.Add(LinearExpr.Sum(kinds) == onSheet[sheet, sheet]);
            for (var kind = 0; kind < kinds.Length; kind++)
            {
                var type = _problem.Sheets[kind];
                used[kind].Add(kinds[kind]);
                costs.Add(kinds[kind] * (long)(type.Cost * 100));
                _model.Add(LinearExpr.Sum(Enumerable.Range(sheet, n - sheet).Select(s => Product(onSheet[sheet, s], stripY[s], _mostY))) <= type.Width + _kerf).OnlyEnforceIf(kinds[kind]);
                for (var strip = sheet; strip < n; strip++)
                {
                    var length = LinearExpr.Sum(Enumerable.Range(strip, n - strip).Select(s => Product(inStrip[strip, s], stackX[s], _mostX)));
                    _model.Add(length <= type.Length + _kerf).OnlyEnforceIf([kinds[kind], onSheet[sheet, strip]]);
                }
            }
        }

        for (var kind = 0; kind < used.Length; kind++)
        {
            if (_problem.Sheets[kind].Available is { } most)
                _model.Add(LinearExpr.Sum(used[kind]) <= most);
        }

        var cost = LinearExpr.Sum(costs);
        _model.Minimize(cost);
        var solver = new CpSolver { StringParameters = "num_search_workers:1 random_seed:1" };
        return solver.Solve(_model) switch
        {
            CpSolverStatus.Optimal => decimal.Round((decimal)solver.ObjectiveValue) / 100,
            CpSolverStatus.Infeasible => null,
            var other => throw new InvalidOperationException($"The solver ended with {other}."),
        };
    }

    /// <summary>Sizes of the pieces as they lie, kerf included.</summary>
    private (IntVar[] X, IntVar[] Y) Sizes()
    {
        var (x, y) = (new IntVar[_pieces.Count], new IntVar[_pieces.Count]);
        foreach (var (index, piece) in _pieces.Index())
        {
            var turned = _model.NewBoolVar($"turned {index}");
            if (!piece.MayTurn)
                _model.Add(turned == 0);
            x[index] = _model.NewIntVar(1, _mostX + _mostY, $"x {index}");
            y[index] = _model.NewIntVar(1, _mostX + _mostY, $"y {index}");
            _model.Add(x[index] == piece.Length + _kerf + (turned * (piece.Width - piece.Length)));
            _model.Add(y[index] == piece.Width + _kerf + (turned * (piece.Length - piece.Width)));
        }

        return (x, y);
    }

    /// <summary>Who belongs to the group that goes by its lowest member, and the size of each group.</summary>
    private (BoolVar[,] Holds, IntVar[] X, IntVar[] Y) Nest(int n, string name)
    {
        var holds = new BoolVar[n, n];
        for (var group = 0; group < n; group++)
        {
            for (var member = group; member < n; member++)
                holds[group, member] = _model.NewBoolVar($"{name} {group} holds {member}");
            for (var member = group + 1; member < n; member++)
                _model.AddImplication(holds[group, member], holds[group, group]);
        }

        if (name == "stack")
            Members(holds, n, _ => null);
        return (
            holds,
            [.. Enumerable.Range(0, n).Select(g => _model.NewIntVar(0, _mostX, $"{name} x {g}"))],
            [.. Enumerable.Range(0, n).Select(g => _model.NewIntVar(0, _mostY, $"{name} y {g}"))]);
    }

    /// <summary>Every member that is there belongs to one group, no other to any; returns whether each group is there.</summary>
    private BoolVar[] Members(BoolVar[,] holds, int n, Func<int, BoolVar?> isThere)
    {
        for (var member = 0; member < n; member++)
        {
            var groups = LinearExpr.Sum(Enumerable.Range(0, member + 1).Select(g => holds[g, member]));
            if (isThere(member) is { } there)
                _model.Add(groups == there);
            else
                _model.Add(groups == 1);
        }

        return [.. Enumerable.Range(0, n).Select(g => holds[g, g])];
    }

    private IntVar Product(BoolVar chosen, IntVar size, long most)
    {
        var product = _model.NewIntVar(0, most, $"{chosen} of {size}");
        _model.Add(product == size).OnlyEnforceIf(chosen);
        _model.Add(product == 0).OnlyEnforceIf(chosen.Not());
        return product;
    }
}
