using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Findings;

namespace Casewright.Engine.Tests.Checks.Advice;

/// <summary>A bookcase that a check cautions or stops, and the bookcase after each way that the advice names.</summary>
/// <param name="Check">Id of the check.</param>
/// <param name="Of">What fails, in a few words.</param>
/// <param name="Subject">Subject of the finding.</param>
/// <param name="Failing">The bookcase that fails.</param>
/// <param name="Mended">The bookcases that the advice leads to, one for each way it names.</param>
public sealed record AdviceCase(string Check, string Of, string Subject, Bookcase Failing, Func<Told, IEnumerable<Bookcase>> Mended)
{
    /// <summary>The best that the advice can lead to: a pass, or a caution whose advice is an act in the shop.</summary>
    public Severity After { get; init; } = Severity.Pass;

    /// <summary>Advice that leads to one bookcase.</summary>
    public static AdviceCase One(string check, string of, string subject, Bookcase failing, Func<Told, Bookcase> mended) =>
        new(check, of, subject, failing, told => [mended(told)]);
}

/// <summary>A finding whose advice is an act in the shop, which no job can record.</summary>
/// <param name="Check">Id of the check.</param>
/// <param name="Subject">Subject of the finding.</param>
/// <param name="Failing">The bookcase.</param>
/// <param name="Act">Words by which the advice names the act.</param>
/// <param name="Why">Why no change of the job mends it.</param>
public sealed record ActCase(string Check, string Subject, Bookcase Failing, string Act, string Why);
