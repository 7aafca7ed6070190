using Casewright.Model.Files.JobShapes;
using Casewright.Model.Files.Shapes;

namespace Casewright.Model.Files;

/// <summary>
/// The JSON Schema (draft 2020-12) of job files, derived from the description that reads and writes them. What it cannot state, and only
/// the reader checks: how large a length is and whether it is exact, that ids are unique and what they refer to exists, dates of the
/// calendar, and relations between values (see <see cref="JobFile"/>).
/// </summary>
public static class JobSchema
{
    /// <summary>The schema's text.</summary>
    public static string Text { get; } = JsonText.Of(SchemaBook.Write(JobShape.Shape, "urn:casewright:job:1", "Casewright job file, version 1"));
}
