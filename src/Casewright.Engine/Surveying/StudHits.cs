using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>The studs that one nailer of a case can be screwed to.</summary>
/// <param name="Case">Id of the case.</param>
/// <param name="Nailer">Id of the nailer.</param>
/// <param name="Height">Height of its middle.</param>
/// <param name="Studs">Centres of the studs behind it, where a screw may go.</param>
/// <param name="Kept">Studs left alone because a pipe or cable lies there.</param>
/// <param name="Gaps">Gap between nailer and wall at each of <paramref name="Studs"/>: what is packed out before the screw is drawn tight.</param>
public sealed record StudHits(string Case, string Nailer, Length Height, ValueList<Length> Studs, ValueList<Length> Kept, ValueList<Length> Gaps)
{
    /// <summary>Least distance of a screw from the end of a nailer: 20 mm (common practice, no source).</summary>
    public static Length FromEnd { get; } = Length.FromMillimetres(20);

    /// <summary>Nothing is screwed nearer than this to a known pipe or cable: 50 mm (common practice, no source; local codes come first).</summary>
    public static Length FromPipe { get; } = Length.FromMillimetres(50);

    /// <summary>The nailers of a case from the top down; nothing without known studs.</summary>
    internal static IEnumerable<StudHits> Of(CaseBox box, IEnumerable<Part> parts, WallSurvey survey)
    {
        if (survey.Studs.Count == 0)
            yield break;
        var plane = new WallPlane(survey);
        foreach (var nailer in parts.Where(p => p.Role == PartRole.Nailer).OrderByDescending(p => ShelfReader.Box(p).High.Y).ThenBy(p => p.Id, StringComparer.Ordinal))
        {
            var (low, high) = ShelfReader.Box(nailer);
            var behind = survey.Studs.Where(x => x >= low.X + FromEnd && x <= high.X - FromEnd).Order().ToList();
            var kept = behind.Where(x => survey.Features.Any(f => f.Kind == FeatureKind.Pipe && IsNear(f, x, low.Y, high.Y))).ToValueList();
            var free = behind.Where(x => !kept.Contains(x)).ToValueList();
            var height = low.Y + ((high.Y - low.Y) / 2);
            yield return new(box.Id, nailer.Id, height, free, kept, free.Select(x => plane.Behind(x, height)).ToValueList());
        }
    }

    private static bool IsNear(WallFeature pipe, Length x, Length low, Length high) =>
        x > pipe.X - FromPipe && x < pipe.X + pipe.Width + FromPipe && high > pipe.Y - FromPipe && low < pipe.Y + pipe.Height + FromPipe;
}
