using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout;

/// <summary>Puts a part together from its figures.</summary>
internal static class PartMaker
{
    /// <summary>A part of a case.</summary>
    public static Part InCase(CaseFigures box, string id, string name, PartRole role, Material material, PartSize size, Placement place, FaceView faces) =>
        Make(box.Run, box.Id, id, name, role, material, size, place, faces);

    /// <summary>A part of a run that spans its cases.</summary>
    public static Part InRun(RunFigures run, string id, string name, PartRole role, Material material, PartSize size, Placement place, FaceView faces) =>
        Make(run, run.Run.Id, id, name, role, material, size, place, faces);

    /// <summary>The thickness of a part.</summary>
    public static Derivation Thickness(Material material) => Rule.Of(Symbols.Thickness("t", material)).As(Dimensions.Thickness);

    /// <summary>The width of a part that takes the whole board width.</summary>
    public static Derivation BoardWidth(Material board) => Rule.Of(Symbols.BoardWidth("w", board)).As(Dimensions.Width);

    private static Part Make(RunFigures run, string owner, string id, string name, PartRole role, Material material, PartSize size, Placement place, FaceView faces) => new()
    {
        Id = id,
        Name = name,
        Case = owner,
        Run = run.Run.Id,
        Role = role,
        Material = material.Id,
        Length = size.Length.Result,
        Width = size.Width.Result,
        Thickness = size.Thickness.Result,
        Grain = material.HasGrain || material.IsBoard ? Grain.AlongLength : Grain.None,
        Place = place,
        ReferenceFace = faces.Reference,
        OppositeFace = faces.Opposite,
        ReferenceFaceName = faces.ReferenceName,
        OppositeFaceName = faces.OppositeName,
        Derivations = [size.Length, size.Width, size.Thickness],
    };
}

/// <summary>Names of the dimensions that derivations carry.</summary>
internal static class Dimensions
{
    /// <summary>Along the part.</summary>
    public const string Length = "length";

    /// <summary>Across the part.</summary>
    public const string Width = "width";

    /// <summary>Through the part.</summary>
    public const string Thickness = "thickness";
}
