using System.Globalization;
using Casewright.Engine.Layout;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>
/// Cases against what is on their wall, and end sides against what is on the wall beside them. A case across a door cannot be built; across a
/// window, radiator, register or beam it must be thought over; an outlet that a part is cut out round is in order.
/// </summary>
internal static class FeaturesInTheWay
{
    /// <summary>A run through a door is a problem of the job; one that bridges it above the casing is none.</summary>
    public static void CheckDoors(Job job, IEnumerable<CaseBox> cases, ProblemList problems)
    {
        foreach (var (box, _, feature, _) in Meetings(job, cases).Where(m => m.Feature.Kind == FeatureKind.Door))
        {
            var run = job.Runs.Select((r, i) => (r, i)).First(r => r.r.Id == box.Run);
            problems.Add(
                string.Create(CultureInfo.InvariantCulture, $"runs[{run.i}]"),
                $"Run {run.r.Name} goes through {feature.Name}.",
                $"case {box.Id} from {problems.Say(box.X)} to {problems.Say(box.X + box.Width)}",
                $"cases left of {problems.Say(feature.OuterLeft)}, right of {problems.Say(feature.OuterRight)} or above {problems.Say(feature.OuterTop)}, casing included");
        }
    }

    /// <summary>What else cases stand in front of, as findings.</summary>
    public static IEnumerable<Finding> Find(Job job, Casework casework)
    {
        var parts = casework.Parts.ToLookup(p => p.Case, StringComparer.Ordinal);
        var met = Meetings(job, casework.Cases).Concat(Beside(job, casework, parts));
        return met
            .Where(m => m.Feature.Kind is not (FeatureKind.Door or FeatureKind.Pipe) && !m.Feature.Moves)
            .Select(m => CutIn(job, parts[m.Box.Id].ToList(), m.Wall, m.Feature) is var (part, cut) ? Cut(job, m, part, cut) : Of(job, m));
    }

    /// <summary>The part of a case that has a cut-out for a feature; null when none has.</summary>
    private static (Part Part, CutOut Cut)? CutIn(Job job, List<Part> parts, Wall wall, WallFeature feature)
    {
        if (!CutOuts.IsCutOut(feature))
            return null;
        foreach (var part in parts)
        {
            if (CutOuts.Of(part, parts, job, wall, feature) is { } cut && part.Machining.Contains(cut))
                return (part, cut);
        }

        return null;
    }

    private static Finding Cut(Job job, Meeting met, Part part, CutOut cut)
    {
        string Say(Length length) => LengthFormat.Usual(length, job.Units);
        var words = $"Case {met.Box.Id} stands in front of {met.Feature.Name} ({met.Path}); {part.Id} is cut out {Say(cut.LengthX)} by {Say(cut.LengthY)} for it, {Say(cut.X)} from its {(part.Role == PartRole.Side ? "foot" : "lower end")}.";
        var advice = met.Feature.Kind == FeatureKind.Register
            ? "Keep the cut-out free of what stands before it; doors before it need a grille as large. Never close a return."
            : "Have the outlet brought forward to the face of the part by licensed people. Local codes come first.";
        return Make(met, Severity.Pass, words, advice);
    }

    private static Finding Of(Job job, Meeting met)
    {
        var (severity, why, advice) = met.Feature.Kind switch
        {
            FeatureKind.Window => (Severity.Stop, "stands in front of", "Let the run stop beside the casing, stay below the stool, or bridge over it."),
            FeatureKind.Radiator => (Severity.Stop, "stands in front of", "Leave the radiator free, or have it moved by licensed people and mark it as moved."),
            FeatureKind.Register => (Severity.Stop, "covers", "Bring the air out through the toe space or a grille as large as the register; never close a return."),
            FeatureKind.Beam => (Severity.Stop, "meets", "Let the case stop at the beam, or notch it round and scribe it."),
            FeatureKind.Switch => (Severity.Stop, "covers", "A switch must stay in reach: have it moved by licensed people, or leave it outside the run."),
            _ => (Severity.Caution, "covers", "No single part can be cut out round it where it is: move the shelf, bay or nailer that meets it, or have it moved or made safe by licensed people. Local codes come first."),
        };
        var (feature, box) = (met.Feature, met.Box);
        return Make(
            met, severity, $"Case {box.Id} {why} {feature.Name} ({met.Path}), {LengthFormat.Usual(feature.X, job.Units)} along the wall and {LengthFormat.Usual(feature.Y, job.Units)} up.", advice);
    }

    private static Finding Make(Meeting met, Severity severity, string message, string advice) => new()
    {
        Check = "survey-openings",
        Severity = severity,
        Subject = met.Box.Id,
        Message = message,
        Source = "Plain geometry",
        Standing = Standing.Arithmetic,
        Advice = advice,
    };

    private static IEnumerable<Meeting> Meetings(Job job, IEnumerable<CaseBox> cases)
    {
        foreach (var box in cases)
        {
            foreach (var (wall, feature, path) in Features(job).Where(f => f.Wall.Id == box.Wall && Overlaps(box, f.Feature)))
                yield return new(box, wall, feature, path);
        }
    }

    /// <summary>What end sides cover on the wall at the end of their run.</summary>
    private static IEnumerable<Meeting> Beside(Job job, Casework casework, ILookup<string, Part> parts)
    {
        foreach (var box in casework.Cases)
        {
            foreach (var (wall, feature, path) in Features(job).Where(f => f.Wall.Id != box.Wall))
            {
                if (parts[box.Id].Any(side => side.Role == PartRole.Side && Covers(side, job, wall, feature)))
                    yield return new(box, wall, feature, path);
            }
        }
    }

    private static bool Covers(Part side, Job job, Wall wall, WallFeature feature)
    {
        if (CutOuts.BesideEnd(side, job, wall, feature) is not var (from, to))
            return false;
        var (low, high) = (side.LowCorner, side.HighCorner);
        return from < high.Z && to > low.Z && feature.Y < high.Y && feature.Y + feature.Height > low.Y;
    }

    private static IEnumerable<(Wall Wall, WallFeature Feature, string Path)> Features(Job job) =>
        from wall in job.Walls.Select((w, i) => (w, i))
        where wall.w.Survey is not null
        from feature in wall.w.Survey!.Features.Select((f, i) => (f, i))
        select (wall.w, feature.f, string.Create(CultureInfo.InvariantCulture, $"walls[{wall.i}].survey.features[{feature.i}]"));

    private static bool Overlaps(CaseBox box, WallFeature feature) =>
        box.X < feature.OuterRight && feature.OuterLeft < box.X + box.Width && box.Y < feature.OuterTop && feature.OuterBottom < box.Y + box.Height;

    private readonly record struct Meeting(CaseBox Box, Wall Wall, WallFeature Feature, string Path);
}
