using System.Globalization;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using static Casewright.App.Web.Components.Elevation.ElevationPicture;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>A mark on the drawing where findings are.</summary>
/// <param name="X">Middle, mm of the drawing.</param>
/// <param name="Y">Middle, mm of the drawing, downwards.</param>
/// <param name="Severity">The gravest of them.</param>
/// <param name="Sign">What stands in the mark.</param>
/// <param name="Words">What it says.</param>
/// <param name="Subject">Where it leads: the part when it is about one part alone, else the case.</param>
public sealed record FindingSpot(double X, double Y, Severity Severity, string Sign, string Words, string Subject);

/// <summary>Sets findings where they are: on their part when a case has only one place of trouble, at the foot of the case when it has several.</summary>
public static class FindingMarks
{
    /// <summary>The marks of a drawing.</summary>
    /// <param name="picture">The drawing.</param>
    /// <param name="casework">Its layout.</param>
    /// <param name="findings">What was found; only stops and cautions are marked.</param>
    /// <param name="u">Millimetres of the room in one pixel.</param>
    public static IEnumerable<FindingSpot> Of(ElevationPicture picture, Casework casework, IReadOnlyList<Finding> findings, double u)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(casework);
        ArgumentNullException.ThrowIfNull(findings);
        var cases = picture.Cases.ToDictionary(c => c.Id, StringComparer.Ordinal);
        var owners = casework.Parts.ToDictionary(p => p.Id, p => p.Case, StringComparer.Ordinal);
        var parts = picture.Parts.ToDictionary(p => p.Part.Id, StringComparer.Ordinal);
        var grave = findings
            .Where(f => f.Severity is Severity.Stop or Severity.Caution)
            .Select(f => (Finding: f, Part: f.Subject.Split('/')[0]))
            .GroupBy(f => owners.GetValueOrDefault(f.Part, f.Finding.Subject), StringComparer.Ordinal)
            .Where(g => cases.ContainsKey(g.Key));
        foreach (var place in grave)
        {
            var box = cases[place.Key];
            var worst = place.MaxBy(p => p.Finding.Severity).Finding;
            var about = place.Select(p => p.Part).Distinct(StringComparer.Ordinal).ToList();
            var count = place.Count();
            var (x, y) = (Mm(box.X) + (Mm(box.Width) / 2), picture.WallHeight - Mm(box.Y) - (24 * u));
            if (about is [var only] && parts.TryGetValue(only, out var part))
                (x, y) = (part.X + (part.Width / 2), picture.WallHeight - part.Y - (part.Height / 2) + (part.Height < 40 * u ? 16 * u : 0));
            yield return new(x, y, worst.Severity, count > 1 ? count.ToString(CultureInfo.InvariantCulture) : "!",
                count > 1 ? $"{count} findings in case {box.Id}, first: {worst.Message}" : worst.Message, about is [var single] ? single : box.Id);
        }
    }
}
