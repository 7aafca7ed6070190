using System.Numerics;
using Casewright.Papers.Model3D;
using Casewright.Papers.Tests.Documents;
using SharpGLTF.Schema2;

namespace Casewright.Papers.Tests.Model3D;

public class GltfModelTests
{
    [Fact]
    public void EveryPartIsANodeInItsPlace()
    {
        var plan = HandPlan.Of(cases: 2);
        var model = ModelRoot.ParseGLB(GltfModel.ToBytes(plan));
        var nodes = model.LogicalNodes.Where(node => node.Mesh is not null).ToDictionary(node => node.Name, StringComparer.Ordinal);
        Assert.Equal(plan.Parts.Select(part => part.Id).Order(StringComparer.Ordinal), nodes.Keys.Order(StringComparer.Ordinal), StringComparer.Ordinal);
        foreach (var part in plan.Parts)
        {
            var low = part.Place.LowCorner(part.Length, part.Width, part.Thickness);
            var high = part.Place.HighCorner(part.Length, part.Width, part.Thickness);
            AssertNear(new((float)low.X.Metres, (float)low.Y.Metres, (float)low.Z.Metres), Vector3.Transform(Vector3.Zero, nodes[part.Id].WorldMatrix));
            AssertNear(new((float)high.X.Metres, (float)high.Y.Metres, (float)high.Z.Metres), Vector3.Transform(Vector3.One, nodes[part.Id].WorldMatrix));
        }
    }

    // By hand: the left side of case 1 starts 40 mm from the wall's end, 110 above the floor, is 18 thick, 2710 high and 300 deep.
    [Fact]
    public void TheLeftSideOfTheFirstCaseStandsWhereItShould()
    {
        var node = ModelRoot.ParseGLB(GltfModel.ToBytes(HandPlan.Of(cases: 1))).LogicalNodes.Single(n => n.Name == "C1-L");
        AssertNear(new(0.040f, 0.110f, 0), Vector3.Transform(Vector3.Zero, node.WorldMatrix));
        AssertNear(new(0.058f, 2.820f, 0.300f), Vector3.Transform(Vector3.One, node.WorldMatrix));
    }

    // glTF 2.0, 3.7.2.1: front faces wind anticlockwise, so each triangle's normal points the way its corners' normals do.
    [Fact]
    public void FacesLookOutwards()
    {
        var primitive = ModelRoot.ParseGLB(GltfModel.ToBytes(HandPlan.Of(cases: 1))).LogicalMeshes[0].Primitives[0];
        var positions = primitive.GetVertexAccessor("POSITION").AsVector3Array();
        var normals = primitive.GetVertexAccessor("NORMAL").AsVector3Array();
        var triangles = primitive.GetTriangleIndices().ToList();
        Assert.Equal(12, triangles.Count);
        foreach (var (a, b, c) in triangles)
        {
            var normal = Vector3.Normalize(Vector3.Cross(positions[b] - positions[a], positions[c] - positions[a]));
            AssertNear(normals[a], normal);
            Assert.True(Vector3.Dot(normal, positions[a] - new Vector3(0.5f)) > 0);
        }
    }

    [Fact]
    public void TheSamePlanGivesTheSameFile() => Assert.Equal(GltfModel.ToBytes(HandPlan.Of(cases: 1)), GltfModel.ToBytes(HandPlan.Of(cases: 1)));

    private static void AssertNear(Vector3 expected, Vector3 actual) => Assert.True(Vector3.Distance(expected, actual) < 1e-5f, $"{expected} and {actual}");
}
