using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Engine.Checks.Building;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// One sheet for each kind of case: the case taken apart with the number of each step, the steps in order, what to measure before the
/// glue sets, what it weighs and how many hands that takes.
/// </summary>
public static class AssemblySheets
{
    private const double Gap = 7;
    private const double LeastDrawing = 88;

    private static readonly Lettering Step = Lettering.Body.Sized(10.5);
    private static readonly Lettering Number = Lettering.Figure.Sized(13);

    /// <summary>The pages: alike cases share theirs.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        var context = new CheckContext(plan.Job, new(plan.Cases, plan.Parts, []), plan.Cutting);
        // A knee space is cleats and an apron fitted on site: nothing is assembled.
        return CaseGroups.Of(plan)
            .Where(group => plan.Parts.Any(part => part.Case == group.First.Id && part.Role == PartRole.Side))
            .SelectMany(group => Sheet(index, context, group, settings)).ToValueList();
    }

    private static IEnumerable<PageDraft> Sheet(PlanIndex index, CheckContext context, CaseGroup group, PaperSettings settings)
    {
        var heading = HeadingOf(index, group);
        var page = Drafting.Page(
            DocumentKind.AssemblySheets, settings, landscape: false, heading, $"How {group.Codes} goes together, step by step.", index.Figures.FootNote, group.First.Id);
        var body = page.Format.Body(heading.Height);
        var steps = AssemblyOrder.Of(index.Plan, group);
        var words = DrawColumns(new(), index, context, group, steps, body with { Top = 0 });
        var sketch = new Sketch();
        var view = new ExplodedView(group, steps);
        var together = body.Height - words - 4 >= LeastDrawing;
        var used = view.Draw(sketch, together ? body with { Height = body.Height - words - 4 } : body);
        if (!together)
        {
            yield return page with { Body = sketch.Items };
            (sketch, used) = (new(), -4);
        }

        DrawColumns(sketch, index, context, group, steps, body.WithoutTop(used + 4));
        yield return page with { Body = sketch.Items, Heading = together ? heading : heading with { Subtitle = heading.Subtitle + " · continued" } };
    }

    private static PageHeading HeadingOf(PlanIndex index, CaseGroup group)
    {
        var box = group.First;
        var alike = group.Cases.Count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $": build {group.Cases.Count} alike");
        var words = group.Cases.Count == 1 ? $"numbers are steps; outside {index.Figures.Size(box.Width, box.Height, box.Depth)} {index.Figures.Unit}" : group.Codes + " · numbers are steps";
        return new("Assembly" + alike, words, box.Id);
    }

    // Returns how far down the longer column reaches.
    private static double DrawColumns(Sketch sketch, PlanIndex index, CheckContext context, CaseGroup group, IReadOnlyList<AssemblyStep> steps, Box area)
    {
        var left = area with { Width = (area.Width - Gap) * 0.56 };
        var right = area with { Left = left.Right + Gap, Width = area.Width - left.Width - Gap };
        return Math.Max(DrawSteps(sketch, group, steps, left), DrawFigures(sketch, index, context, group, right)) - area.Top;
    }

    private static double DrawSteps(Sketch sketch, CaseGroup group, IReadOnlyList<AssemblyStep> steps, Box area)
    {
        sketch.Text("Do", area.Left, area.Top + 4.4, Lettering.Heading);
        var y = area.Top + 6.8;
        foreach (var step in steps)
        {
            Symbols.TickBox(sketch, area.Left, y + 0.4);
            sketch.Text(step.Number.ToString(CultureInfo.InvariantCulture), area.Left + 9.6, y + 4, Number, Anchor.End);
            y += Math.Max(5.2, sketch.Paragraph(step.Text, area.Left + 12, y + 0.2, area.Width - 12, Step) + 1);
        }

        return y;
    }

    private static double DrawFigures(Sketch sketch, PlanIndex index, CheckContext context, CaseGroup group, Box area)
    {
        sketch.Text("Measure while the clamps hold", area.Left, area.Top + 4.4, Lettering.Heading);
        var y = area.Top + 7;
        foreach (var (what, figure, other) in Figures(index, group))
            y = DrawFigure(sketch, area, y, what, figure, other);
        y += 1;
        y += sketch.Paragraph(Diagonals(group.First), area.Left, y, area.Width, Lettering.Body.Sized(10)) + 2;
        sketch.Text("Weight and hands", area.Left, y + 4.4, Lettering.Heading);
        y += 6.6;
        foreach (var line in Weights(context, group))
            y += sketch.Paragraph(line, area.Left, y, area.Width, Lettering.Body.Sized(10)) + 0.5;
        return y + 2 + CautionStrip.Draw(sketch, area with { Top = y + 2 }, Work.Gluing, Work.Lifting);
    }

    private static double DrawFigure(Sketch sketch, Box area, double y, string what, string figure, string other)
    {
        Symbols.TickBox(sketch, area.Left, y + 0.5);
        sketch.Text(what, area.Left + 6, y + 4, Lettering.Body.Sized(10));
        var room = area.Right - TextLayout.Width(other, Lettering.SecondFigure) - 1.5;
        sketch.Text(figure, room, y + 4, Number, Anchor.End);
        sketch.Text(other, area.Right, y + 4, Lettering.SecondFigure, Anchor.End);
        return y + 5.6;
    }

    private static IEnumerable<(string What, string Figure, string Other)> Figures(PlanIndex index, CaseGroup group)
    {
        var shell = group.Parts.Where(part => part.Role is PartRole.Side or PartRole.Top or PartRole.Bottom).ToList();
        if (shell.Count > 0)
        {
            var width = shell.Max(part => PartBox.High(part).X) - shell.Min(part => PartBox.Low(part).X);
            var height = shell.Max(part => PartBox.High(part).Y) - shell.Min(part => PartBox.Low(part).Y);
            yield return Of("outer width", width);
            foreach (var (what, length) in Outer(group.First, width, height, index.Figures.Units).Where(o => !AssemblyOrder.IsAcrossCorner(group) || !o.What.Contains("diagonal", StringComparison.Ordinal)))
                yield return Of(what, length);
        }

        yield return Of(group.First.Bays == 1 ? "clear inside" : "clear in each bay", group.First.ClearBay);
        (string What, string Figure, string Other) Of(string what, Length length) => (what, index.Figures.Main(length), index.Figures.Other(length));
    }

    // A case with a raked top is as high as it is at either end, and its diagonals differ.
    private static IEnumerable<(string What, Length Length)> Outer(CaseBox box, Length width, Length height, UnitSystem units)
    {
        if (box.Rake is null)
            return [("outer height", height), ("outer diagonals", Diagonal(width, height, units))];
        var (left, right) = (box.HeightAt(box.X), box.HeightAt(box.X + box.Width));
        return
        [
            ("outer height, left", left),
            ("outer height, right", right),
            ("left foot to right head", Diagonal(width, right, units)),
            ("right foot to left head", Diagonal(width, left, units)),
        ];
    }

    private static string Diagonals(CaseBox box) => box.Rake is null
        ? "Diagonals: ________ and ________. Alike is square; more than 1 mm (1\u204432 in) apart, rack it back."
        : "Diagonals: ________ and ________. Under a raked top they differ: each as above is square; more than 1 mm (1\u204432 in) off, rack it back.";

    /// <summary>The diagonal of a rectangle, to the nearest half millimetre or 1/32 in.</summary>
    internal static Length Diagonal(Length width, Length height, UnitSystem units)
    {
        var (w, h) = (width.Metres, height.Metres);
        return Length.FromNanometres((long)Math.Round(Math.Sqrt((w * w) + (h * h)) * 1e9)).RoundTo(units == UnitSystem.Inches ? Length.FromInches(0, 1, 32) : Length.FromMillimetres(0.5m));
    }

    private static IEnumerable<string> Weights(CheckContext context, CaseGroup group)
    {
        var (box, say) = (group.First, context.Say);
        var mass = CaseWeightCheck.MassToLift(context, box);
        var people = CaseWeightCheck.People(mass, context.Limits.MassPerPerson);
        yield return $"The case weighs {say.Mass(mass)} without loose shelves: {Words.Count(people, "person", "people")} to lift it"
            + (people > CaseWeightCheck.MostHands ? ". That is too many for one case: assemble it where it stands, or bring lifting gear." : ".");
        if (context.PartsOf(box).Where(part => part.Role != PartRole.AdjustableShelf).MaxBy(context.Mass) is { } heaviest)
            yield return $"Heaviest part: {group.CodeOf(heaviest)}, {say.Mass(context.Mass(heaviest))}.";
        var levels = context.PartsOf(box).Where(part => part.Role is PartRole.Bottom or PartRole.Top or PartRole.FixedShelf).Select(part => part.Place.Origin.Y).Distinct().Count();
        yield return $"Clamps across: {2 * levels}, front and rear at {Words.Count(levels, "level", "levels")}; one pair of hands at each side while it closes.";
    }
}
