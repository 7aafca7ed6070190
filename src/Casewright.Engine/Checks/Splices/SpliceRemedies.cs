using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Splices;

/// <summary>What would make a splice pass the check that it fails: other places and other methods, each tried by that check.</summary>
internal static class SpliceRemedies
{
    // Usual proportions: lap 4 thicknesses, scarf 1:8, plate 8 thicknesses on either side (reference figures of the splice model).
    private const int LapThicknesses = 4;
    private const int ScarfSlope = 8;
    private const int PlateThicknesses = 8;

    /// <summary>Ways that pass, as parts of a sentence; empty when none does.</summary>
    public static List<string> Ways(CheckContext context, SplicedPart spliced, Func<SplicedPart, bool> passes) =>
        [.. Moves(context, spliced, passes), .. Methods(context, spliced, passes)];

    /// <summary>Other methods that pass at the same place, the simplest first.</summary>
    public static IEnumerable<string> Methods(CheckContext context, SplicedPart spliced, Func<SplicedPart, bool> passes)
    {
        var (say, part) = (context.Say, spliced.Part);
        var bare = spliced.Splice with { Tenons = [], Connectors = [], AccessFace = null };
        bool Holds(SpliceMethod method, Length consumes) => method != spliced.Splice.Method && passes(spliced with { Splice = bare with { Method = method, Consumes = consumes } });
        var (lap, scarf, plate) = (LapThicknesses * part.Thickness, ScarfSlope * part.Thickness, PlateThicknesses * part.Thickness);
        if (Holds(SpliceMethod.HalfLap, lap))
            yield return $"join it with a half-lap {say.AtLeast(lap.Metres)} long";
        if (Holds(SpliceMethod.Scarf, scarf))
            yield return $"join it with a 1:{ScarfSlope} scarf, {say.AtLeast(scarf.Metres)} long";
        if (Holds(SpliceMethod.BackedButt, Length.Zero))
        {
            var shows = part.ReferenceFace != Exposure.Hidden && part.OppositeFace != Exposure.Hidden;
            yield return $"back it with a glued plate as thick as the panel and {say.AtLeast(plate.Metres)} long on either side{(shows ? ", where it may show" : "")}";
        }
    }

    // The nearest places either way that pass and leave no stub.
    private static IEnumerable<string> Moves(CheckContext context, SplicedPart spliced, Func<SplicedPart, bool> passes)
    {
        var (splice, part) = spliced;
        var rules = context.Job.Shop.Splicing;
        var stub = Length.Max(rules.ShortestPiece, part.Length / rules.ShortestShare);
        var step = context.Say.Units == UnitSystem.Inches ? Length.FromInches(0, 1, 4) : Length.FromMillimetres(5);
        Length? Nearest(Length stride)
        {
            for (var at = splice.Position + stride; at >= stub && at <= part.Length - stub; at += stride)
            {
                if (passes(spliced with { Splice = splice with { Position = at } }))
                    return at;
            }

            return null;
        }

        if (SpliceAdvice.Moves(part, splice.Position, Nearest(-step), Nearest(step), context.Say) is { Length: > 0 } moves)
            yield return $"move the joint {moves}";
    }
}
