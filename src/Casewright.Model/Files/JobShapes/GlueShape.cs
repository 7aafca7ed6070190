using Casewright.Model.Files.Shapes;
using Casewright.Model.Shop;

namespace Casewright.Model.Files.JobShapes;

/// <summary>The glue in a job file.</summary>
internal static class GlueShape
{
    private static readonly GlueFacts s_usual = new();

    private static readonly RecordShape<GlueFactor> s_factor = new(
        "glueFactor",
        "How clamp, handling and cure times grow at a temperature.",
        f => new(
            f.Required("temperature", g => g.Celsius, QuantityShape.Temperature, "Temperature of wood, glue and shop."),
            f.Required("factor", g => g.Factor, NumberShape.Positive(100), "Factor on the times at 20 °C.")));

    public static RecordShape<GlueFacts> Shape { get; } = new(
        "glue",
        "The glue of splices and cases; what is left out is usual for PVA glue at 20 °C (common practice, no source).",
        f => new()
        {
            OpenMinutes = Minutes(f, "openMinutes", g => g.OpenMinutes, "Minutes from spreading until the faces must meet."),
            ClosedMinutes = Minutes(f, "closedMinutes", g => g.ClosedMinutes, "Minutes from meeting until the clamps must be tight."),
            ClampMinutes = Minutes(f, "clampMinutes", g => g.ClampMinutes, "Minutes under pressure for a splice."),
            UnstressedClampMinutes = Minutes(
                f, "unstressedClampMinutes", g => g.UnstressedClampMinutes, "Minutes under pressure for a joint that is not under stress, such as a housing."),
            HandleHours = f.Default(
                "handleHours",
                g => g.HandleHours,
                NumberShape.Positive(1000),
                s_usual.HandleHours,
                "Hours until the joint may be handled with care."),
            CureHours = f.Default(
                "cureHours",
                g => g.CureHours,
                NumberShape.Positive(1000),
                s_usual.CureHours,
                "Hours until the joint may be loaded or machined."),
            Factors = f.Default(
                "factors",
                g => g.Factors,
                new ListShape<GlueFactor>(s_factor, 1, 20),
                s_usual.Factors,
                "Factors on clamp, handling and cure times by temperature, the coldest first."),
            LeastTemperature = f.Default(
                "leastTemperature",
                g => g.LeastTemperature,
                QuantityShape.Temperature,
                s_usual.LeastTemperature,
                "Coldest that wood, glue and shop may be."),
            Creeps = f.Default(
                "creeps", g => g.Creeps, FlagShape.Instance, s_usual.Creeps, "Whether the glue creeps under a load that stays; PVA does."),
        })
    {
        Check = CheckFactors,
    };

    private static double Minutes(IFields<GlueFacts> fields, string name, Func<GlueFacts, double> get, string description) =>
        fields.Default(name, get, NumberShape.Positive(10_000), get(s_usual), description);

    private static void CheckFactors(GlueFacts glue, Spot spot)
    {
        for (var i = 1; i < glue.Factors.Count; i++)
        {
            if (glue.Factors[i].Celsius <= glue.Factors[i - 1].Celsius)
                spot["factors"][i]["temperature"].Fail("This temperature is not above the one before it.", null, "temperatures that rise, each once");
        }
    }
}
