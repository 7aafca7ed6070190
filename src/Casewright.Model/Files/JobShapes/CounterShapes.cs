using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.JobShapes;

/// <summary>Counters, desks, seats and bridges in a job file.</summary>
internal static class CounterShapes
{
    public static RecordShape<CounterDesign> Counter { get; } = new("counter", "A top laid over the cases of a tier from end to end of the run.", f => new()
    {
        Use = f.Required("use", c => c.Use, Choices.CounterUse, "What it is used as."),
        Material = f.Required("material", c => c.Material, Ids.Sheet, "Sheet material."),
        Layers = f.Default("layers", c => c.Layers, new CountShape(1, 2), 1, "Layers laminated together."),
        Overhang = f.Default("overhang", c => c.Overhang, LengthShape.ZeroOrMore(1000), Length.Zero, "How far it stands out over the front of its cases."),
        EndOverhang = f.Default("endOverhang", c => c.EndOverhang, LengthShape.ZeroOrMore(1000), Length.Zero, "How far it stands out over a finished end."),
        Edge = f.Optional("edge", c => c.Edge, Ids.Board, "Board material on its front edge, trimmed flush; left out, it is bare."),
        Apron = f.Default("apron", c => c.Apron, LengthShape.ZeroOrMore(500), Length.Zero, "Height of an apron under its front over a knee space."),
        Cushion = f.Default("cushion", c => c.Cushion, LengthShape.ZeroOrMore(500), Length.Zero, "Thickness of a cushion on a seat."),
    });

    public static RecordShape<BridgeDesign> Bridge { get; } = new("bridge", "A run that hangs over a door between its neighbours.", f => new()
    {
        Casing = f.OptionalValue(
            "casing", b => b.Casing, LengthShape.Positive(10_000), "Top of the door's casing above the highest floor point; left out, as surveyed."),
        Cleat = f.Default("cleat", b => b.Cleat, LengthShape.ZeroOrMore(500), Length.Zero, "Height of the cleat on the wall that carries the bottom from below."),
    });
}
