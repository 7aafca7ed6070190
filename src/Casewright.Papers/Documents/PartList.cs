using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Every part, alike ones together, material by material.</summary>
public static class PartList
{
    private static readonly Lettering Quantity = Lettering.Figure.Sized(14);

    /// <summary>The pages.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        var index = new PlanIndex(plan);
        var flow = Drafting.Flow(
            DocumentKind.PartList, settings, landscape: true, new("Part list", $"finished sizes in {index.Figures.Unit}, the other unit in grey; alike parts together"),
            "Every part with its finished size.", index.Figures.FootNote);
        Table.Draw(flow, Columns(index), [.. Rows(index)]);
        return flow.Finish();
    }

    private static Column[] Columns(PlanIndex index) =>
    [
        new("Done", Fixed: 9),
        new("Code", 1.5, Lettering: Lettering.ListCode),
        new("No.", Fixed: 10, Anchor: Anchor.End, Lettering: Quantity),
        new("Part", 1.1),
        new($"Length {index.Figures.Unit}", Fixed: 24, Anchor: Anchor.End, Lettering: Quantity),
        new("Width", Fixed: 20, Anchor: Anchor.End, Lettering: Quantity),
        new("Thick", Fixed: 16, Anchor: Anchor.End, Lettering: Quantity),
        new("Grain", Fixed: 14),
        new("Work and notes", 1.7),
    ];

    private static IEnumerable<Row> Rows(PlanIndex index)
    {
        foreach (var material in PartGroups.Of(index).GroupBy(group => group.First.Material, StringComparer.Ordinal))
        {
            yield return Row.Heading(index.Material(material.Key).Name);
            foreach (var group in material)
                yield return RowOf(index, group);
            yield return Row.Note(Subtotal(material));
        }
    }

    private static string Subtotal(IEnumerable<PartGroup> groups)
    {
        var parts = groups.SelectMany(group => group.Parts).ToList();
        var area = parts.Sum(part => part.Length.Millimetres * part.Width.Millimetres) / 1_000_000m;
        return string.Create(CultureInfo.InvariantCulture, $"{Words.Count(parts.Count, "part", "parts")}, {area:0.0#} m² net");
    }

    private static Row RowOf(PlanIndex index, PartGroup group)
    {
        var part = group.First;
        var figures = index.Figures;
        return Row.Of(
            Cell.TickBox,
            new(CodeList.Of(group.Parts.Select(p => p.Id))),
            new(group.Parts.Count.ToString(CultureInfo.InvariantCulture)),
            new(Words.CommonName(group.Parts)),
            new(figures.Main(part.Length), Second: figures.Other(part.Length)),
            new(figures.Main(part.Width), Second: figures.Other(part.Width)),
            new(figures.Main(part.Thickness), Second: figures.Other(part.Thickness)),
            new(Words.Of(part.Grain)),
            new(Notes(index, group)));
    }

    private static string Notes(PlanIndex index, PartGroup group)
    {
        var part = group.First;
        var notes = new List<string>();
        if (part.Hand != Hand.None)
            notes.Add(part.Hand == Hand.Left ? "left hand" : "right hand");
        if (Shows(part) is { } face)
            notes.Add(face);
        notes.AddRange(MachiningNotes(part));
        notes.AddRange(part.Machining.OfType<Bevel>().Select(bevel => $"{End(part, bevel.Edge)} bevelled {CutWords.Of(index.Figures, part, bevel)}"));
        notes.AddRange(part.Machining.OfType<Clip>().Select(clip => $"{End(part, clip.End)} raked {CutWords.Of(index.Figures, part, clip)}"));
        if (part.Nosing is not null)
            notes.Add("nosing on the reference edge");
        notes.AddRange(group.Splices.Select(splice => $"spliced at {index.Figures.Both(splice.Position)} from {Words.EndsOf(part).Start.ToLowerInvariant()}, {Words.Of(splice.Method)}"));
        if (part.FitOnSite is { } fit)
            notes.Add("fit on site: " + fit);
        return string.Join("; ", notes);
    }

    private static string End(Part part, PartEdge edge) => edge switch
    {
        PartEdge.Start => Words.EndsOf(part).Start.ToLowerInvariant(),
        PartEdge.End => Words.EndsOf(part).End.ToLowerInvariant(),
        PartEdge.Reference => Words.ReferenceEdgeOf(part),
        _ => CutWords.OtherEdge(part),
    };

    private static string? Shows(Part part) => (part.ReferenceFace, part.OppositeFace) switch
    {
        (Exposure.Shows, Exposure.Shows) => "both faces show",
        (Exposure.Shows, _) => $"good face {part.ReferenceFaceName}",
        (_, Exposure.Shows) => $"good face {part.OppositeFaceName}",
        _ => null,
    };

    private static IEnumerable<string> MachiningNotes(Part part)
    {
        var works = part.Machining;
        var counts = new (int Count, string One, string Many)[]
        {
            (works.OfType<Dado>().Count(), "dado", "dados"),
            (works.OfType<Groove>().Count(), "groove", "grooves"),
            (works.OfType<Rabbet>().Count(), "rabbet", "rabbets"),
            (works.OfType<PinRow>().Count(), "pin row", "pin rows"),
            (works.OfType<Notch>().Count(), "notch", "notches"),
            (works.OfType<CutOut>().Count(), "cut-out", "cut-outs"),
            (works.OfType<Bore>().Count(), "bored hole", "bored holes"),
        };
        return counts.Where(work => work.Count > 0).Select(work => Words.Count(work.Count, work.One, work.Many));
    }
}
