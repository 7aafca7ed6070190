using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>Resolves the fronts of a case and checks that they can be built.</summary>
internal sealed class FrontReader(RunFigures run, ProblemList problems)
{
    private static readonly Length s_lowestBox = Length.FromMillimetres(40);
    private static readonly Length s_narrowestLeaf = Length.FromMillimetres(100);

    /// <summary>The fronts of a case whose fixed shelves are placed; those with problems are left out, and the list holds why.</summary>
    public ValueList<FrontSpan> Read(CaseFigures box)
    {
        var spans = new List<FrontSpan>();
        var fronts = box.Interior.Fronts;
        for (var i = 0; i < fronts.Count; i++)
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"{box.InteriorPath}.fronts[{i}]");
            if (Resolve(box, fronts[i], path, i + 1) is { } span && IsFree(span, spans, path))
                spans.Add(span);
        }

        var figures = box with { Fronts = spans.ToValueList() };
        var before = problems.All.Count;
        foreach (var span in spans)
            CheckSize(figures, span);
        return problems.All.Count == before ? figures.Fronts : [];
    }

    private FrontSpan? Resolve(CaseFigures box, FrontDesign design, string path, int number)
    {
        var openings = box.Fixed.Count + 1;
        var last = design.Opening + design.Openings - 1;
        if (design.Opening < 1 || design.Openings < 1 || last > openings)
        {
            problems.Add(path + ".opening", $"Case {box.Number} has no such opening.", string.Create(CultureInfo.InvariantCulture, $"{design.Opening} to {last}"), string.Create(CultureInfo.InvariantCulture, $"1 to {openings}, counted from the bottom"));
            return null;
        }

        var material = Sheet(design.Material, path + ".material");
        if (design.Kind == FrontKind.Doors)
            return material is null || !IsDoor(design, material, path) ? null : new(design, path, number, design.Opening - 1, last - 1, material, null, null);
        var boxes = Sheet(design.BoxMaterial, path + ".boxMaterial");
        var bottoms = Sheet(design.BottomMaterial, path + ".bottomMaterial");
        return material is null || boxes is null || bottoms is null || !IsDrawers(design, path)
            ? null
            : new(design, path, number, design.Opening - 1, design.Opening - 1, material, boxes, bottoms);
    }

    private bool IsDoor(FrontDesign design, Material material, string path)
    {
        if (design.Leaves is 1 or 2)
        {
            problems.Least(path + ".material", "thickness of the door, which takes the cups of its hinges,", material.Thickness, Hinges.ThinnestDoor);
            return material.Thickness >= Hinges.ThinnestDoor;
        }

        problems.Add(path + ".leaves", "A door has one leaf or two.", design.Leaves.ToString(CultureInfo.InvariantCulture), "1 or 2; more bays for more doors");
        return false;
    }

    private bool IsDrawers(FrontDesign design, string path)
    {
        if (design.Drawers < 1)
            problems.Add(path + ".drawers", "There is at least one drawer.", design.Drawers.ToString(CultureInfo.InvariantCulture), "1 or more");
        if (design.Openings != 1)
            problems.Add(path + ".openings", "Drawers close one opening.", design.Openings.ToString(CultureInfo.InvariantCulture), "1");
        if (design.Heights.Count > design.Drawers)
            problems.Add(path + ".heights", "There are more heights than drawers.", design.Heights.Count.ToString(CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"at most {design.Drawers}"));
        return design.Drawers >= 1 && design.Openings == 1 && design.Heights.Count <= design.Drawers;
    }

    private bool IsFree(FrontSpan span, List<FrontSpan> others, string path)
    {
        if (others.Find(o => o.First <= span.Last && span.First <= o.Last) is not { } other)
            return true;
        problems.Add(path + ".opening", "Two fronts close one opening.", string.Create(CultureInfo.InvariantCulture, $"opening {span.First + 1}"), $"an opening that {other.Path} does not close");
        return false;
    }

    private void CheckSize(CaseFigures box, FrontSpan span)
    {
        if (run.Frame is { MidRail: null } && (span.First > 0 || span.Last < box.Fixed.Count))
        {
            problems.Add(run.Path + ".faceFrame.midRail", "A front ends at a fixed shelf, where the frame needs a rail.", "nothing", "a board material for the rail, or fronts that close every opening");
            return;
        }

        if (span.IsInset && span.Material.Thickness - run.Tf >= run.ShelfFront - run.BackFront)
            problems.Add(span.Path + ".material", "The inset front is thicker than the case is deep.", span.Material.Thickness, $"less than {problems.Say(run.ShelfFront - run.BackFront)}");
        CheckBlind(box, span);
        for (var bay = 0; bay < box.Bays; bay++)
        {
            if (span.IsDrawers)
                CheckDrawers(box, span, bay);
            else
                CheckLeaf(new(box, span, bay, 0));
        }
    }

    /// <summary>In a blind corner one door hangs on the side away from the corner, and no drawer comes out.</summary>
    private void CheckBlind(CaseFigures box, FrontSpan span)
    {
        foreach (var blind in box.Blind)
        {
            var away = blind.AtRight ? HingeSide.Left : HingeSide.Right;
            if (span.IsDrawers)
                problems.Add(span.Path + ".kind", $"Case {box.Number} reaches into a blind corner, where no drawer comes out.", "drawers", "a door, or a column with an interior of its own");
            else if (box.Bays > 1)
                problems.Add(span.Path, $"Case {box.Number} reaches into a blind corner and has several bays.", box.Bays.ToString(CultureInfo.InvariantCulture), "one bay in the end case");
            else if (span.Design.Leaves != 1 || span.Design.Hinged != away)
                problems.Add(span.Path + ".hinged", "The door of a blind corner hangs on the side away from the corner.", span.Design.Leaves == 2 ? "a pair" : span.Design.Hinged.ToString(), $"one leaf, hinged {(away == HingeSide.Left ? "left" : "right")}");
        }
    }

    private void CheckLeaf(DoorLeaf leaf)
    {
        problems.Least(leaf.Span.Path, $"width of a door of case {leaf.Box.Number}", leaf.Width.Result, s_narrowestLeaf);
        problems.Least(leaf.Span.Path, $"height of a door of case {leaf.Box.Number}", leaf.Height.Result, s_narrowestLeaf);
    }

    private void CheckDrawers(CaseFigures box, FrontSpan span, int bay)
    {
        for (var i = 0; i < span.Design.Drawers; i++)
        {
            var drawer = new DrawerFigures(box, span, bay, i);
            problems.Positive(span.Path + ".heights", "height left for a drawer front", drawer.FrontHeight.Result);
            problems.Least(span.Path, $"height of a drawer box of case {box.Number}", drawer.BoxHeight.Exact, s_lowestBox);
            problems.Least(span.Path, $"width of a drawer box of case {box.Number}", drawer.BoxWidth.Exact, s_narrowestLeaf);
            SlidePackers.Check(drawer, problems);
            if (drawer.SlideLength is null)
                problems.Add(run.Path + ".depth", "The case is too shallow for the shortest drawer slide.", drawer.ClearDepth, $"a clear depth of {problems.Say(SlideLengths.Longest(Length.FromMillimetres(300), run.Job.Units)!.Value + run.Gaps.BehindBox)} or more");
        }

        var left = new FrontField(box, span, bay).Up(span.Design.Drawers).Exact - span.Design.Heights.Aggregate(Length.Zero, (sum, h) => sum + h);
        if (span.Design.Heights.Count == span.Design.Drawers && left.Abs() >= run.Step)
            problems.Add(span.Path + ".heights", "The drawer fronts do not add up to the field.", span.Design.Heights.Aggregate(Length.Zero, (sum, h) => sum + h), $"{problems.Say(new FrontField(box, span, bay).Up(span.Design.Drawers).Exact)} in all, or one height left out");
    }

    private Material? Sheet(string? id, string path)
    {
        var material = run.Job.Stock.Materials.FirstOrDefault(m => m.Id == id && !m.IsBoard);
        if (material is null)
            problems.Add(path, "There is no such sheet material.", id is null ? "nothing" : $"'{id}'", "one of " + string.Join(", ", run.Job.Stock.Materials.Where(m => !m.IsBoard).Select(m => m.Id)));
        return material;
    }
}
