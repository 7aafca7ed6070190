using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Papers.Documents;

/// <summary>What to do at a splice, step by step, for each method and way of holding.</summary>
internal static class SpliceSteps
{
    public static IReadOnlyList<string> Of(SplicePair pair, PlanIndex index)
    {
        var splice = pair.Splice;
        return [.. Prepare(pair, index), .. Dry(splice), .. Close(splice), "cured: in ____ : ____   out ____ : ____", .. Trim(pair, index)];
    }

    private static IEnumerable<string> Prepare(SplicePair pair, PlanIndex index)
    {
        var (part, splice) = (pair.Part, pair.Splice);
        var access = splice.AccessFace == Face.Reference ? part.ReferenceFaceName : part.OppositeFaceName;
        switch (splice.Method)
        {
            case SpliceMethod.LooseTenons or SpliceMethod.TenonsAndConnectors:
                yield return "square both joint ends; check lengths";
                yield return $"mortise both pieces from the {part.ReferenceFaceName.ToUpperInvariant()} face";
                if (splice.Connectors.Count > 0)
                    yield return $"connectors from the {access.ToUpperInvariant()} face only";
                break;
            case SpliceMethod.Spline:
                yield return "square both joint ends; check lengths";
                yield return $"groove both pieces from the {part.ReferenceFaceName.ToUpperInvariant()} face";
                break;
            case SpliceMethod.HalfLap:
                yield return $"lap {index.Figures.Main(pair.Near.AllowanceEnd + pair.Far.AllowanceStart)} long, half the thickness, test on scrap";
                break;
            case SpliceMethod.Scarf:
                yield return $"plane both bevels together, {index.Figures.Main(pair.Near.AllowanceEnd + pair.Far.AllowanceStart)} long";
                break;
            case SpliceMethod.BackedButt:
                yield return "square both joint ends; check lengths";
                yield return $"plate on the {access.ToUpperInvariant()} face only";
                break;
            default:
                yield return "square both joint ends; check lengths";
                break;
        }
    }

    private static IEnumerable<string> Dry(Splice splice) =>
        splice.PairLetter.Length == 0 ? ["dry: triangle closes"] : [$"dry: triangle closes, {splice.PairLetter} meets {splice.PairLetter}"];

    private static IEnumerable<string> Close(Splice splice) => splice.Holding switch
    {
        HoldingMethod.DrawConnectors => ["glue mortises, tenons and ends", "draw connectors; straightedge along edge and face; wipe"],
        HoldingMethod.EndClamps => ["glue; long clamps, one above, one below", "waxed battens across; straightedge along; wipe"],
        HoldingMethod.SpreaderAgainstStop => ["glue; against the stop, spreader reversed from a second stop", "waxed battens across; straightedge along; wipe"],
        HoldingMethod.PinchDogs => ["glue; pinch dogs in hidden edges or face", "waxed battens across; straightedge along; wipe"],
        HoldingMethod.FaceClamps => ["glue both faces; stop at the end against sliding", "waxed cauls; clamp from the middle out; wipe"],
        _ => ["pin or glue to the part that carries it"],
    };

    private static IEnumerable<string> Trim(SplicePair pair, PlanIndex index)
    {
        var (start, end) = Words.EndsOf(pair.Part);
        if (pair.Far.To == pair.Part.Length && pair.Far.AllowanceEnd > Model.Measure.Length.Zero)
            yield return $"trim {end} to {index.Figures.Both(pair.Part.Length)} from {start}";
    }
}
