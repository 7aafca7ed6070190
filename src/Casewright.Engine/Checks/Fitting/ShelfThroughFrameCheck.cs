using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Loose shelves that must go in through a narrower face frame.</summary>
public sealed class ShelfThroughFrameCheck : Check
{
    private const int Steps = 900;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-through-frame",
        "Whether each loose shelf can be tilted in through the opening of the face frame.",
        "some φ: L cos φ + t sin φ ≤ opening and L sin φ + t cos φ ≤ opening height",
        "Geometry",
        Standing.Arithmetic);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var shelf in context.PartsWith(PartRole.AdjustableShelf))
        {
            if (Opening(context, shelf) is var (width, height))
                yield return One(context, shelf, width, height);
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

    // Between the stiles beside the shelf, and between the fixed panels or rails above and below it.
    private static (double Width, double Height)? Opening(CheckContext context, Part shelf)
    {
        var (low, high) = ShelfReader.Box(shelf);
        var middle = low.X + ((high.X - low.X) / 2);
        var stiles = context.Together(shelf).Where(p => p.Role == PartRole.Stile).Select(ShelfReader.Box).ToList();
        var left = stiles.Where(b => b.Low.X < middle).Select(b => b.High.X).DefaultIfEmpty(low.X).Max();
        var right = stiles.Where(b => b.High.X > middle).Select(b => b.Low.X).DefaultIfEmpty(high.X).Min();
        if (stiles.Count == 0)
            return null;
        var levels = context.Together(shelf)
            .Where(p => p.Role is PartRole.FixedShelf or PartRole.Top or PartRole.Bottom or PartRole.Rail)
            .Select(ShelfReader.Box).Where(b => b.Low.X < middle && b.High.X > middle).ToList();
        var floor = levels.Where(b => b.High.Y <= low.Y).Select(b => b.High.Y).DefaultIfEmpty(Length.Zero).Max();
        var roof = levels.Where(b => b.Low.Y >= high.Y).Select(b => b.Low.Y).DefaultIfEmpty(floor).Min();
        return ((right - left).Metres, (roof - floor).Metres);
    }

    private Finding One(CheckContext context, Part shelf, double width, double height)
    {
        var say = context.Say;
        var enters = Enters(shelf.Length.Metres, shelf.Thickness.Metres, width, height);
        return Report(
            context,
            enters ? Severity.Pass : Severity.Stop,
            shelf.Id,
            $"{shelf.Name} is {say.Size(shelf.Length)} long; the opening it goes in through is {say.Size(width)} wide and {say.Size(height)} high.",
            new(shelf.Length.Metres * 1000, width * 1000, "mm", []),
            enters ? "" : Advice(say, shelf, width, height));
    }

    private static string Advice(Say say, Part shelf, double width, double height)
    {
        var ways = new List<string>();
        if (Solving.Largest(say.Step, shelf.Length, length => Enters(length.Metres, shelf.Thickness.Metres, width, height)) is { } longest)
            ways.Add($"make it {say.Size(longest)} long or shorter, or split it at a mid stile");
        var highest = shelf.Length + shelf.Thickness;
        if (Solving.Least(say.Step, Length.FromNanometres((long)(height * 1e9)), highest, opening => Enters(shelf.Length.Metres, shelf.Thickness.Metres, width, opening.Metres)) is { } opening)
            ways.Add($"leave out a fixed shelf, so that the opening is {say.Size(opening)} high");
        ways.Add("put it in before the frame is glued on");
        return Say.Sentence(ways);
    }
}
