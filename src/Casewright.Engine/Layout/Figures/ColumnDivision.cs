using System.Globalization;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Figures;

/// <summary>
/// Divides a run's width into columns and bays: what is left after fillers, panels and all uprights is shared equally, and the
/// widths of the columns add up exactly to the width between the ends.
/// </summary>
internal sealed class ColumnDivision(RunFigures run, ProblemList problems)
{
    private readonly Length _between = run.CasesRight - run.CasesLeft;
    private readonly DerivationInput _s = new("S", $"width between the ends of run {run.Run.Name}", run.CasesRight - run.CasesLeft);
    private readonly DerivationInput _t = Symbols.Thickness(run);

    /// <summary>The columns from left to right; empty when there are problems, which the list then holds.</summary>
    public IReadOnlyList<ColumnSpan> Divide()
    {
        if (_between <= Length.Zero)
        {
            problems.Add(run.Path + ".width", "Fillers and panels leave no width for cases.", run.Width, $"more than {problems.Say(run.Left.Taken + run.Right.Taken)}");
            return [];
        }

        if (run.Run.Columns.Count > 0)
        {
            if (run.Run.Division is null)
                return FromColumns();
            problems.Add(run.Path + ".division", "The run is divided twice.", "a division and columns", "either of them");
            return [];
        }

        if (run.Run.Division is { } division)
            return Equally(division);
        problems.Add(run.Path + ".division", "Nothing says how the run is divided.", "neither division nor columns", "a number of bays, a widest clear bay, or columns");
        return [];
    }

    private IReadOnlyList<ColumnSpan> Equally(BayDivision division)
    {
        var path = run.Path + ".division";
        if (division.BaysPerCase < 1)
        {
            problems.Add(path + ".baysPerCase", "A case has at least one bay.", Text(division.BaysPerCase), "1 or more");
            return [];
        }

        if (division.Bays is null == division.WidestClear is null)
        {
            problems.Add(path, "The division needs either a number of bays or a widest clear bay.", division.Bays is null ? "neither" : "both", "exactly one of bays and widestClear");
            return [];
        }

        var bays = division.Bays ?? FewestBays(division.WidestClear!.Value, division.BaysPerCase, path);
        if (bays is null)
            return [];
        if (bays < 1)
        {
            problems.Add(path + ".bays", "A run has at least one bay.", Text(bays.Value), "1 or more");
            return [];
        }

        var perColumn = Enumerable.Range(0, Cases(bays.Value, division.BaysPerCase))
            .Select(i => Math.Min(division.BaysPerCase, bays.Value - (i * division.BaysPerCase)))
            .ToArray();
        var clear = ClearBay(bays.Value, bays.Value + perColumn.Length);
        if (clear <= Length.Zero)
        {
            problems.Add(path + (division.Bays is null ? ".widestClear" : ".bays"), "The uprights alone are wider than the run.", Text(bays.Value) + " bays", $"fewer bays: {problems.Say(_between)} is left for them and their uprights");
            return [];
        }

        var rule = Shared(_s, bays.Value, bays.Value + perColumn.Length, clear);
        return Place([.. perColumn.Select((n, i) => new Wanted(n, null, path, null, i == perColumn.Length - 1))], clear, rule);
    }

    private static int Cases(int bays, int perCase) => (bays + perCase - 1) / perCase;

    private Length ClearBay(int bays, int uprights) => (_between - (run.T * uprights)) / bays;

    private int? FewestBays(Length widest, int perCase, string path)
    {
        if (widest <= Length.Zero)
        {
            problems.Positive(path + ".widestClear", "widest clear bay", widest);
            return null;
        }

        // With n bays at least n + 1 and at most 2n uprights stand in the run: the search begins at the fewest possible.
        var bays = Math.Max(1, _between / (widest + (run.T * 2)));
        if (bays > MostBays)
        {
            problems.Add(path + ".widestClear", "This makes too many bays.", widest, $"a clear bay that gives at most {Text(MostBays)} bays");
            return null;
        }

        var count = (int)bays;
        while (ClearBay(count, count + Cases(count, perCase)) > widest)
            count++;
        return count;
    }

    private const int MostBays = 10_000;

    private IReadOnlyList<ColumnSpan> FromColumns()
    {
        var columns = run.Run.Columns;
        var before = problems.All.Count;
        for (var i = 0; i < columns.Count; i++)
        {
            if (columns[i].Bays < 1)
                problems.Add(ColumnPath(i) + ".bays", "A column has at least one bay.", Text(columns[i].Bays), "1 or more");
            else if (columns[i].Width is { } width && width <= run.T * (columns[i].Bays + 1))
                problems.Add(ColumnPath(i) + ".width", "The uprights alone are wider than this column.", width, $"more than {problems.Say(run.T * (columns[i].Bays + 1))}");
        }

        if (problems.All.Count > before)
            return [];
        return Share(columns);
    }

    private IReadOnlyList<ColumnSpan> Share(ValueList<ColumnDesign> columns)
    {
        var given = columns.Aggregate(Length.Zero, (sum, c) => sum + (c.Width ?? Length.Zero));
        var open = columns.Where(c => c.Width is null).ToArray();
        var rest = _between - given;
        if (open.Length == 0 && rest != Length.Zero)
        {
            problems.Add(run.Path + ".columns", "The columns do not add up to the width between the ends of the run.", given, $"{problems.Say(_between)}, or one column without a width");
            return [];
        }

        var bays = open.Sum(c => c.Bays);
        var uprights = bays + open.Length;
        if (open.Length > 0 && rest <= run.T * uprights)
        {
            problems.Add(run.Path + ".columns", "The columns with a width leave too little for the others.", given, $"less than {problems.Say(_between - (run.T * uprights))}");
            return [];
        }

        var clear = bays == 0 ? Length.Zero : (rest - (run.T * uprights)) / bays;
        var left = new DerivationInput("S", "width between the ends less the columns whose width is given", rest);
        var rule = bays == 0 ? null : Shared(left, bays, uprights, clear);
        var last = columns.Count - 1;
        while (last > 0 && columns[last].Width is not null)
            last--;
        return Place([.. columns.Select((c, i) => new Wanted(c.Bays, c.Width, ColumnPath(i), c, i == last))], clear, rule);
    }

    private string ColumnPath(int column) => string.Create(CultureInfo.InvariantCulture, $"{run.Path}.columns[{column}]");

    private Derivation Shared(DerivationInput width, int bays, int uprights, Length clear) =>
        new("clear bay", string.Create(CultureInfo.InvariantCulture, $"(S − {uprights}t)/{bays}"), [width, _t], clear, clear);

    /// <summary>A column before it has its place. The last sharing one takes the nanometres that do not divide.</summary>
    private sealed record Wanted(int Bays, Length? Width, string Path, ColumnDesign? Design, bool TakesRest);

    private ColumnSpan[] Place(Wanted[] wanted, Length clear, Derivation? shared)
    {
        var shares = wanted.Where(w => w.Width is null).ToArray();
        var rest = _between - wanted.Aggregate(Length.Zero, (sum, w) => sum + (w.Width ?? SharedWidth(w.Bays, clear)));
        var spans = new ColumnSpan[wanted.Length];
        var x = run.CasesLeft;
        for (var i = 0; i < wanted.Length; i++)
        {
            spans[i] = Span(wanted[i], i, x, clear, shared, shares.Length > 0 && wanted[i].TakesRest ? rest : Length.Zero);
            x += spans[i].Width;
        }

        for (var i = 0; i < spans.Length; i++)
            spans[i] = spans[i] with { OpenOnLeft = i > 0 && spans[i - 1].Open, OpenOnRight = i < spans.Length - 1 && spans[i + 1].Open };
        return spans;
    }

    private Length SharedWidth(int bays, Length clear) => (clear * bays) + (run.T * (bays + 1));

    private ColumnSpan Span(Wanted wanted, int index, Length x, Length clear, Derivation? shared, Length rest)
    {
        if (wanted.Width is { } width)
        {
            var own = (width - (run.T * (wanted.Bays + 1))) / wanted.Bays;
            var w = new DerivationInput("W", $"width of the column ({wanted.Path}.width)", width);
            return new()
            {
                Index = index,
                X = x,
                Width = width,
                Bays = wanted.Bays,
                Clear = own,
                Path = wanted.Path,
                Design = wanted.Design,
                Derivations = [Rule.Of(w).As("case width"), new("clear bay", string.Create(CultureInfo.InvariantCulture, $"(W − {wanted.Bays + 1}t)/{wanted.Bays}"), [w, _t], own, own)],
            };
        }

        var rule = Rule.Of(new("c", "clear bay", clear), wanted.Bays).Plus(_t, wanted.Bays + 1);
        if (rest != Length.Zero)
            rule = rule.Plus(new("o", "left over where the width does not divide by whole nanometres", rest));
        return new()
        {
            Index = index,
            X = x,
            Width = rule.Exact,
            Bays = wanted.Bays,
            Clear = clear,
            Path = wanted.Path,
            Design = wanted.Design,
            Derivations = [rule.As("case width"), shared!],
        };
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
