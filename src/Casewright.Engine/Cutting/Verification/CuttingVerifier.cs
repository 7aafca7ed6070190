using System.Globalization;

namespace Casewright.Engine.Cutting.Verification;

/// <summary>
/// Proves an answer from the positions of its pieces alone, knowing nothing of how it was found: sizes, sheets, kerfs,
/// options and sight lines, and that the saw can part the pieces edge to edge within the stages allowed.
/// </summary>
public sealed class CuttingVerifier
{
    private readonly CuttingProblem _problem;
    private readonly List<string> _faults = [];

    private CuttingVerifier(CuttingProblem problem) => _problem = problem;

    /// <summary>Every fault found, in plain words; empty for a sound answer.</summary>
    public static IReadOnlyList<string> FaultsOf(CuttingProblem problem, CuttingSolution solution)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solution);
        var verifier = new CuttingVerifier(problem);
        verifier.CheckChoices(solution);
        verifier.CheckPieces(solution);
        verifier.CheckStock(solution);
        for (var s = 0; s < solution.Sheets.Count; s++)
            verifier.CheckSheet(s, solution.Sheets[s]);
        return verifier._faults;
    }

    private void CheckChoices(CuttingSolution solution)
    {
        var seen = new HashSet<(int, int)>();
        var lines = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var choice in solution.Choices)
        {
            var demand = _problem.Demands[choice.Demand];
            if (choice.Copy < 0 || choice.Copy >= demand.Count || !seen.Add((choice.Demand, choice.Copy)))
                Fault($"copy {choice.Copy} of {demand.Id} is chosen twice or does not exist");
            if (demand.SightLineGroup is { } group && demand.Options[choice.Option].SightLine is { } line && !(lines.TryAdd(group, line) || lines[group] == line))
                Fault($"{demand.Id} breaks the sight line of {group}");
        }

        if (seen.Count != _problem.Demands.Sum(d => d.Count))
            Fault($"{seen.Count} copies have an option, {_problem.Demands.Sum(d => d.Count)} are wanted");
    }

    private void CheckPieces(CuttingSolution solution)
    {
        var wanted = new HashSet<(int, int, int, int)>();
        foreach (var choice in solution.Choices)
        {
            for (var p = 0; p < _problem.Demands[choice.Demand].Options[choice.Option].Pieces.Count; p++)
                wanted.Add((choice.Demand, choice.Copy, choice.Option, p));
        }

        foreach (var piece in solution.Sheets.SelectMany(s => s.Pieces))
        {
            if (!wanted.Remove((piece.Demand, piece.Copy, piece.Option, piece.Piece)))
            {
                Fault($"a piece of {_problem.Demands[piece.Demand].Id} is cut twice or not wanted");
                continue;
            }

            var asked = _problem.Demands[piece.Demand].Options[piece.Option].Pieces[piece.Piece];
            if (piece.Length != asked.Length || piece.Width != asked.Width)
                Fault($"a piece of {_problem.Demands[piece.Demand].Id} has the wrong size");
            if (piece.Turned && !asked.MayTurn && asked.Length != asked.Width)
                Fault($"a piece of {_problem.Demands[piece.Demand].Id} lies turned");
        }

        foreach (var (demand, copy, _, piece) in wanted)
            Fault($"piece {piece} of copy {copy} of {_problem.Demands[demand].Id} is not cut");
    }

    private void CheckStock(CuttingSolution solution)
    {
        var cost = solution.Choices.Sum(c => _problem.Demands[c.Demand].Options[c.Option].ExtraCost);
        for (var t = 0; t < _problem.Sheets.Count; t++)
        {
            var used = solution.Sheets.Count(s => s.SheetType == t);
            cost += used * _problem.Sheets[t].Cost;
            if (_problem.Sheets[t].Available is { } available && used > available)
                Fault($"{used} sheets of {_problem.Sheets[t].Id} are used, {available} are there");
        }

        if (cost != solution.Cost)
            Fault($"the cost is {cost}, not {solution.Cost}");
        if (solution.SheetsUsed != solution.Sheets.Count)
            Fault($"the number of sheets is {solution.Sheets.Count}, not {solution.SheetsUsed}");
        if (solution.LowerBound > solution.Cost || solution.SheetsLowerBound > solution.SheetsUsed)
            Fault($"a lower bound lies above the answer");
    }

    private void CheckSheet(int index, SheetCut sheet)
    {
        var (type, rules) = (_problem.Sheets[sheet.SheetType], _problem.Rules);
        var boxes = sheet.Pieces.Select(p => new Box(p.X, p.Y, p.X + p.SizeX, p.Y + p.SizeY)).ToArray();
        foreach (var box in boxes)
        {
            if (box.X0 < rules.EdgeTrim || box.Y0 < rules.EdgeTrim || box.X1 > type.Length - rules.EdgeTrim || box.Y1 > type.Width - rules.EdgeTrim)
                Fault($"a piece lies outside the usable part of sheet {index + 1}");
        }

        var whole = new Box(rules.EdgeTrim, rules.EdgeTrim, type.Length - rules.EdgeTrim, type.Width - rules.EdgeTrim);
        var stages = rules.Stages ?? int.MaxValue - 1;
        var along = rules.FirstCut != FirstCut.Across && Separable(whole, boxes, rip: true, stages);
        if (!along && !(rules.FirstCut != FirstCut.Along && Separable(whole, boxes, rip: false, stages)))
            Fault($"the saw cannot part the pieces of sheet {index + 1} within the stages allowed");
    }

    // Cuts the region everywhere one direction allows, then turns. More cuts never hinder later ones, so this is exact.
    private bool Separable(Box region, Box[] boxes, bool rip, int stagesLeft)
    {
        if (boxes.Length == 0 || (boxes.Length == 1 && boxes[0] == region))
            return true;
        if (boxes.Length == 1)
            return MayTrim(region, boxes[0], rip, stagesLeft);
        if (stagesLeft == 0)
            return false;
        var parts = Split(boxes, rip);
        if (parts.Count == 1)
        {
            // Nothing is parted, but the waste beyond may come off; then it is the other direction's turn.
            var hull = Hull(region, boxes, rip);
            return (hull == region || MayRip(region, rip)) && Separable2(hull, boxes, !rip, stagesLeft - 1);
        }

        if (!MayRip(region, rip))
            return false;
        return parts.TrueForAll(p => Separable2(Hull(region, p, rip), p, !rip, stagesLeft - 1));
    }

    private bool Separable2(Box region, Box[] boxes, bool rip, int stagesLeft)
    {
        if (boxes.Length > 1 && Split(boxes, rip).Count == 1 && Split(boxes, !rip).Count == 1)
            return false;
        return Separable(region, boxes, rip, stagesLeft);
    }

    // A single piece comes out with the stages left and one trimming turn more.
    private bool MayTrim(Box region, Box box, bool rip, int stagesLeft)
    {
        var needsRip = region.Y0 != box.Y0 || region.Y1 != box.Y1;
        var needsCrosscut = region.X0 != box.X0 || region.X1 != box.X1;
        if (needsRip && needsCrosscut)
        {
            // The first of the two turns shortens or narrows the region for the second.
            var ripLength = rip ? region.X1 - region.X0 : box.X1 - box.X0;
            return stagesLeft >= 1 && (_problem.Rules.LongestRip is not { } longest || ripLength <= longest);
        }

        return needsCrosscut ? stagesLeft >= 1 || !rip : MayRip(region, rip: true) && (stagesLeft >= 1 || rip);
    }

    private bool MayRip(Box region, bool rip) => !rip || _problem.Rules.LongestRip is not { } longest || region.X1 - region.X0 <= longest;

    private List<Box[]> Split(Box[] boxes, bool rip)
    {
        var sorted = boxes.OrderBy(b => rip ? b.Y0 : b.X0).ToArray();
        var parts = new List<Box[]>();
        var start = 0;
        var end = long.MinValue;
        for (var i = 0; i < sorted.Length; i++)
        {
            var from = rip ? sorted[i].Y0 : sorted[i].X0;
            if (i > start && from >= end + _problem.Rules.Kerf)
            {
                parts.Add(sorted[start..i]);
                start = i;
            }

            end = i == start ? (rip ? sorted[i].Y1 : sorted[i].X1) : Math.Max(end, rip ? sorted[i].Y1 : sorted[i].X1);
        }

        parts.Add(sorted[start..]);
        return parts;
    }

    private static Box Hull(Box region, Box[] boxes, bool rip) => rip
        ? region with { Y0 = boxes.Min(b => b.Y0), Y1 = boxes.Max(b => b.Y1) }
        : region with { X0 = boxes.Min(b => b.X0), X1 = boxes.Max(b => b.X1) };

    private void Fault(FormattableString text) => _faults.Add(text.ToString(CultureInfo.InvariantCulture));

    private readonly record struct Box(long X0, long Y0, long X1, long Y1);
}
