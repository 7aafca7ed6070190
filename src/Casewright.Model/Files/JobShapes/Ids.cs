using Casewright.Model.Files.Shapes;

namespace Casewright.Model.Files.JobShapes;

/// <summary>Ids of a job file: what they name, where they are unique, and how they are referred to.</summary>
internal static class Ids
{
    public const string Materials = "material";
    public const string Stock = "stock";
    public const string Walls = "wall";
    public const string Runs = "run";
    public const string People = "person";
    public const string Stations = "station";
    public const string SheetMaterial = "sheet material";
    public const string BoardMaterial = "board material";

    public static ReferenceShape Sheet { get; } = new(Materials, SheetMaterial);

    public static ReferenceShape Board { get; } = new(Materials, BoardMaterial);

    /// <summary>A material of either kind.</summary>
    public static ReferenceShape Material { get; } = new(Materials, Materials);

    public static ReferenceShape Wall { get; } = new(Walls, "wall");
}
