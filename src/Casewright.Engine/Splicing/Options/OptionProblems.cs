using Casewright.Engine.Splicing.Methods;
using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Stock;

namespace Casewright.Engine.Splicing.Options;

/// <summary>Says why parts have no options, and what would mend it.</summary>
internal sealed class OptionProblems(Job job, SpliceRoomFinder finder)
{
    private const int MostZones = 4;

    /// <summary>Nothing to cut from.</summary>
    public static Problem NoStock(Material material, int parts)
    {
        var kind = material.IsBoard ? "boards" : "sheets";
        return new Problem($"stock.{kind}", $"There is no stock of {material.Name} ('{material.Id}'), which {parts} part{(parts == 1 ? " needs" : "s need")}.", "",
            $"an entry in stock.{kind} with material '{material.Id}' that is on hand or can be bought");
    }

    /// <summary>A part wider than any sheet.</summary>
    public PartFailure TooWide(Part part, int run, StockFit fit, bool stripsAllowed)
    {
        var widest = fit.WidestPiece(Length.Zero, part.Grain) is { } width ? $", the widest of which takes {Say(width)} after trimming" : "";
        var tooLong = stripsAllowed ? ", and too long for strips of one length" : "";
        return new PartFailure(part, $"runs[{run}].splices.allowEdgeJoint",
            $"{Say(part.Width)} wide, wider than any sheet of {fit.Material.Name}{widest}{tooLong}",
            stripsAllowed ? "true" : "false",
            (stripsAllowed ? "" : "true to join strips edge to edge, ") + "a wider sheet in stock.sheets, or a narrower part");
    }

    /// <summary>No place for a joint, or none at the height wished.</summary>
    public PartFailure NoLine(OverlongPart overlong, Length? wished)
    {
        var (_, run) = finder.RunOf(overlong.Part);
        var outrun = $"{Say(overlong.Part.Length)} long, and one piece can have {Say(overlong.LongestPiece)} at most";
        if (wished is { } height)
        {
            return new PartFailure(overlong.Part, $"runs[{run}].splices.height", $"{outrun}; a joint at {Say(height)} is not possible: {AtHeight(overlong, height)}",
                Say(height), Nearest(overlong, height));
        }

        return new PartFailure(overlong.Part, "shop.splicing", $"{outrun}; no {Most()} in it keeps the rules{Between(overlong)}", "",
            "a fixed shelf or fewer pin holes where the joint must lie, more joints, a shorter least piece, or longer stock");
    }

    /// <summary>Parts that could each be joined, but at no height together.</summary>
    public Problem NoCommonLine(IReadOnlyList<OverlongPart> overlong)
    {
        var (_, run) = finder.RunOf(overlong[0].Part);
        var each = overlong.Select(o => $"{o.Part.Name} {InWords(Reachable(o))}");
        return new Problem("shop.splicing.oneSightLine",
            $"The uprights of run '{overlong[0].Part.Run}' find no joint height that serves them all: {string.Join("; ", each)}.", "true",
            $"false, a fixed shelf at one height in all cases of runs[{run}], or longer stock");
    }

    private string AtHeight(OverlongPart overlong, Length height)
    {
        var x = overlong.Part.FromRoom(height);
        foreach (var room in overlong.Rooms)
        {
            var zones = finder.Zones(overlong.Part, room.Method).Where(z => z.Forbids(x)).Select(z => z.Reason).Distinct(StringComparer.Ordinal).ToArray();
            if (zones.Length > 0)
                return $"it lies in {string.Join(" and in ", zones)}";
        }

        var (below, above) = (x, overlong.Part.Length - x);
        if (Length.Min(below, above) < overlong.ShortestPiece)
            return $"it leaves a piece of {Say(Length.Min(below, above))}, and {Say(overlong.ShortestPiece)} is the least";
        return $"it leaves a piece of {Say(Length.Max(below, above))} and its allowances, longer than the stock takes";
    }

    private string Nearest(OverlongPart overlong, Length height)
    {
        var lines = Reachable(overlong);
        var heights = new[] { lines.AtOrBelow(height), lines.AtOrAbove(height) }.OfType<Length>().Distinct().Select(Say).ToArray();
        return heights.Length == 0
            ? "no height: see the rules of shop.splicing, or longer stock"
            : $"{string.Join(" or ", heights)} above the floor (the nearest allowed), none stated, or longer stock";
    }

    /// <summary>Lines at which one joint does; where one does not, all that the zones allow.</summary>
    private static ValueList<Stretch> Reachable(OverlongPart overlong)
    {
        var part = overlong.Part;
        var alone = overlong.Rooms.SelectMany(room =>
        {
            var low = part.Length + room.AtJoint + room.AtEnd - overlong.LongestPiece;
            var high = overlong.LongestPiece - room.AtJoint;
            return low <= high ? Stretches.Common(room.Allowed, [new Stretch(low, high)]) : [];
        }).Select(part.ToRoom).ToArray();
        return alone.Length > 0 ? Stretches.Merged(alone) : overlong.AllowedLines;
    }

    private string Between(OverlongPart overlong)
    {
        var room = overlong.Rooms[0];
        var part = overlong.Part;
        var low = Length.Max(part.Length + room.AtJoint + room.AtEnd - overlong.LongestPiece, overlong.ShortestPiece);
        var high = Length.Min(overlong.LongestPiece - room.AtJoint, part.Length - overlong.ShortestPiece);
        if (low > high)
            return "";
        var window = part.ToRoom(new Stretch(low, high));
        var zones = finder.Zones(part, room.Method).Where(z => z.From < high && z.To > low).Select(z => z.Reason).Distinct(StringComparer.Ordinal).Take(MostZones).ToArray();
        var where = part.IsUpright() ? " above the floor" : " along the wall";
        return zones.Length == 0 ? "" : $": for {SpliceTechniques.Of(room.Method).Name} it would lie between {Say(window.From)} and {Say(window.To)}{where}, and there are {string.Join(", ", zones)}";
    }

    private string InWords(ValueList<Stretch> stretches) => stretches.Count == 0
        ? "nowhere"
        : string.Join(", ", stretches.Select(s => s.From == s.To ? $"at {Say(s.From)}" : $"{Say(s.From)} to {Say(s.To)}"));

    private string Most() => job.Shop.Splicing.MostJoints == 1 ? "joint" : $"set of up to {job.Shop.Splicing.MostJoints} joints";

    private string Say(Length length) => Words.Of(length, job.Units);
}
