using System.Globalization;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Figures;

/// <summary>Heights of fixed shelves: as given, or at equal openings h = (H − 2t − m·t)/(m + 1).</summary>
internal static class FixedShelfHeights
{
    /// <summary>The shelves from the bottom up; problems go to the list.</summary>
    public static ValueList<FixedLevel> Find(CaseFigures box, ProblemList problems)
    {
        var interior = box.Interior;
        if (interior.Fixed < 0)
            problems.Add(box.InteriorPath + ".fixed", "The number of fixed shelves is negative.", Text(interior.Fixed), "0 or more");
        else if (interior.Fixed > 0 && interior.FixedAt.Count > 0)
            problems.Add(box.InteriorPath, "Fixed shelves are given twice.", "a number and heights", "either fixed or fixedAt");
        else if (interior.Fixed > 0)
            return Equal(box, problems);
        else
            return AtHeights(box, problems);
        return [];
    }

    private static ValueList<FixedLevel> Equal(CaseFigures box, ProblemList problems)
    {
        var count = box.Interior.Fixed;
        var open = box.ClearHeight - (box.Run.T * count);
        if (open <= Length.Zero)
        {
            problems.Add(box.InteriorPath + ".fixed", "The shelves alone are higher than the case.", Text(count), $"fewer shelves: the clear height is {problems.Say(box.ClearHeight)}");
            return [];
        }

        var b = new DerivationInput("b", $"upper face of the bottom of case {box.Number}", box.BottomUpper);
        var h = new DerivationInput("h", $"clear height of case {box.Number}", box.ClearHeight);
        var t = Symbols.Thickness(box.Run);
        var levels = new FixedLevel[count];
        for (var k = 1; k <= count; k++)
        {
            // Each height is counted from the bottom, so that no rounding is carried from shelf to shelf.
            var exact = box.BottomUpper + Fraction(open, k, count + 1) + (box.Run.T * k);
            var formula = string.Create(CultureInfo.InvariantCulture, $"b + {k}(h − {count}t)/{count + 1} + {k}t");
            var height = exact.RoundTo(box.Run.Step);
            levels[k - 1] = new(height, new("height of the upper face", formula, [b, h, t], exact, height));
        }

        return levels.ToValueList();
    }

    private static Length Fraction(Length whole, int numerator, int denominator) =>
        Length.FromNanometres((long)((Int128)whole.Nanometres * numerator / denominator));

    private static ValueList<FixedLevel> AtHeights(CaseFigures box, ProblemList problems)
    {
        var heights = box.Interior.FixedAt;
        var floor = box.BottomUpper;
        var levels = new List<FixedLevel>(heights.Count);
        for (var i = 0; i < heights.Count; i++)
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"{box.InteriorPath}.fixedAt[{i}]");
            if (heights[i] - box.Run.T <= floor)
                problems.Add(path, "This shelf leaves no opening below it.", heights[i], $"above {problems.Say(floor + box.Run.T)}, heights ascending");
            else if (heights[i] >= box.TopUnder)
                problems.Add(path, "This shelf is above the opening of its case.", heights[i], $"below {problems.Say(box.TopUnder)}");
            levels.Add(new(heights[i], Rule.Of(new("y", $"height given ({path})", heights[i])).As("height of the upper face")));
            floor = heights[i];
        }

        return levels.ToValueList();
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
