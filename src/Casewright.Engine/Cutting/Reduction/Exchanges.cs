namespace Casewright.Engine.Cutting.Reduction;

/// <summary>
/// Which piece may be cut in the place of which larger one: what holds the larger holds the smaller. Only the nearest larger
/// ones are listed; the others follow by steps. In the linear program they keep a larger piece at least as dear as a smaller one
/// (dual-optimal inequalities, Valério de Carvalho 2005), in the choice of layouts they let one layout serve for many.
/// </summary>
internal static class Exchanges
{
    private const int MostForOne = 3;

    /// <summary>Pairs of a larger kind and a smaller one, the larger kinds by falling area.</summary>
    public static List<(int Larger, int Smaller)> Of(PieceKind[] kinds)
    {
        var pairs = new List<(int Larger, int Smaller)>();
        var byArea = Enumerable.Range(0, kinds.Length).OrderBy(k => kinds[k].Area).ThenBy(k => k).ToArray();
        for (var s = 0; s < byArea.Length; s++)
        {
            var nearest = new List<int>();
            for (var l = s + 1; l < byArea.Length && nearest.Count < MostForOne; l++)
            {
                if (Holds(kinds[byArea[l]], kinds[byArea[s]]) && !nearest.Exists(n => Holds(kinds[byArea[l]], kinds[n])))
                    nearest.Add(byArea[l]);
            }

            pairs.AddRange(nearest.Select(l => (l, byArea[s])));
        }

        return [.. pairs.OrderByDescending(p => kinds[p.Larger].Area).ThenBy(p => p.Larger).ThenBy(p => p.Smaller)];
    }

    /// <summary>Whether the smaller kind can be cut in the place of the larger, however that lies.</summary>
    public static bool Holds(PieceKind larger, PieceKind smaller) =>
        larger.MayTurn == smaller.MayTurn && smaller.SizeX <= larger.SizeX && smaller.SizeY <= larger.SizeY;
}
