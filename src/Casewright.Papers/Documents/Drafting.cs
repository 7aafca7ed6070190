using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Starts pages of documents.</summary>
internal static class Drafting
{
    public static PageDraft Page(
        DocumentKind document, PaperSettings settings, bool landscape, PageHeading heading, string description, string footNote = "", string key = "") => new()
        {
            Document = document,
            Key = key,
            Format = new(settings.Size, landscape),
            Heading = heading,
            Description = description,
            FootNote = footNote,
            Body = [],
        };

    public static PageFlow Flow(
        DocumentKind document, PaperSettings settings, bool landscape, PageHeading heading, string description, string footNote = "") =>
        new(Page(document, settings, landscape, heading, description, footNote));
}
