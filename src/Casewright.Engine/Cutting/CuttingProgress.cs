namespace Casewright.Engine.Cutting;

/// <summary>How far a search has come.</summary>
/// <param name="Incumbent">Cost of the best answer so far; null before the first.</param>
/// <param name="LowerBound">No answer costs less.</param>
/// <param name="SheetsUsed">Sheets of the best answer so far; null before the first.</param>
/// <param name="SheetsLowerBound">No answer cuts fewer sheets.</param>
/// <param name="Work">Work units spent.</param>
public sealed record CuttingProgress(decimal? Incumbent, decimal LowerBound, int? SheetsUsed, int SheetsLowerBound, long Work);

/// <summary>Is told of every better answer and bound, on the thread of the search.</summary>
public interface ICuttingProgress
{
    /// <summary>Takes one report; must return soon.</summary>
    void Report(CuttingProgress progress);
}
