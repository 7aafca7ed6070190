using Casewright.Engine.Checks;
using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Site;
using Casewright.Model.Stock;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// Longest clear spans of shelves for the panels of the job and the usual ones, bare, nosed, and nosed on a cleat, every figure by the
/// same code that checks the shelves.
/// </summary>
public static class SpanTables
{
    private static readonly Lettering Figure = Lettering.Figure.Sized(13);

    /// <summary>Loads of the columns in kg/m: novels, mixed books, 25 lb a foot of books, music or law, archive boxes.</summary>
    public static ValueList<double> Loads { get; } = [20, 30, 37, 45, 60];

    /// <summary>The pages.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (say, depth) = (new Say(plan.Job.Units), DepthOf(plan));
        var index = new PlanIndex(plan);
        var flow = Drafting.Flow(
            DocumentKind.SpanTables, settings, landscape: false,
            new("Span tables", $"longest clear span between uprights, shelves {index.Figures.Both(depth)} deep, grain along"),
            "Longest clear spans of shelves by panel, load and stiffening.", index.Figures.FootNote);
        foreach (var support in Enum.GetValues<SpanSupport>())
            Draw(flow, index, say, support, Tables(plan, support));
        DrawStandard(flow, index, Table(plan, SpanSupport.Plain, SpanLimit.Standard));
        DrawBasis(flow, plan, say);
        return flow.Finish();
    }

    /// <summary>A table of the document.</summary>
    public static SpanTable Table(Plan plan, SpanSupport support, SpanLimit limit)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return SpanTable.For(Materials(plan), Loads, DepthOf(plan), plan.Job.Shop.Checks, plan.Job.Site.Climate ?? Climate.Heated, plan.Job.Units, support, limit);
    }

    /// <summary>Depth of the tables: that of the shallowest run's shelves, or 280 mm (11 in) without a run.</summary>
    private static Length DepthOf(Plan plan) => plan.Job.Runs.Count > 0
        ? plan.Job.Runs.Min(run => run.Depth)
        : plan.Job.Units == UnitSystem.Inches ? Length.FromInches(11) : Length.FromMillimetres(280);

    private static (SpanTable Fixed, SpanTable Unseen) Tables(Plan plan, SpanSupport support) => (Table(plan, support, SpanLimit.Fixed), Table(plan, support, SpanLimit.Unseen));

    // The job's own panels of shelf thickness, then the usual ones that it does not hold.
    private static IEnumerable<Material> Materials(Plan plan)
    {
        var own = plan.Job.Stock.Materials.Where(material => material.BoardWidth is null && material.Thickness >= Length.FromMillimetres(12)).ToList();
        return own.Concat(Usual(plan.Job.Units).Where(usual => !own.Exists(material => material.Kind == usual.Kind && (material.Thickness - usual.Thickness).Abs() < Length.FromMillimetres(1.5m))));
    }

    private static IEnumerable<Material> Usual(UnitSystem units)
    {
        (MaterialKind Kind, string Name)[] kinds =
        [
            (MaterialKind.BirchPlywood, "birch plywood"), (MaterialKind.HardwoodPlywood, "hardwood-faced plywood"), (MaterialKind.SoftwoodPlywood, "softwood plywood"),
            (MaterialKind.Mdf, "MDF"), (MaterialKind.Particleboard, "particleboard"),
        ];
        var sizes = units == UnitSystem.Inches ? [Length.FromInches(0, 3, 4), Length.FromInches(1)] : (Length[])[Length.FromMillimetres(18), Length.FromMillimetres(25)];
        foreach (var (kind, name) in kinds)
        {
            foreach (var size in sizes)
                yield return new() { Id = name, Name = $"{name} {new Kit.Figures(units).Main(size)}", Kind = kind, Nominal = size, HasGrain = kind is not (MaterialKind.Mdf or MaterialKind.Particleboard) };
        }
    }

    private static void Draw(PageFlow flow, PlanIndex index, Say say, SpanSupport support, (SpanTable Fixed, SpanTable Unseen) tables)
    {
        flow.Heading(support switch
        {
            SpanSupport.Plain => "Bare panel",
            SpanSupport.Nosed => $"With a hardwood nosing {Nosing(index)}, top flush; back edge free",
            _ => $"With that nosing, and the back edge on a cleat along its length",
        }, 30);
        Column[] columns = [new($"Panel; spans in {index.Figures.Unit}", 2.6), .. tables.Fixed.Loads.Select(load => new Column(say.LoadPerLength(load), 1, Anchor: Anchor.End, Lettering: Figure))];
        Kit.Table.Draw(flow, columns, [.. tables.Fixed.Rows.Zip(tables.Unseen.Rows, (row, unseen) => Row.Of(
            [new(row.Material.Name), .. row.Spans.Zip(unseen.Spans, (span, eye) => new Cell(Span(index, span), Second: Span(index, eye)))]))]);
    }

    private static string Nosing(PlanIndex index) =>
        index.Figures.Units == UnitSystem.Inches ? index.Figures.Size(ShelfRemedies.NosingWidth, SpanTable.NosingHeight) : "19 × 38";

    private static string Span(PlanIndex index, Length span) => span == Length.Zero ? "–"
        : span > SpanTable.Longest - Length.FromMillimetres(10) ? "over " + index.Figures.Main(span)
        : index.Figures.Main(span);

    private static void DrawStandard(PageFlow flow, PlanIndex index, SpanTable table)
    {
        flow.Heading("Bare panel by the architectural woodwork standards, 50 psf for books, span/144", 30);
        Column[] columns = [new($"Panel; spans in {index.Figures.Unit}", 2.6), new("50 psf (2.39 kN/m²)", 1.2, Anchor: Anchor.End, Lettering: Figure), new("Stiffness comes from", 3)];
        Kit.Table.Draw(flow, columns, [.. table.Rows.Select(row =>
        {
            var figures = MaterialTable.For(row.Material);
            return Row.Of(new(row.Material.Name), new(Span(index, row.Spans[0])), new(Words.Sourced(figures.Source, figures.Standing)));
        })]);
    }

    private static void DrawBasis(PageFlow flow, Plan plan, Say say)
    {
        var limits = plan.Job.Shop.Checks;
        flow.Heading("What the figures rest on");
        string[] lines =
        [
            $"Large figures: sag on the first day at most span/{Words.Number(limits.SagRatio)} (common practice, no source), after years in {Air(plan)} at most span/{Words.Number(limits.FinalSagRatio)} with creep after EN 1995-1-1 (published; a panel trade bulletin calls 1/240 noticeable), and bending stress with a factor of {Words.Number(limits.LoadFactor)} within what the panel bears for good. Own weight counts.",
            $"Grey figures: sag on the first day at most span/{Words.Number(limits.VisibleSagRatio)} (0.02 in a foot, common practice, no source), which no eye sees, and the rest as above.",
            "Bare panels: standard beam theory, simple span. Nosed shelves: strip model of our own, within 6 % of solid finite elements (our judgement). A shelf with one nosing alone sags most at its free back edge, which is why the cleat gains so much; where strength governs, the nosing is weight and is not counted on.",
            "The last table keeps to Architectural Woodwork Standards, first edition 2009, p. 279 (published, read): no creep, no own weight, at most 200 lb on one shelf. Where a library or office asks for a standard, that standard decides.",
            $"Loads: 25 lb a foot of books, {say.LoadPerLength(37)}, was weighed by a state testing programme; all others are common practice. Panels differ: a bending test of your own stock beats any table.",
            CalculationSheets.NoPermit,
        ];
        foreach (var line in lines)
        {
            flow.Paragraph(line, Lettering.Body.Sized(10));
            flow.Gap(1);
        }
    }

    private static string Air(Plan plan) => plan.Job.Site.Climate switch
    {
        Climate.Unheated => "an unheated dry room",
        Climate.Damp => "damp air",
        _ => "a heated room",
    };
}
