using Casewright.Model.Design;
using Casewright.Model.Measure;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Doors and drawers that cannot be built are problems at their place.</summary>
public sealed class ImpossibleFrontTests
{
    private const string Front = "runs[0].tiers[0].interior.fronts[0]";

    private static readonly FrontDesign Door = new() { Kind = FrontKind.Doors, Fit = FrontFit.Overlay, Material = "panel" };

    private static readonly FrontDesign Drawers = new() { Kind = FrontKind.Drawers, Fit = FrontFit.Overlay, Material = "panel", Drawers = 3, BoxMaterial = "panel", BottomMaterial = "back" };

    private static Run With(params FrontDesign[] fronts) => Plain(UnitSystem.Millimetres, Mm(600), Mm(800), Mm(500)) with { Tiers = [new() { Interior = new() { Fronts = [.. fronts] } }] };

    public static TheoryData<string, Func<Run>> Cases => new()
    {
        { Front + ".opening", () => With(Door with { Opening = 2 }) },
        { Front + ".opening", () => With(Door with { Openings = 2 }) },
        { "runs[0].tiers[0].interior.fronts[1].opening", () => With(Door, Door) },
        { Front + ".leaves", () => With(Door with { Leaves = 3 }) },
        { Front + ".material", () => With(Door with { Material = "back" }) },
        { Front + ".material", () => With(Door with { Material = "oak" }) },
        { Front, () => With(Door with { Leaves = 2 }) with { Width = Mm(190) } },
        { Front + ".boxMaterial", () => With(Drawers with { BoxMaterial = null }) },
        { Front + ".bottomMaterial", () => With(Drawers with { BottomMaterial = "stile" }) },
        { Front + ".drawers", () => With(Drawers with { Drawers = 0 }) },
        { Front + ".heights", () => With(Drawers with { Heights = [Mm(100), Mm(100), Mm(100), Mm(100)] }) },
        { Front + ".heights", () => With(Drawers with { Heights = [Mm(500), Mm(400)] }) },
        { Front + ".heights", () => With(Drawers with { Heights = [Mm(100), Mm(100), Mm(100)] }) },
        { Front, () => With(Drawers with { Drawers = 12 }) },
        { "runs[0].depth", () => With(Drawers) with { Depth = Mm(240) } },
        { "runs[0].tiers[0].interior.loose", () => With(Drawers) with { Tiers = [new() { Interior = new() { Loose = 1, Fronts = [Drawers] } }] } },
        {
            "runs[0].faceFrame.slidePacker", () => With(Drawers) with
            {
                Construction = Construction.FaceFrame,
                FaceFrame = new() { EndStile = "stile", TopRail = "rail", BottomRail = "stile" },
            }
        },
        {
            "runs[0].faceFrame.midRail", () => With(Door) with
            {
                Construction = Construction.FaceFrame,
                FaceFrame = new() { EndStile = "stile", TopRail = "rail", BottomRail = "stile" },
                Tiers = [new() { Interior = new() { Fixed = 1, Fronts = [Door] } }],
            }
        },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void ItIsNamedAtItsPlace(string path, Func<Run> run) => Laid.ProblemAt(path, Job(UnitSystem.Millimetres, run()));
}
