using System.Globalization;
using Casewright.Engine.Splicing.Methods;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;

namespace Casewright.Engine.Splicing.Options;

/// <summary>Turns joint lines into the options of a part: pieces with their allowances, and the work that the joints cost.</summary>
internal sealed class OptionBuilder(Workshop shop)
{
    /// <summary>The part in one piece.</summary>
    public static PartOption Whole(Part part) =>
        new("whole", null, [], [new PieceCut(Length.Zero, part.Length, Length.Zero, Length.Zero, part.Width)], 0);

    /// <summary>
    /// The options of a part for joints at the given places: the first method that it allows there, and after it only methods that use up less length.
    /// </summary>
    public IEnumerable<PartOption> Spliced(OverlongPart overlong, IReadOnlyList<Length> joints, long? line)
    {
        var part = overlong.Part;
        Length? used = null;
        foreach (var room in overlong.Rooms.Where(r => overlong.Feasible(r, joints)))
        {
            if (used is { } least && room.AtJoint >= least)
                continue;
            used = room.AtJoint;
            yield return Spliced(part, room, joints, line);
        }
    }

    /// <summary>
    /// The part made of strips of equal width joined edge to edge, each left wider by the squaring allowance at every joint. There is
    /// no other way to make it, so its labour decides nothing here and is left to pricing.
    /// </summary>
    public PartOption Strips(Part part, int count, Length step)
    {
        var pieces = new List<PieceCut>();
        var left = part.Width;
        for (var strip = 0; strip < count; strip++)
        {
            var width = strip == count - 1 ? left : Length.Min((part.Width / count).CeilingTo(step), left);
            var joints = strip == 0 || strip == count - 1 ? 1 : 2;
            pieces.Add(new PieceCut(Length.Zero, part.Length, Length.Zero, Length.Zero, width + (shop.Splicing.SquaringAllowance * joints), strip));
            left -= width;
        }

        return new PartOption(string.Create(CultureInfo.InvariantCulture, $"{count} strips"), null, [], pieces.ToValueList(), 0);
    }

    private PartOption Spliced(Part part, JointRoom room, IReadOnlyList<Length> joints, long? line)
    {
        var pieces = new List<PieceCut>();
        var from = Length.Zero;
        for (var piece = 0; piece <= joints.Count; piece++)
        {
            var last = piece == joints.Count;
            var to = last ? part.Length : joints[piece];
            pieces.Add(new PieceCut(from, to, piece == 0 ? Length.Zero : room.AtJoint, last ? room.AtEnd : room.AtJoint, part.Width));
            from = to;
        }

        var minutes = SpliceTechniques.Of(room.Method).Minutes(shop.Splicing, part.Width) * joints.Count;
        var set = line < 0 ? string.Create(CultureInfo.InvariantCulture, $", line set {-line}") : "";
        var id = $"{room.Method} at {string.Join(", ", joints.Select(j => j.ToString()))}{set}";
        return new PartOption(id, room.Method, joints.ToValueList(), pieces.ToValueList(), Money(minutes), line);
    }

    private decimal Money(decimal minutes) => decimal.Round(minutes / 60 * shop.HourlyRate, 2, MidpointRounding.AwayFromZero);
}
