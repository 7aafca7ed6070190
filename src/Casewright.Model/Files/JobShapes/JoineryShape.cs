using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.JobShapes;

/// <summary>Depths of joints and working gaps in a job file.</summary>
internal static class JoineryShape
{
    private const decimal DeepestJoint = 100;
    private const decimal WidestGap = 100;

    public static RecordShape<Joinery> Shape { get; } = new(
        "joinery",
        "Depths of joints, working gaps and hole rows. What is left out has the usual figure of the unit system (common practice, no source).",
        f => new()
        {
            TopOverSides = f.Default(
                "topOverSides",
                j => j.TopOverSides,
                FlagShape.Instance,
                false,
                "true when tops lie over the sides rather than between them."),
            DadoDepth = Usual(
                f,
                "dadoDepth",
                j => j.DadoDepth,
                LengthShape.ZeroOrMore(DeepestJoint),
                "Depth of the dado that carries fixed panels, usually a third of the thickness and less than half; 0 for butt joints."),
            RabbetDepth = f.OptionalValue(
                "rabbetDepth",
                j => j.RabbetDepth,
                LengthShape.Positive(DeepestJoint),
                "Depth into the side of the rabbet for a rabbeted back; left out, half the side's thickness."),
            GrooveDepth = Usual(
                f, "grooveDepth", j => j.GrooveDepth, LengthShape.Positive(DeepestJoint), "Depth of the groove for a captured back."),
            BackPlay = Usual(
                f, "backPlay", j => j.BackPlay, LengthShape.ZeroOrMore(WidestGap), "Overall play of a back in its groove or rabbet."),
            BackFit = Usual(
                f,
                "backFit",
                j => j.BackFit,
                LengthShape.ZeroOrMore(20),
                "Added to a back's thickness for the width of its groove or rabbet."),
            BackReveal = Usual(
                f,
                "backReveal",
                j => j.BackReveal,
                LengthShape.ZeroOrMore(WidestGap),
                "How far an overlaid back stays inside the case outline, each side."),
            ShelfPlay = Usual(f, "shelfPlay", j => j.ShelfPlay, LengthShape.ZeroOrMore(WidestGap), "Overall side play of a loose shelf."),
            ShelfSetback = Usual(
                f, "shelfSetback", j => j.ShelfSetback, LengthShape.ZeroOrMore(500), "How far a loose shelf's front stands back."),
            ShelfRearPlay = Usual(f, "shelfRearPlay", j => j.ShelfRearPlay, LengthShape.ZeroOrMore(500), "Play of a loose shelf behind."),
            ScribeAllowance = Usual(
                f,
                "scribeAllowance",
                j => j.ScribeAllowance,
                LengthShape.ZeroOrMore(300),
                "Filler and scribe stock left beyond the largest gap."),
            PinPitch = Usual(f, "pinPitch", j => j.PinPitch, LengthShape.Between(5, 500), "Pitch of the shelf pin rows."),
            PinDiameter = Usual(f, "pinDiameter", j => j.PinDiameter, LengthShape.Between(1, 25), "Diameter of the shelf pin holes."),
            PinDepth = Usual(f, "pinDepth", j => j.PinDepth, LengthShape.Between(1, DeepestJoint), "Depth of the shelf pin holes."),
            PinInset = Usual(
                f, "pinInset", j => j.PinInset, LengthShape.Between(1, 1000), "From the front and rear edges to the shelf pin rows."),
            PinMargin = Usual(
                f,
                "pinMargin",
                j => j.PinMargin,
                LengthShape.ZeroOrMore(3000),
                "From the lower panel to the first shelf pin and from the last to the upper panel."),
            RoundingStep = Usual(
                f, "roundingStep", j => j.RoundingStep, LengthShape.Between(0.01m, 10), "Rounding step of finished parts."),
        });

    private static Length Usual(IFields<Joinery> fields, string name, Func<Joinery, Length> get, LengthShape shape, string description) =>
        fields.Usual(name, get, shape, u => get(Joinery.For(u)), description);
}
