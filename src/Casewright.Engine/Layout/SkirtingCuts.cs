using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Layout;

/// <summary>
/// Sides that reach the floor are notched at the foot of their rear edge round a skirting that stays, with the play of a cut-out; end panels and
/// rear lippings, which are fitted to the wall, are cut round it on site.
/// </summary>
internal static class SkirtingCuts
{
    /// <summary>The parts with their notches.</summary>
    public static IEnumerable<Part> In(IReadOnlyList<Part> parts, Job job)
    {
        var staying = job.Walls.Where(w => w.Survey?.Skirting is { Stays: true }).ToDictionary(w => w.Id, w => w.Survey!.Skirting!, StringComparer.Ordinal);
        var hung = job.Runs.Where(r => r.Base.Kind == BaseKind.Hung).Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        return staying.Count == 0 ? parts : parts.Select(p => staying.TryGetValue(p.Place.Wall, out var skirting) && !hung.Contains(p.Run) ? Cut(p, skirting, job) : p);
    }

    private static Part Cut(Part part, WallMoulding skirting, Job job)
    {
        var low = part.LowCorner;
        var up = skirting.Height + CutOuts.Play - low.Y;
        var into = skirting.Projection + CutOuts.Play - low.Z;
        if (up <= Length.Zero || into <= Length.Zero || up >= part.Length)
            return part;
        if (part.Role == PartRole.Side && into < part.Width)
            return part with { Machining = [.. part.Machining, new Notch("skirting", Length.Zero, part.Width - into, up, into)] };
        return part.FitOnSite is { } fit && part.Role is PartRole.EndPanel or PartRole.Nosing && part.Place.AlongLength == Axis.Up
            ? part with { FitOnSite = $"{fit}, and cut round the skirting, {LengthFormat.Usual(skirting.Height, job.Units)} high and {LengthFormat.Usual(skirting.Projection, job.Units)} out" }
            : part;
    }
}
