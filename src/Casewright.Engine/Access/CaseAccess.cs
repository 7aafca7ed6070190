using Casewright.Model.Collections;
using Casewright.Model.Parts;

namespace Casewright.Engine.Access;

/// <summary>Getting one case in and up.</summary>
public sealed record CaseAccess
{
    /// <summary>The case.</summary>
    public required CaseBox Case { get; init; }

    /// <summary>Mass without loose shelves, in kg.</summary>
    public required double Mass { get; init; }

    /// <summary>People it takes at the shop's mass for one person; at least 1.</summary>
    public required int People { get; init; }

    /// <summary>Ways to stand it up under the ceiling, the easiest first.</summary>
    public required ValueList<StandingUp> Standing { get; init; }

    /// <summary>Every narrow place on the way in, in its order; empty when there is none, null when nobody has looked.</summary>
    public ValueList<PassageFit>? Passages { get; init; }

    /// <summary>What to do about what fails, in the order in which one would try it; empty when nothing does.</summary>
    public required ValueList<string> Advice { get; init; }

    /// <summary>The way to stand it up: the first that passes, else the one that lacks least.</summary>
    public StandingUp Best => Standing.FirstOrDefault(s => s.Passes) ?? Standing.MinBy(s => s.Need - s.Have)!;

    /// <summary>The tightest place on the way in; null without one.</summary>
    public PassageFit? Tightest => Passages?.MinBy(p => p.Spare);

    /// <summary>Whether it gets in and up.</summary>
    public bool Passes => Best.Passes && (Passages?.All(p => p.Passes) ?? true);
}
