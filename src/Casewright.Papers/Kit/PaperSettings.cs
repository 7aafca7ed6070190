namespace Casewright.Papers.Kit;

/// <summary>How papers are printed.</summary>
/// <param name="Size">Size of paper.</param>
/// <param name="Date">Date of the plan, printed on every page and written into files, unless the job states its own.</param>
public sealed record PaperSettings(PaperSize Size, DateOnly Date)
{
    /// <summary>Whether the packet holds a calculation sheet for every stop and caution.</summary>
    public bool Calculations { get; init; }
}
