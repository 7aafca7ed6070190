using System.Globalization;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>
/// The keys of a job: every kind of joint gets a tenon pattern that differs from its own mirror image and from the pattern, straight
/// and mirrored, of every other kind with tenons as thick, so that no wrong assembly closes.
/// </summary>
internal sealed class KeyBook(SpliceRules rules, UnitSystem units)
{
    private readonly Dictionary<KeyIdentity, Key> _keys = [];
    private readonly Dictionary<Length, List<Key>> _byThickness = [];

    /// <summary>The key of a joint: an earlier one for an interchangeable joint, else a new one.</summary>
    public Key For(KeyIdentity identity, Part part, Length joint)
    {
        if (_keys.TryGetValue(identity, out var known))
            return known;
        var size = TenonSize.For(part.Thickness, units);
        if (!_byThickness.TryGetValue(size.Thickness, out var rivals))
            _byThickness.Add(size.Thickness, rivals = []);
        var key = new Key(
            string.Create(CultureInfo.InvariantCulture, $"K{_keys.Count + 1}"), size, Choose(part, joint, identity.Method, rivals), rivals);
        rivals.Add(key);
        _keys.Add(identity, key);
        return key;
    }

    /// <summary>The most even pattern among those that are plainly off, or else the one that is off most.</summary>
    private KeyPattern Choose(Part part, Length joint, SpliceMethod method, List<Key> rivals)
    {
        var room = TenonRoom.At(part, joint, rules);
        if (!KeyPatterns.Exist(room, method, units))
            room = TenonRoom.Along(part, rules);
        var patterns = new KeyPatterns(room, method, units);
        var wanted = patterns.WantedConnectors;
        return patterns.All()
            .OrderByDescending(p => Length.Min(Off(p.Pattern, rivals), JointPractice.PlainMismatch))
            .ThenByDescending(p => Math.Min(p.Pattern.Connectors.Count, wanted))
            .ThenBy(p => p.Moved)
            .First().Pattern;
    }

    private static Length Off(KeyPattern pattern, List<Key> rivals)
    {
        var least = pattern.OwnMismatch;
        foreach (var rival in rivals)
            least = Length.Min(least, pattern.MismatchWith(rival.Pattern));

        return least;
    }

    /// <summary>A key and what it is told apart from.</summary>
    /// <param name="Name">Its name, K1 and on.</param>
    /// <param name="Size">Thickness and depth of its tenons.</param>
    /// <param name="Pattern">Places of its tenons and connectors.</param>
    /// <param name="Rivals">All keys with tenons as thick, itself included once all are made.</param>
    internal sealed record Key(string Name, TenonSize Size, KeyPattern Pattern, List<Key> Rivals)
    {
        /// <summary>How far the mortises of the nearest wrong assembly are off; to be asked when all keys are made.</summary>
        public Length Mismatch => Off(Pattern, [.. Rivals.Where(r => r.Name != Name)]);
    }
}
