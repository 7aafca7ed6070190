using Casewright.Model.Files.Shapes;
using Casewright.Model.Parts;

namespace Casewright.Model.Files.PlanShapes;

/// <summary>Cases and parts in a plan file.</summary>
internal static class PartShapes
{
    public static ViewShape<CaseBox> Case { get; } = new ViewShape<CaseBox>("case", "One assembly that is built, carried and fastened as a unit.")
        .Text("id", c => c.Id, "Stable id.")
        .Text("run", c => c.Run, "Id of its run.")
        .Text("wall", c => c.Wall, "Id of its wall.")
        .Count("column", c => c.Column, "Place of its column in the run, from 0.")
        .Count("tier", c => c.Tier, "Place of its tier in the run, from 0 at the floor.")
        .Length("x", c => c.X, "Left edge along the wall.")
        .Length("y", c => c.Y, "Lower edge above the highest floor point.")
        .Length("width", c => c.Width, "Outer width.")
        .Length("height", c => c.Height, "Outer height.")
        .Length("depth", c => c.Depth, "Total depth.")
        .Count("bays", c => c.Bays, "Number of bays.")
        .Length("clearBay", c => c.ClearBay, "Clear width of each bay.");

    public static ViewShape<PartEntry> Part { get; } = new ViewShape<PartEntry>("part", "A finished member of the casework, whole.")
        .Text("id", e => e.Part.Id, "Stable id.")
        .Text("name", e => e.Part.Name, "Name in words.")
        .Text("case", e => e.Part.Case, "Id of its case, or of its run when it spans cases.")
        .Text("run", e => e.Part.Run, "Id of its run.")
        .Choice("role", e => e.Part.Role, "What it is.")
        .Choice("hand", e => e.Part.Hand, "Handedness, seen from the front.")
        .Text("material", e => e.Part.Material, "Id of its material.")
        .Length("length", e => e.Part.Length, "Finished size from its reference end.")
        .Length("width", e => e.Part.Width, "Finished size from its reference edge.")
        .Length("thickness", e => e.Part.Thickness, "Thickness.")
        .Choice("grain", e => e.Part.Grain, "Which way its grain runs.")
        .Text("wall", e => e.Part.Place.Wall, "Id of the wall whose coordinates place it.")
        .Length("x", e => e.Corner.X, "Nearest corner: along the wall from its left end.")
        .Length("y", e => e.Corner.Y, "Nearest corner: up from the highest floor point.")
        .Length("z", e => e.Corner.Z, "Nearest corner: out from the wall.")
        .Choice("alongLength", e => e.Part.Place.AlongLength, "Direction from its reference end to the other.")
        .Choice("alongWidth", e => e.Part.Place.AlongWidth, "Direction from its reference edge to the other.")
        .Choice("intoThickness", e => e.Part.Place.IntoThickness, "Direction from its reference face to the other.")
        .Choice("referenceFace", e => e.Part.ReferenceFace, "Who sees the reference face.")
        .Choice("oppositeFace", e => e.Part.OppositeFace, "Who sees the opposite face.")
        .TextOrNull("fitOnSite", e => e.Part.FitOnSite, "What is left oversize for fitting on site, in words; null for parts cut to size.")
        .Texts("pieces", e => e.Pieces, "Ids of the pieces it is made of, from its reference end.")
        .Texts("splices", e => e.Splices, "Ids of its splices.");
}
