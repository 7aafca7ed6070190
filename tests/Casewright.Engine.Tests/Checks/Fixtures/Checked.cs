using Casewright.Engine.Checks;
using Casewright.Model.Findings;

namespace Casewright.Engine.Tests.Checks.Fixtures;

/// <summary>Runs one check on a bookcase.</summary>
internal static class Checked
{
    public static IReadOnlyList<Finding> By<T>(Bookcase bookcase)
        where T : ICheck, new() => [.. new T().Run(bookcase.Context)];

    public static Finding By<T>(Bookcase bookcase, string subject)
        where T : ICheck, new() => By<T>(bookcase).Single(f => f.Subject == subject);

    public static Severity SeverityBy<T>(Bookcase bookcase, string subject)
        where T : ICheck, new() => By<T>(bookcase, subject).Severity;
}
