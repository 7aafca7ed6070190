using System.Numerics;
using Casewright.Model.Parts;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;
using Casewright.Papers.Model3D;
using SharpGLTF.Schema2;
using Scene = Casewright.Papers.Drawing.Scene;

namespace Casewright.Papers.Tests.Documents;

/// <summary>
/// What a slope cuts, on paper and in three dimensions. The figures are those of the stair wall by hand: the top of case 2 is
/// 900/(4/5) + 18·3/4 = 1125 + 13.5 = 1138.5 long; its back 875 wide falls 875·3/4 = 656.25; its shelf cut short is bevelled 18/(3/4) = 24.
/// </summary>
public sealed class SlopePaperTests
{
    private static readonly PaperSettings A4 = new(PaperSize.A4, new(2026, 1, 1));

    [Fact]
    public void Part_drawings_give_every_cut_with_its_figures_and_angle()
    {
        var plan = ExampleTests.PlanOf("stair-wall");
        var pages = PartDrawings.Pages(plan, A4);
        var texts = pages.SelectMany(page => page.Body.SelectMany(item => new Scene(300, 300, "", "", [item]).Texts)).Select(text => text.Text).ToList();

        Assert.Contains(texts, text => text.Contains("raked top, case 2, right hand: 1 of 1138.5", StringComparison.Ordinal));
        Assert.Contains("left end: bevel, 13.5 shorter on the under face, 36.9° off square", texts);
        Assert.Contains("right end: bevel, 13.5 shorter on the upper face, 36.9° off square", texts);
        Assert.Contains("head end: raked cut, ≈656.3 shorter at the right edge, 36.9° off square", texts);
        Assert.Contains("right end: bevel, 24 shorter on the upper face, 53.1° off square", texts);
        Assert.DoesNotContain(texts, text => text.Contains("mirror", StringComparison.OrdinalIgnoreCase));

        // Every part with such a cut is drawn once; uprights are on the drilling layouts.
        var cut = plan.Parts.Where(part => part.Role is not (PartRole.Side or PartRole.Partition) && PartSolid.IsCut(part)).Select(part => part.Id);
        var index = new PlanIndex(plan);
        var drawn = PartGroups.Of(index).Where(group => PartSolid.IsCut(group.First)).Select(group => CodeList.Of(group.Parts.Select(part => part.Id))).ToList();
        Assert.NotEmpty(cut);
        Assert.All(drawn.Where(code => !code.Contains("-L", StringComparison.Ordinal) && !code.Contains("-R", StringComparison.Ordinal) && !code.Contains("-P", StringComparison.Ordinal)), code => Assert.Contains(code, texts));
    }

    [Fact]
    public void Drilling_layouts_show_the_bevel_of_either_side_where_it_is()
    {
        // Left side 2607.5 outside and 13.5 less inside: 2594; right side 1946 inside and 1932.5 outside.
        var texts = DrillingLayouts.Pages(ExampleTests.PlanOf("stair-wall"), A4)
            .SelectMany(page => page.Body.SelectMany(item => new Scene(300, 300, "", "", [item]).Texts)).Select(text => text.Text.Replace('\n', ' ')).ToList();

        Assert.All(["2607.5", "2594", "1946", "1932.5"], figure => Assert.Contains(figure, texts));
    }

    [Fact]
    public void The_elevation_follows_the_slope()
    {
        var groups = Elevation.Pages(ExampleTests.PlanOf("stair-wall"), A4).SelectMany(page => new Scene(300, 300, "", "", page.Body).Groups).ToList();
        var top = groups.Single(group => group.Id == "part:C2-T").Items.OfType<PathItem>().Single();
        var (left, right) = (top.Points.Where(p => p.X < top.Bounds.Centre.X).ToList(), top.Points.Where(p => p.X > top.Bounds.Centre.X).ToList());

        // On paper too: 3 down for 4 along, both ends plumb.
        Assert.Equal(2, left.Count);
        Assert.Equal(left[0].X, left[1].X, 1e-9);
        Assert.Equal(right[0].X, right[1].X, 1e-9);
        Assert.Equal(0.75, (right.Min(p => p.Y) - left.Min(p => p.Y)) / (right[0].X - left[0].X), 1e-6);
    }

    [Fact]
    public void The_model_in_three_dimensions_has_the_raked_top_on_the_slope()
    {
        var model = ModelRoot.ParseGLB(GltfModel.ToBytes(ExampleTests.PlanOf("stair-wall")));
        var node = model.LogicalNodes.Single(n => n.Name == "C2-T");
        var primitive = node.Mesh.Primitives[0];
        var positions = primitive.GetVertexAccessor("POSITION").AsVector3Array().Select(p => Vector3.Transform(p, node.WorldMatrix)).ToList();

        // From 900 to 1800 along the wall, the upper face at 2720 and 2045, the underside 22.5 plumb below.
        foreach (var (x, y) in new[] { (0.9f, 2.72f), (1.8f, 2.045f), (0.9f, 2.6975f), (1.8f, 2.0225f) })
            Assert.Contains(positions, p => Math.Abs(p.X - x) < 1e-5 && Math.Abs(p.Y - y) < 1e-5);

        // glTF 2.0, 3.7.2.1: front faces wind anticlockwise; every triangle looks away from the middle.
        var middle = positions.Aggregate(Vector3.Zero, (sum, p) => sum + p) / positions.Count;
        foreach (var (a, b, c) in primitive.GetTriangleIndices())
            Assert.True(Vector3.Dot(Vector3.Cross(positions[b] - positions[a], positions[c] - positions[a]), positions[a] - middle) > 0);
    }
}
