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
    public static Drag ShelfOf(string run, string box, Length height) =>
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

    /// <summary>Column to the left of a line; -1 for anything else.</summary>
    public int Column => Kind == "line" && int.TryParse(Subject, NumberStyles.None, CultureInfo.InvariantCulture, out var column) ? column : -1;

    /// <summary>The case of a shelf and the height of its upper face; null for anything else.</summary>
    public (string Case, Length Height)? Shelf
    {
        get
        {
            var at = Subject.LastIndexOf('@');
            return Kind == "shelf" && at > 0 && long.TryParse(Subject[(at + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var height)
                ? (Subject[..at], Length.FromNanometres(height))
                : null;
        }
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
                return casework.Cases.FirstOrDefault(c => c.Run == Run && c.Column == Column && c.Tier == 0) is { } box
                    ? ColumnEditing.MoveLine(job, casework, Run, Column, to - (box.X + box.Width))
                    : job;
            case "shelf":
                return Shelf is { } shelf && casework.Cases.FirstOrDefault(c => c.Id == shelf.Case) is { } owner
                    ? ShelfEditing.MoveFixed(job, casework, owner, shelf.Height, to, everywhere: false)
                    : job;
            case "base":
                return RunEditing.SetBaseHeight(job, Run, to);
            default:
                return RunEditing.SetSpliceHeight(job, Run, to);
        }
    }

    /// <summary>What the history says of it.</summary>
    public string Words => Kind switch
    {
        "line" => $"moved the line right of case {Column + 1}",
        "shelf" => "moved a fixed shelf",
        "base" => "base height",
        _ => "splice height",
    };
}
