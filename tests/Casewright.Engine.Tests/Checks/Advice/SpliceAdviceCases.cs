using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Tests.Checks.Advice;

/// <summary>Joints that are too weak, badly placed or badly made, and what their checks say would pass.</summary>
public static class SpliceAdviceCases
{
    public static IEnumerable<AdviceCase> All =>
    [
        new("splice-strength", "in the middle of a shelf", "F1/1", With(Joint("F1", 456)), t => Ways(t, With(Joint("F1", 456)))),
        new("splice-strength", "in a panel over three bays", "B/1", ThreeBays, t => Ways(t, ThreeBays)),
        new("splice-strength", "one narrow tenon in a side", "L/1", With(Weak(1000)) with { Load = 45 }, t => Ways(t, With(Weak(1000)) with { Load = 45 })),
        new("splice-handling", "one narrow tenon, carried", "L/1", With(Weak(1200)), t => Ways(t, With(Weak(1200)))),
        new("splice-tilt-up", "one narrow tenon, tipped up", "L/1", With(Weak(1200)), t => Ways(t, With(Weak(1200)))),
        AdviceCase.One("splice-axial", "thin sides under a great weight", "L/1", Pressed, t => Pressed with
        {
            Change = p => p.Role == PartRole.Side ? p with { Thickness = Bookcase.Mm(t.Mm("Use uprights ", " thick")) } : p,
        }),
        AdviceCase.One("splice-clamp-force", "a deep side", "L/1", Deep, t => Deep with { Limits = new() { ClampForce = t.Force("4 clamps that give ") } }),
        new("splice-midspan", "left of the middle", "F1/1", With(Joint("F1", 456)), t => Moved(t, With(Joint("F1", 456)))),
        new("splice-midspan", "right of the middle", "F1/1", With(Joint("F1", 500)), t => Moved(t, With(Joint("F1", 500)))),
        new("splice-sag", "in a shelf that passes without it", "F1/1", With(Joint("F1", 456)), t => Sag(t, With(Joint("F1", 456)))),
        new("splice-sag", "in a shelf that fails without it", "F1/1", With(Joint("F1", 456)) with { Load = 45 }, t => Sag(t, With(Joint("F1", 456)) with { Load = 45 })),
        new("splice-clear-of-dado", "beside a dado", "L/1", With(Joint("L", 1170)), t => Moved(t, With(Joint("L", 1170)))),
        new("splice-clear-of-pins", "in a row of holes", "L/1", With(Joint("L", 300)), t => Moved(t, With(Joint("L", 300)))),
        new("splice-clear-of-hardware", "between two fixings", "L/1", Fixed, t => Moved(t, Fixed)),
        new("splice-clear-of-cut-outs", "through an outlet", "L/1", CutOut, t => Moved(t, CutOut)),
        AdviceCase.One("splice-access-face", "holes in a face that shows", "L/1", With(Drawn("L", Face.Reference)), t => Named(t, "Take its outside face", With(Drawn("L", Face.Opposite)))),
        AdviceCase.One("splice-access-face", "both faces show", "P1/1", Two(Drawn("P1", Face.Reference)), t => Named(t, "plain loose tenons", Two(Joint("P1", 1000)))),
        AdviceCase.One("splice-access-face", "no face named", "L/1", With(Drawn("L", null)), t => Named(t, "plain loose tenons", With(Joint("L", 1000)))),
        AdviceCase.One("back-joint", "on nothing", "BK/1", With(Back(1300, null)), t => With(Back(t.Mm("the middle of F1, ", " from the lower end"), "F1"))),
        AdviceCase.One("back-joint", "off the middle", "BK/1", With(Back(1188, "F1")), t => With(Back(t.Mm("the middle of F1, ", " from the lower end"), "F1"))),
        AdviceCase.One("back-joint", "on a thin shelf", "BK/1", ThinShelf(15), t => ThinShelf(t.Mm("use one ", " thick or more"))),
        AdviceCase.One("tenon-walls", "thick tenons", "L/1", With(Tenons(8, 18)), t => With(Tenons(t.Mm("Use tenons ", " thick or less"), 18))),
        AdviceCase.One("tenon-walls", "a thin panel", "L/1", With(Tenons(4, 12)) with { Thickness = 12 }, t => Thicker(t.Mm("or a panel ", " thick or more"))),
        AdviceCase.One("tenon-to-edge", "a tenon near the edge", "L/1", With(Edge(30)), t => With(Edge(t.Mm("Move the tenon in to ", " from the edge")))),
        AdviceCase.One("tenon-to-edge", "a connector near the edge", "L/1", With(Connector(45)), t => With(Connector(t.Mm("Move the draw connector in to ", " from the edge")))),
        AdviceCase.One("splice-stub", "a short lower piece", "L", With(Joint("L", 200)), t => With(Joint("L", t.Mm("no piece is under ", ":")))),
        AdviceCase.One("splice-sight-line", "one joint of three off the line", "R", Uneven(1000, 1040), t => Uneven(t.Mm("to one height: ", ", where"), t.Mm("to one height: ", ", where"))),
    ];

    private static Bookcase With(Splice splice) => new() { Splices = [splice] };

    private static Bookcase Two(Splice splice) => new() { Bays = 2, Width = 1854, Splices = [splice] };

    private static Splice Joint(string part, decimal at) => Bookcase.TenonSplice(part, at);

    private static Bookcase ThreeBays => new() { Bays = 3, Width = 2772, Load = 25, LooseShelves = 0, Splices = [Joint("B", 456)] };

    private static Splice Weak(decimal at) => Joint("L", at) with { Tenons = [new(Bookcase.Mm(20), Bookcase.Mm(9), Bookcase.Mm(6), Bookcase.Mm(10), Bookcase.Mm(20), Bookcase.Mm(11), Length.Zero)] };

    private static Bookcase Pressed => new() { Thickness = 6, Depth = 100, Load = 300, Dado = 2, Splices = [Bookcase.TenonSplice("L", 1000, 100, 6, 2, 20, 10)] };

    private static Bookcase Deep => new() { Depth = 900, Thickness = 25, Splices = [Bookcase.TenonSplice("L", 1000, 900, 25)] };

    private static Bookcase Worked(params Machining[] machining) => With(Joint("L", 1000)) with { Change = p => p.Id == "L" ? p with { Machining = [.. machining] } : p };

    private static Bookcase Fixed => Worked(
        new HardwareZone("nailer", Face.Reference, Bookcase.Mm(1030), Bookcase.Mm(1100)), new HardwareZone("slide", Face.Reference, Bookcase.Mm(900), Bookcase.Mm(960)));

    private static Bookcase CutOut => Worked(new CutOut("outlet", Bookcase.Mm(950), Bookcase.Mm(50), Bookcase.Mm(80), Bookcase.Mm(60)));

    private static Splice Drawn(string part, Face? face) => Joint(part, 1000) with { Method = SpliceMethod.TenonsAndConnectors, AccessFace = face, Connectors = [new(Bookcase.Mm(100))] };

    private static Splice Back(decimal at, string? on) => Joint("BK", at) with { Method = SpliceMethod.CoveredButt, Tenons = [], CoveredBy = on };

    private static Bookcase ThinShelf(decimal thickness) => new()
    {
        Thickness = thickness,
        Width = 900 + (2 * thickness),
        Splices = [Back(1200 - (thickness / 2), "F1")],
    };

    private static Splice Tenons(decimal thickness, decimal panel) => Bookcase.TenonSplice("L", 1000, thickness: panel, tenonThickness: thickness);

    private static Bookcase Thicker(decimal panel) => With(Tenons(4, panel)) with { Thickness = panel };

    private static Splice Edge(decimal offset) => Joint("L", 1000) is var splice ? splice with { Tenons = [splice.Tenons[0] with { Offset = Bookcase.Mm(offset) }, splice.Tenons[2]] } : splice;

    private static Splice Connector(decimal offset) => Drawn("L", Face.Opposite) with { Connectors = [new(Bookcase.Mm(offset))] };

    private static Bookcase Uneven(decimal height, decimal third) => Two(Joint("L", height)) with { Splices = [Joint("L", height), Joint("R", height), Joint("P1", third)] };

    private static Bookcase Named(Told told, string words, Bookcase mended)
    {
        Assert.True(told.Says(words), told.Advice);
        return mended;
    }

    private static IEnumerable<Bookcase> Moved(Told told, Bookcase of) => told.Moves().Select(by => Changed(of, s => s with { Position = s.Position + Bookcase.Mm(by) }));

    private static Bookcase Changed(Bookcase of, Func<Splice, Splice> change) => of with { Splices = [change(of.Splices[0])] };

    private static IEnumerable<Bookcase> Ways(Told told, Bookcase of)
    {
        var bare = of.Splices[0] with { Tenons = [] };
        foreach (var moved in Moved(told, of))
            yield return moved;
        if (told.Says("half-lap"))
            yield return Changed(of, _ => bare with { Method = SpliceMethod.HalfLap, Consumes = Bookcase.Mm(told.Mm("a half-lap ", " long")) });
        if (told.Says("1:8 scarf"))
            yield return Changed(of, _ => bare with { Method = SpliceMethod.Scarf, Consumes = Bookcase.Mm(told.Mm("a 1:8 scarf, ", " long")) });
        if (told.Says("glued plate"))
            yield return Changed(of, _ => bare with { Method = SpliceMethod.BackedButt });
        if (told.Says("keep the load to"))
            yield return of with { Load = told.Load("keep the load to ") };
    }

    private static IEnumerable<Bookcase> Sag(Told told, Bookcase of)
    {
        if (told.Says("1:8 scarf or a glued plate"))
        {
            yield return Changed(of, s => s with { Method = SpliceMethod.Scarf, Consumes = Bookcase.Mm(144), Tenons = [] });
            yield return Changed(of, s => s with { Method = SpliceMethod.BackedButt, Tenons = [] });
        }

        yield return of with { Load = told.Load("keep the load to ") };
        Assert.True(told.Says("over an upright"));
        yield return Changed(of, s => s with { Position = Bookcase.Mm(3) });
    }
}
