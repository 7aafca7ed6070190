using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Splicing.Options;

/// <summary>Why a part cannot be made.</summary>
/// <param name="Part">The part.</param>
/// <param name="Path">Where in the job file it can be mended.</param>
/// <param name="Reason">Words that follow the part's name and a colon.</param>
/// <param name="Found">What was found at the path.</param>
/// <param name="Accepted">What would mend it.</param>
internal sealed record PartFailure(Part Part, string Path, string Reason, string Found, string Accepted)
{
    /// <summary>One problem for parts of one size that fail alike, with the reason of the first; in the order of the first of each.</summary>
    public static IEnumerable<Problem> Problems(IEnumerable<PartFailure> failures) =>
        failures.GroupBy(f => (f.Path, f.Found, f.Accepted, f.Part.Length, f.Part.Width)).Select(g =>
            new Problem(g.Key.Path, $"{Words.Alike(g.First().Part.Name, g.Count())}: {g.First().Reason}.", g.Key.Found, g.Key.Accepted));
}
