using Casewright.Engine.Editing;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>What a dimension of the drawing changes when a figure is typed over it.</summary>
/// <param name="Name">What it is, for screen readers and the history.</param>
/// <param name="Apply">The edit that gives it a length.</param>
public sealed record DimensionTarget(string Name, Func<Job, Casework, Length, Job> Apply)
{
    /// <summary>Width of the wall.</summary>
    public static DimensionTarget WallWidth(string wall, string name) =>
        new($"width of {name}", (job, _, to) => job with { Walls = [.. job.Walls.Select(w => w.Id == wall ? w with { Width = to } : w)] });

    /// <summary>Height of the ceiling.</summary>
    public static DimensionTarget WallHeight(string wall, string name) =>
        new($"height of {name}", (job, _, to) => job with { Walls = [.. job.Walls.Select(w => w.Id == wall ? w with { Height = to } : w)] });

    /// <summary>Outer width of a case.</summary>
    public static DimensionTarget CaseWidth(CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(box);
        return new($"width of case {box.Id}", (job, casework, to) => ColumnEditing.SetWidth(job, casework, box.Run, box.Column, to));
    }

    /// <summary>Height of the base.</summary>
    public static DimensionTarget BaseHeight(string run) => new($"base height of run {run}", (job, _, to) => RunEditing.SetBaseHeight(job, run, to));

    /// <summary>Height of a case, base not counted.</summary>
    public static DimensionTarget CaseHeight(CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(box);
        return new($"height of case {box.Id}", (job, _, to) => SetHeight(job, box, to));
    }

    /// <summary>Height of a fixed shelf, told as its distance from the level below.</summary>
    public static DimensionTarget Opening(CaseBox box, Length below, Length shelf)
    {
        ArgumentNullException.ThrowIfNull(box);
        return new($"height under a fixed shelf of case {box.Id}", (job, casework, to) => ShelfEditing.MoveFixed(job, casework, box, shelf, below + to, everywhere: false));
    }

    /// <summary>A case is as high as its tier says; the topmost one ends where the head of the run says.</summary>
    private static Job SetHeight(Job job, CaseBox box, Length to) => RunEditing.Change(job, box.Run, run =>
    {
        if (run.Tiers[box.Tier].Height is not null)
            return run with { Tiers = [.. run.Tiers.Select((t, i) => i == box.Tier ? t with { Height = to } : t)] };
        var grown = to - box.Height;
        return run.Head.Height is { } top
            ? run with { Head = run.Head with { Height = top + grown } }
            : run with { Head = run.Head with { Gap = (run.Head.Gap ?? Length.Zero) - grown } };
    });
}
