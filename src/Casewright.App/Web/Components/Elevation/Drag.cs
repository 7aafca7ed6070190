using System.Globalization;
using Casewright.Engine.Editing;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>Something on the wall that can be moved: the line between two cases, a fixed shelf, the base, the splice line.</summary>
/// <param name="Kind">line, shelf, base or splice.</param>
/// <param name="Run">Id of the run.</param>
/// <param name="Subject">Column of a line; case id and height of a shelf; empty otherwise.</param>
/// <param name="Value">Where it is held, mm of the room.</param>
public sealed record Drag(string Kind, string Run, string Subject, double Value)
{
    /// <summary>The key that the page and the script share.</summary>
    public string Key => $"{Kind}|{Run}|{Subject}";

    /// <summary>The line to the right of a column.</summary>
    public static Drag Line(string run, int column) => new("line", run, column.ToString(CultureInfo.InvariantCulture), 0);

    /// <summary>A fixed shelf, by the height of its upper face.</summary>
    public static Drag Shelf(string run, string box, Length height) =>
        new("shelf", run, box + "@" + height.Nanometres.ToString(CultureInfo.InvariantCulture), 0);

    /// <summary>The base.</summary>
    public static Drag Base(string run) => new("base", run, "", 0);

    /// <summary>The splice line.</summary>
    public static Drag Splice(string run) => new("splice", run, "0", 0);

    /// <summary>The drag behind a key; null when the key is none of ours.</summary>
    public static Drag? Parse(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        var parts = key.Split('|');
        return parts.Length == 3 ? new(parts[0], parts[1], parts[2], 0) : null;
    }

    /// <summary>Whether it moves up and down.</summary>
    public bool IsVertical => Kind != "line";

    /// <summary>The edit that leaves it at <paramref name="to"/>.</summary>
    public Job Apply(Job job, Casework casework, Length to)
    {
        ArgumentNullException.ThrowIfNull(casework);
        switch (Kind)
        {
            case "line":
                var column = int.Parse(Subject, CultureInfo.InvariantCulture);
                var box = casework.Cases.First(c => c.Run == Run && c.Column == column && c.Tier == 0);
                return ColumnEditing.MoveLine(job, casework, Run, column, to - (box.X + box.Width));
            case "shelf":
                var at = Subject.LastIndexOf('@');
                var shelfCase = casework.Cases.First(c => c.Id == Subject[..at]);
                var from = Length.FromNanometres(long.Parse(Subject[(at + 1)..], CultureInfo.InvariantCulture));
                return ShelfEditing.MoveFixed(job, casework, shelfCase, from, to, everywhere: false);
            case "base":
                return RunEditing.SetBaseHeight(job, Run, to);
            default:
                return RunEditing.SetSpliceHeight(job, Run, to);
        }
    }

    /// <summary>What the history says of it.</summary>
    public string Words => Kind switch
    {
        "line" => $"moved the line right of case {int.Parse(Subject, CultureInfo.InvariantCulture) + 1}",
        "shelf" => "moved a fixed shelf",
        "base" => "base height",
        _ => "splice height",
    };
}
