namespace Casewright.Engine.Checks.Splices;

/// <summary>Words that several checks of splices share.</summary>
internal static class SpliceAdvice
{
    public const string TestPiece = "This is an estimate: glue up a test piece of the same panel and tenons and break it over a support before you rely on it.";

    public const string Serves = "Put the joint over an upright, back it with a glued plate as thick as the panel and at least 8 thicknesses long on each side, or use a 1:8 scarf.";

    public const string Basis = "Section model of our own, fitted to elastic finite elements and not to tests; factors after EN 1995-1-1 (from memory)";
}
