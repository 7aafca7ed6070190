using System.Globalization;
using Casewright.Engine.Layout.Cases;
using Casewright.Engine.Layout.Fronts;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Design;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Figures;

/// <summary>Places the shelves of a case and checks that they fit.</summary>
internal sealed class CaseReader(RunFigures run, IReadOnlyList<ColumnSpan> columns, IReadOnlyList<TierSpan> tiers, ProblemList problems)
{
    /// <summary>The case at a column and tier.</summary>
    /// <param name="column">The column.</param>
    /// <param name="tier">The tier.</param>
    /// <param name="number">Number of the column in the job, from 1.</param>
    public CaseFigures Read(ColumnSpan column, TierSpan tier, int number)
    {
        var (interior, path) = FindInterior(column, tier);
        var tierRun = run.In(tier);
        var headroom = new RakeReader(tierRun, problems).Read(column, tier, tiers.Count, number);
        if (tier.Design.Depth is not null)
            new JoineryReader(tierRun, problems).Check();
        var box = new CaseFigures
        {
            Run = tierRun,
            Column = column,
            Tier = headroom?.Tier ?? tier,
            Rake = headroom?.Rake,
            Tiers = tiers.Count,
            Deeper = tier.Index + 1 < tiers.Count && (tiers[tier.Index + 1].Design.Depth ?? run.Run.Depth) < tierRun.Run.Depth,
            Columns = columns.Count,
            Id = PartIds.Case(number, tier.Index, tiers.Count),
            Interior = interior,
            InteriorPath = path,
        };
        if (headroom is null)
            return box;
        if (box.IsKnee)
            return CheckKnee(box);
        box = box with { Fixed = FixedShelfHeights.Find(box, problems), BackPanels = BackPanels.Divide(box) };
        box = box with { Fronts = new FrontReader(tierRun, problems).Read(box) };
        RakedShelves.Check(box, problems);
        CheckNailer(box);
        CheckLoose(box);
        return box with { PinLevels = new PinLevels(box, problems).Find() };
    }

    /// <summary>Notes columns whose interiors do not match the tiers.</summary>
    public bool CheckInteriors()
    {
        var before = problems.All.Count;
        foreach (var column in columns)
        {
            if (column.Design is { Interiors.Count: > 0 } design && design.Interiors.Count != tiers.Count)
                problems.Add(column.Path + ".interiors", "A column with interiors of its own gives one for each tier.", Text(design.Interiors.Count), $"none, or {Text(tiers.Count)}");
        }

        return problems.All.Count == before;
    }

    private static (Interior Interior, string Path) FindInterior(ColumnSpan column, TierSpan tier) => column.Design is { Interiors.Count: > 0 } design
        ? (design.Interiors[tier.Index], string.Create(CultureInfo.InvariantCulture, $"{column.Path}.interiors[{tier.Index}]"))
        : (tier.Design.Interior, tier.Path + ".interior");

    private void CheckNailer(CaseFigures box)
    {
        if (run.Run.Nailers is not { } design)
            return;
        if (box.Rake is { } rake && box.BottomUpper >= box.LowUnder - rake.Slope.Along(design.Height))
            problems.Add(run.Path + ".nailers.height", $"The nailer along the slope is higher than the low end of case {box.Number}.", design.Height, $"less than {problems.Say(rake.Slope.Level(box.LowUnder - box.BottomUpper))}");
        if (box.Rake is not null)
            return;
        var below = box.Fixed.Count > 0 && !run.NailersBehind ? box.Fixed[^1].Upper : box.BottomUpper;
        if (design.Height >= box.TopUnder - below)
            problems.Add(run.Path + ".nailers.height", $"The nailer is higher than the opening under the top of case {box.Number}.", design.Height, $"less than {problems.Say(box.TopUnder - below)}");
    }

    private void CheckLoose(CaseFigures box)
    {
        if (box.Interior.Loose <= 0)
            return;
        var least = LooseShelves.Depth(box, box.Fronts.Select(f => f.Into(box.Run)).Append(Length.Zero).Max()).Exact;
        if (least <= Length.Zero)
            problems.Add(box.Run.DepthPath, "Nosing, back and working gaps leave no depth for loose shelves.", box.Run.Run.Depth, $"more than {problems.Say(box.Run.Run.Depth - least)}");
        if (run.Joinery.ShelfPlay >= box.Column.Clear)
            problems.Add(run.Path + ".joinery.shelfPlay", "The play is wider than the bay.", run.Joinery.ShelfPlay, $"less than {problems.Say(box.Column.Clear)}");
    }

    private CaseFigures CheckKnee(CaseFigures box)
    {
        if (box.Tier.Counter is null)
            problems.Add(box.Column.Path + ".open", "A knee space lies under a counter, and this tier has none.", "open", "a counter over the lowest tier, or a case here");
        if (box.Bays != 1)
            problems.Add(box.Column.Path + ".bays", "A knee space is one bay.", Text(box.Bays), "1");
        if ((box.IsFirst && run.Left.Kind == EndKind.Finished) || (box.IsLast && run.Right.Kind == EndKind.Finished))
            problems.Add(box.Column.Path + ".open", "At a finished end nothing would carry the counter.", "open", "a case, or an end at a wall or other casework");
        if (run.Frame is not null)
            problems.Add(box.Column.Path + ".open", "A knee space is laid out in frameless runs.", "open", "construction frameless, or a run of its own for the knee space");
        return box;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
