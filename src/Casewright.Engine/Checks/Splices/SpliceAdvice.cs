using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Words that several checks of splices share.</summary>
internal static class SpliceAdvice
{
    public const string TestPiece = "This is an estimate: glue up a test piece of the same panel and tenons and break it over a support before you rely on it.";

    public const string Basis = "Section model of our own, fitted to elastic finite elements and not to tests; factors after EN 1995-1-1 (from memory)";

    /// <summary>Which way a joint moves when its distance from the reference end grows or shrinks.</summary>
    public static string Way(Part part, bool grows) => (part.Place.AlongLength, grows) switch
    {
        (Axis.Up, true) or (Axis.Down, false) => "up",
        (Axis.Up, false) or (Axis.Down, true) => "down",
        (Axis.Right, true) or (Axis.Left, false) => "to the right",
        (Axis.Right, false) or (Axis.Left, true) => "to the left",
        (_, true) => "away from the reference end",
        _ => "towards the reference end",
    };

    /// <summary>"up 20 mm or down 35 mm", of the moves that are possible; empty without any.</summary>
    public static string Moves(Part part, Length from, Length? lower, Length? upper, Say say)
    {
        var ways = new List<string>();
        if (lower is { } low)
            ways.Add($"{say.AtLeast((from - low).Metres)} {Way(part, grows: false)}");
        if (upper is { } high)
            ways.Add($"{say.AtLeast((high - from).Metres)} {Way(part, grows: true)}");
        return string.Join(" or ", ways);
    }
}
