namespace Casewright.Engine.Cutting.Boards;

/// <summary>What is left of a board between its trimmed ends and its defects.</summary>
internal static class ClearStretches
{
    /// <summary>Stretches from the reference end. The cut that frees a piece before a defect may take a kerf beyond it.</summary>
    public static List<(long From, long To)> Of(BoardType board, long kerf, long endTrim)
    {
        var stretches = new List<(long From, long To)>();
        var at = endTrim;
        var end = board.Length - endTrim;
        foreach (var defect in board.Defects.OrderBy(d => d.From).ThenBy(d => d.To))
        {
            if (defect.From > at)
                stretches.Add((at, Math.Min(defect.From, end)));
            var cut = defect.From > at ? defect.From + kerf : 0;
            at = Math.Max(at, Math.Max(defect.To, cut));
        }

        if (end > at)
            stretches.Add((at, end));
        return [.. stretches.Where(s => s.To > s.From)];
    }
}
