using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Loose shelves that must go in through a narrower face frame, or beside the blind panel of a corner.</summary>
public sealed class ShelfThroughFrameCheck : Check
{
    private const int Steps = 900;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-through-frame",
        "Whether each loose shelf can be got in through the opening of the face frame, or beside a blind panel.",
        "some φ: L cos φ + t sin φ ≤ opening and L sin φ + t cos φ ≤ opening height; beside a blind panel also on edge, L ≤ min (a cos u + b sin u − t)/(sin u cos u)",
        "Geometry",
        Standing.Arithmetic);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var shelf in context.PartsWith(PartRole.AdjustableShelf))
        {
            if (EntryOf(context, shelf) is { } entry)
                yield return One(context, shelf, entry);
        }
    }

    /// <summary>Whether a shelf of length and thickness goes in tilted in the plane of the front; all in one unit.</summary>
    public static bool Enters(double length, double thickness, double width, double height)
    {
        for (var i = 0; i <= Steps; i++)
        {
            var (sin, cos) = Math.SinCos(Math.PI / 2 * i / Steps);
            if ((length * cos) + (thickness * sin) <= width && (length * sin) + (thickness * cos) <= height)
                return true;
        }

        return false;
    }

    /// <summary>
    /// Whether a shelf goes in beside the blind panel of a corner: tilted in the plane of the front, or on edge and turned round the panel into the
    /// blind part, as round a corner from a passage as wide as the opening into one as deep as the case, then laid flat. All in one unit.
    /// </summary>
    public static bool EntersBlind(double length, double depth, double thickness, double width, double height, double inside) =>
        Enters(length, thickness, width, height)
        || (Math.Sqrt((depth * depth) + (thickness * thickness)) <= height && CorridorTurn.Passes(width, inside, length, thickness));

    // Between the stiles or blind panels beside the shelf, and between the fixed panels or rails above and below it.
    private static Entry? EntryOf(CheckContext context, Part shelf)
    {
        var (low, high) = ShelfReader.Box(shelf);
        var middle = low.X + ((high.X - low.X) / 2);
        var around = context.PartsOfRun(shelf.Run).Where(p => p.Case == shelf.Case || p.Case == shelf.Run).ToList();
        var stiles = around.Where(p => p.Role == PartRole.Stile).Select(ShelfReader.Box).Where(b => b.Low.Y < high.Y && b.High.Y > low.Y).ToList();
        var panel = around.Find(p => p.Role == PartRole.BlindPanel);
        if (stiles.Count == 0 && panel is null)
            return null;
        var uprights = around.Where(p => p.Role is PartRole.Side or PartRole.Partition).Select(ShelfReader.Box).ToList();
        var left = stiles.Where(b => b.Low.X < middle).Concat(uprights.Where(b => b.High.X <= low.X)).Select(b => b.High.X).DefaultIfEmpty(low.X).Max();
        var right = stiles.Where(b => b.High.X > middle).Concat(uprights.Where(b => b.Low.X >= high.X)).Select(b => b.Low.X).DefaultIfEmpty(high.X).Min();
        Length? inside = null;
        if (panel is not null)
        {
            var blind = ShelfReader.Box(panel);
            (left, right) = panel.Id.EndsWith('R') ? (left, Length.Min(right, blind.Low.X)) : (Length.Max(left, blind.High.X), right);
            inside = blind.Low.Z - around.Where(p => p.Role == PartRole.Back).Select(p => ShelfReader.Box(p).High.Z).DefaultIfEmpty(Length.Zero).Max();
        }

        var levels = around
            .Where(p => p.Role is PartRole.FixedShelf or PartRole.Top or PartRole.Bottom or PartRole.Rail)
            .Select(ShelfReader.Box).Where(b => b.Low.X < middle && b.High.X > middle).ToList();
        var floor = levels.Where(b => b.High.Y <= low.Y).Select(b => b.High.Y).DefaultIfEmpty(Length.Zero).Max();
        var roof = levels.Where(b => b.Low.Y >= high.Y).Select(b => b.Low.Y).DefaultIfEmpty(floor).Min();
        return new((right - left).Metres, (roof - floor).Metres, inside?.Metres);
    }

    /// <summary>What a shelf goes in through, in metres.</summary>
    /// <param name="Width">Clear width.</param>
    /// <param name="Height">Clear height.</param>
    /// <param name="Inside">Clear depth behind a blind panel; null without one.</param>
    private readonly record struct Entry(double Width, double Height, double? Inside);

    /// <summary>What must go in, in metres.</summary>
    /// <param name="Depth">Depth with its nosing.</param>
    /// <param name="Thickness">Thickness, or height of its nosing.</param>
    private readonly record struct Section(double Depth, double Thickness)
    {
        public bool Enters(double length, Entry entry, double height) => entry.Inside is { } inside
            ? EntersBlind(length, Depth, Thickness, entry.Width, height, inside)
            : ShelfThroughFrameCheck.Enters(length, Thickness, entry.Width, height);
    }

    private static Section SectionOf(CheckContext context, Part shelf, Entry entry)
    {
        var nosing = entry.Inside is null ? null : context.Part(shelf.Nosing);
        return new((shelf.Width + (nosing?.Thickness ?? Length.Zero)).Metres, Length.Max(shelf.Thickness, nosing?.Width ?? Length.Zero).Metres);
    }

    private Finding One(CheckContext context, Part shelf, Entry entry)
    {
        var say = context.Say;
        var section = SectionOf(context, shelf, entry);
        var enters = section.Enters(shelf.Length.Metres, entry, entry.Height);
        return Report(
            context,
            enters ? Severity.Pass : Severity.Stop,
            shelf.Id,
            $"{shelf.Name} is {say.Size(shelf.Length)} long; the opening it goes in through is {say.Size(entry.Width)} wide and {say.Size(entry.Height)} high.",
            new(shelf.Length.Metres * 1000, entry.Width * 1000, "mm", []),
            enters ? "" : Advice(say, shelf, section, entry));
    }

    private static string Advice(Say say, Part shelf, Section section, Entry entry)
    {
        var ways = new List<string>();
        var upright = entry.Inside is null ? "a mid stile" : "a partition";
        if (Solving.Largest(say.Step, shelf.Length, length => section.Enters(length.Metres, entry, entry.Height)) is { } longest)
            ways.Add($"make it {say.Size(longest)} long or shorter, or split it at {upright}");
        var highest = shelf.Length + shelf.Thickness;
        if (Solving.Least(say.Step, Length.FromNanometres((long)(entry.Height * 1e9)), highest, opening => section.Enters(shelf.Length.Metres, entry, opening.Metres)) is { } opening)
            ways.Add($"leave out a fixed shelf, so that the opening is {say.Size(opening)} high");
        if (entry.Inside is null)
            ways.Add("put it in before the frame is glued on");
        return Say.Sentence(ways);
    }
}
