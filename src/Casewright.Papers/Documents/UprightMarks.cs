using System.Globalization;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Papers.Documents;

/// <summary>What is marked on an upright, and how it is drawn.</summary>
internal enum UprightMarkKind
{
    /// <summary>A housing across the upright.</summary>
    Dado,

    /// <summary>Holes for shelf pins.</summary>
    Pins,

    /// <summary>The line of a splice.</summary>
    Joint,

    /// <summary>A corner or opening cut away.</summary>
    Cut,

    /// <summary>A stretch where screws go.</summary>
    Screws,

    /// <summary>A round hole.</summary>
    Hole,

    /// <summary>Work along the whole upright: groove or rabbet.</summary>
    Along,
}

/// <summary>A mark on an upright, measured from its foot.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Lower end from the foot; of a pin row, the first hole.</param>
/// <param name="To">Upper end from the foot; of a pin row, the last hole.</param>
/// <param name="Pitch">From hole to hole; zero for all else.</param>
/// <param name="What">What it is, in few words.</param>
/// <param name="How">Depth and place across the upright, in words.</param>
/// <param name="Face">The face it is on; null when it goes through.</param>
internal sealed record UprightMark(UprightMarkKind Kind, Length From, Length To, Length Pitch, string What, string How, Face? Face);

/// <summary>Reads the marks of an upright off its machining and splices.</summary>
internal static class UprightMarks
{
    /// <summary>The marks, from the foot up.</summary>
    public static IReadOnlyList<UprightMark> Of(PlanIndex index, Part upright) =>
    [
        .. upright.Machining.Select(work => Of(index, upright, work)).OfType<UprightMark>()
            .Concat(upright.Machining.OfType<PinRow>().GroupBy(row => row with { Y = Length.Zero }).Select(rows => Pins(index, upright, [.. rows])))
            .Concat(index.SplicesOf(upright).Select(splice => new UprightMark(
                UprightMarkKind.Joint, splice.Position, splice.Position, Length.Zero, ("joint " + splice.PairLetter).TrimEnd(), Words.Of(splice.Method), null)))
            .OrderBy(mark => mark.From).ThenBy(mark => mark.To).ThenBy(mark => mark.Kind).ThenBy(mark => mark.How, StringComparer.Ordinal),
    ];

    /// <summary>The code of a part without that of its case.</summary>
    public static string Short(string id) => id.IndexOf('-', StringComparison.Ordinal) is var at and > 0 ? id[(at + 1)..] : id;

    /// <summary>Whether the reference face of the upright, drawn with the foot down, has its reference edge at the left.</summary>
    public static bool ReferenceEdgeLeft(Part upright, Face face) => SplicePair.IsRightHanded(upright.Place) == (face == Face.Reference);

    private static UprightMark? Of(PlanIndex index, Part upright, Machining work)
    {
        var (figures, edge) = (index.Figures, Words.ReferenceEdgeOf(upright) + " edge");
        return work switch
        {
            Dado dado => new(
                UprightMarkKind.Dado, dado.X, dado.X + dado.Width, Length.Zero, "dado " + Short(dado.For),
                $"{figures.Main(dado.Width)} wide, {figures.Main(dado.Depth)} deep" + Across(figures, edge, dado.FromY, dado.ToY, upright), dado.Face),
            Groove groove => new(
                UprightMarkKind.Along, groove.FromX, groove.ToX, Length.Zero, "groove " + Short(groove.For),
                $"{figures.Main(groove.Width)} wide, {figures.Main(groove.Depth)} deep, {figures.Main(groove.Y)} from the {edge}", groove.Face),
            Rabbet rabbet => new(
                UprightMarkKind.Along, Length.Zero, upright.Length, Length.Zero, "rabbet " + Short(rabbet.For),
                $"{figures.Main(rabbet.Width)} wide, {figures.Main(rabbet.Depth)} deep, along the {(rabbet.Edge == PartEdge.Reference ? edge : "other edge")}", rabbet.Face),
            Notch notch => new(
                UprightMarkKind.Cut, notch.X, notch.X + notch.LengthX, Length.Zero, "notch, " + notch.For,
                $"{figures.Size(notch.LengthX, notch.LengthY)}, {figures.Main(notch.Y)} from the {edge}", null),
            CutOut cut => new(
                UprightMarkKind.Cut, cut.X, cut.X + cut.LengthX, Length.Zero, "cut-out, " + cut.For,
                $"{figures.Size(cut.LengthX, cut.LengthY)}, {figures.Main(cut.Y)} from the {edge}", null),
            Bevel bevel => new(
                UprightMarkKind.Cut, FromEnd(bevel.Edge, bevel.Setback, upright), FromEnd(bevel.Edge, Length.Zero, upright), Length.Zero, "bevel, " + bevel.For,
                CutWords.Of(figures, upright, bevel), null),
            Clip clip => new(
                UprightMarkKind.Cut, FromEnd(clip.End, clip.AlongX, upright), FromEnd(clip.End, Length.Zero, upright), Length.Zero, "raked cut, " + clip.For,
                CutWords.Of(figures, upright, clip), null),
            Bore bore => new(UprightMarkKind.Hole, bore.X, bore.X, Length.Zero, "hole, " + bore.For, CutWords.Of(figures, upright, bore), bore.Face),
            HardwareZone zone => new(UprightMarkKind.Screws, zone.FromX, zone.ToX, Length.Zero, "screws, " + Short(zone.For), "keep joints away", zone.Face),
            _ => null,
        };
    }

    private static Length FromEnd(PartEdge end, Length off, Part upright) => end == PartEdge.Start ? off : upright.Length - off;

    // Rows at the same heights are one mark, with the distance of each from the edge.
    private static UprightMark Pins(PlanIndex index, Part upright, IReadOnlyList<PinRow> rows)
    {
        var (figures, row) = (index.Figures, rows[0]);
        var places = string.Join(" and ", rows.Select(each => each.Y).Order().Select(y => figures.Main(y)));
        return new(
            UprightMarkKind.Pins, row.FirstX, row.LastX, row.Pitch, rows.Count == 1 ? "pin row" : "pin rows",
            string.Create(CultureInfo.InvariantCulture, $"{row.Count} holes every {figures.Main(row.Pitch)}, {places} from the {Words.ReferenceEdgeOf(upright)} edge, {figures.Main(row.Diameter)} bit, {figures.Main(row.Depth)} deep"),
            row.Face);
    }

    private static string Across(Kit.Figures figures, string edge, Length from, Length to, Part upright) => (from > Length.Zero, to < upright.Width) switch
    {
        (false, false) => "",
        (true, false) => $", stopped {figures.Main(from)} from the {edge}",
        (false, true) => $", {figures.Main(to)} long from the {edge}",
        _ => $", from {figures.Main(from)} to {figures.Main(to)} off the {edge}",
    };
}
