using Casewright.Model.Files.PlanShapes;
using Casewright.Model.Files.Shapes;

namespace Casewright.Model.Files;

/// <summary>The JSON Schema (draft 2020-12) of plan files, derived from the description that writes them.</summary>
public static class PlanSchema
{
    /// <summary>The schema's text.</summary>
    public static string Text { get; } = JsonText.Of(SchemaBook.Write(PlanShape.Shape, "urn:casewright:plan:1", "Casewright plan file, version 1"));
}
