using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>Cases against what is on their wall. A case across a door cannot be built; across a window, radiator, register or beam it must be thought over.</summary>
internal static class FeaturesInTheWay
{
    /// <summary>A run through a door is a problem of the job; one that bridges it above the casing is none.</summary>
    public static void CheckDoors(Job job, IEnumerable<CaseBox> cases, ProblemList problems)
    {
        foreach (var (box, feature, _) in Meetings(job, cases).Where(m => m.Feature.Kind == FeatureKind.Door))
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
    public static IEnumerable<Finding> Find(Job job, IEnumerable<CaseBox> cases) => Meetings(job, cases)
        .Where(m => m.Feature.Kind is not (FeatureKind.Door or FeatureKind.Pipe) && !m.Feature.Moves)
        .Select(m => Of(job, m.Box, m.Feature, m.Path));

    private static Finding Of(Job job, CaseBox box, WallFeature feature, string path)
    {
        var (severity, why, advice) = feature.Kind switch
        {
            FeatureKind.Window => (Severity.Stop, "stands in front of", "Let the run stop beside the casing, stay below the stool, or bridge over it."),
            FeatureKind.Radiator => (Severity.Stop, "stands in front of", "Leave the radiator free, or have it moved by licensed people and mark it as moved."),
            FeatureKind.Register => (Severity.Stop, "covers", "Bring the air out through the toe space or a grille as large as the register; never close a return."),
            FeatureKind.Beam => (Severity.Stop, "meets", "Let the case stop at the beam, or notch it round and scribe it."),
            FeatureKind.Switch => (Severity.Stop, "covers", "A switch must stay in reach: have it moved by licensed people, or leave it outside the run."),
            _ => (Severity.Caution, "covers", "Cut the back out round it where it stays in reach, or have it moved or made safe by licensed people. Local codes come first."),
        };
        return new()
        {
            Check = "survey-openings",
            Severity = severity,
            Subject = box.Id,
            Message = $"Case {box.Id} {why} {feature.Name} ({path}), {LengthFormat.Usual(feature.X, job.Units)} along the wall and {LengthFormat.Usual(feature.Y, job.Units)} up.",
            Source = "Plain geometry",
            Standing = Standing.Arithmetic,
            Advice = advice,
        };
    }

    private static IEnumerable<(CaseBox Box, WallFeature Feature, string Path)> Meetings(Job job, IEnumerable<CaseBox> cases)
    {
        foreach (var box in cases)
        {
            var wall = job.Walls.Select((w, i) => (w, i)).FirstOrDefault(w => w.w.Id == box.Wall);
            if (wall.w?.Survey is not { } survey)
                continue;
            for (var i = 0; i < survey.Features.Count; i++)
            {
                if (Overlaps(box, survey.Features[i]))
                    yield return (box, survey.Features[i], string.Create(CultureInfo.InvariantCulture, $"walls[{wall.i}].survey.features[{i}]"));
            }
        }
    }

    private static bool Overlaps(CaseBox box, WallFeature feature) =>
        box.X < feature.OuterRight && feature.OuterLeft < box.X + box.Width && box.Y < feature.OuterTop && feature.OuterBottom < box.Y + box.Height;
}
