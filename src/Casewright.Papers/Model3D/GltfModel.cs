using System.Numerics;
using System.Text.Json.Nodes;
using Casewright.Engine.Surveying;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Stock;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;
using SharpGLTF.Transforms;

namespace Casewright.Papers.Model3D;

/// <summary>
/// The casework in three dimensions as binary glTF 2.0: metres, y up, z out from the wall, one node for each part with the part's id as
/// its name. Parts of different walls stand in one node per wall; walls that meet in a corner with casework stand at its angle, others at their own origin.
/// </summary>
public static class GltfModel
{
    /// <summary>The file (.glb).</summary>
    public static byte[] ToBytes(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var root = ModelRoot.CreateModel();
        root.Asset.Generator = "Casewright";
        var scene = root.UseScene(plan.Job.Name);
        root.DefaultScene = scene;
        var box = UnitBox.Of(root);
        var meshes = plan.Job.Stock.Materials.ToDictionary(material => material.Id, material => MeshOf(root, box, material), StringComparer.Ordinal);
        var walls = RoomPlan.Of(plan.Job);
        foreach (var wall in plan.Parts.GroupBy(part => part.Place.Wall, StringComparer.Ordinal))
        {
            var group = scene.CreateNode("wall " + wall.Key);
            group.LocalTransform = new AffineTransform(Matrix4x4Of(walls[wall.Key]));
            foreach (var part in wall)
                AddPart(root, group, part, meshes[part.Material]);
        }

        using var stream = new MemoryStream();
        root.WriteGLB(stream);
        return stream.ToArray();
    }

    private static Matrix4x4 Matrix4x4Of(WallPose pose)
    {
        var (x, z) = ((float)pose.AlongX, (float)pose.AlongZ);
        return new(x, 0, z, 0, 0, 1, 0, 0, -z, 0, x, 0, (float)pose.X, 0, (float)pose.Z, 1);
    }

    private static void AddPart(ModelRoot root, Node group, Part part, Mesh mesh)
    {
        // A part at 45 degrees is turned about its origin; its box is that of the part before the turn.
        var square = part.Place with { Eighths = 0 };
        var turned = part.Place.Eighths != 0;
        var low = turned ? square.LowCorner(part.Length, part.Width, part.Thickness) : part.LowCorner;
        var high = turned ? square.HighCorner(part.Length, part.Width, part.Thickness) : part.HighCorner;
        var turn = Quaternion.CreateFromAxisAngle(Vector3.UnitY, -MathF.PI / 4 * part.Place.Eighths);
        var origin = new Vector3(Metres(part.Place.Origin.X), Metres(part.Place.Origin.Y), Metres(part.Place.Origin.Z));
        var corner = new Vector3(Metres(low.X), Metres(low.Y), Metres(low.Z));
        var node = group.CreateNode(part.Id);
        if (PartSolid.IsCut(part))
        {
            node.Mesh = MeshOf(root, CutMesh.Of(part), part.Id, mesh.Primitives[0].Material);
        }
        else
        {
            node.Mesh = mesh;
            node.LocalTransform = new AffineTransform(
                new Vector3(Metres(high.X - low.X), Metres(high.Y - low.Y), Metres(high.Z - low.Z)), turn, origin + Vector3.Transform(corner - origin, turn));
        }

        node.Extras = new JsonObject { ["name"] = part.Name, ["case"] = part.Case, ["role"] = part.Role.ToString(), ["material"] = part.Material };
    }

    private static Mesh MeshOf(ModelRoot root, UnitBox box, Casewright.Model.Stock.Material material)
    {
        var surface = root.CreateMaterial(material.Name);
        surface.InitializePBRMetallicRoughness();
        if (surface.FindChannel("BaseColor") is { } colour)
            colour.Color = ColourOf(material.Kind);
        if (surface.FindChannel("MetallicRoughness") is { } metal)
        {
            metal.SetFactor("MetallicFactor", 0);
            metal.SetFactor("RoughnessFactor", 0.8f);
        }

        var mesh = root.CreateMesh(material.Id);
        var primitive = mesh.CreatePrimitive();
        primitive.DrawPrimitiveType = PrimitiveType.TRIANGLES;
        primitive.SetVertexAccessor("POSITION", box.Positions);
        primitive.SetVertexAccessor("NORMAL", box.Normals);
        primitive.SetIndexAccessor(box.Indices);
        primitive.Material = surface;
        return mesh;
    }

    private static Mesh MeshOf(ModelRoot root, CutMesh cut, string name, SharpGLTF.Schema2.Material surface)
    {
        var mesh = root.CreateMesh(name);
        var primitive = mesh.CreatePrimitive();
        primitive.DrawPrimitiveType = PrimitiveType.TRIANGLES;
        primitive.SetVertexAccessor("POSITION", UnitBox.Vectors(root, name + " corners", cut.Positions));
        primitive.SetVertexAccessor("NORMAL", UnitBox.Vectors(root, name + " normals", cut.Normals));
        primitive.Material = surface;
        return mesh;
    }

    private static Vector4 ColourOf(MaterialKind kind) => kind switch
    {
        MaterialKind.Mdf or MaterialKind.Hardboard => new(0.55f, 0.42f, 0.28f, 1),
        MaterialKind.Particleboard or MaterialKind.Osb => new(0.68f, 0.55f, 0.36f, 1),
        MaterialKind.Hardwood => new(0.62f, 0.44f, 0.25f, 1),
        _ => new(0.81f, 0.73f, 0.57f, 1),
    };

    private static float Metres(Length length) => (float)length.Metres;

    /// <summary>A box from (0, 0, 0) to (1, 1, 1), four corners to each face so that its edges are sharp.</summary>
    private sealed record UnitBox(Accessor Positions, Accessor Normals, Accessor Indices)
    {
        private static readonly Vector3[] Axes = [Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ];
        private static readonly int[] Corners = [0, 1, 2, 0, 2, 3];

        public static UnitBox Of(ModelRoot root)
        {
            var (positions, normals, indices) = (new List<Vector3>(), new List<Vector3>(), new List<ushort>());
            for (var axis = 0; axis < 3; axis++)
            {
                AddFace(positions, normals, indices, axis, high: false);
                AddFace(positions, normals, indices, axis, high: true);
            }

            return new(Vectors(root, "box corners", positions), Vectors(root, "box normals", normals), Numbers(root, indices));
        }

        // Corners run anticlockwise when seen from outside, as glTF asks for front faces.
        private static void AddFace(List<Vector3> positions, List<Vector3> normals, List<ushort> indices, int axis, bool high)
        {
            var (n, u, v) = (Axes[axis], Axes[(axis + 1) % 3], Axes[(axis + 2) % 3]);
            var start = high ? n : Vector3.Zero;
            var first = (ushort)positions.Count;
            positions.AddRange(high ? [start, start + u, start + u + v, start + v] : [start, start + v, start + u + v, start + u]);
            normals.AddRange(Enumerable.Repeat(high ? n : -n, 4));
            indices.AddRange(Corners.Select(offset => (ushort)(first + offset)));
        }

        public static Accessor Vectors(ModelRoot root, string name, IReadOnlyList<Vector3> vectors)
        {
            var bytes = new byte[vectors.Count * 12];
            for (var i = 0; i < vectors.Count; i++)
            {
                BitConverter.TryWriteBytes(bytes.AsSpan(i * 12), vectors[i].X);
                BitConverter.TryWriteBytes(bytes.AsSpan((i * 12) + 4), vectors[i].Y);
                BitConverter.TryWriteBytes(bytes.AsSpan((i * 12) + 8), vectors[i].Z);
            }

            var accessor = root.CreateAccessor(name);
            accessor.SetVertexData(root.UseBufferView(bytes, 0, null, 0, BufferMode.ARRAY_BUFFER), 0, vectors.Count, AttributeFormat.Float3);
            return accessor;
        }

        private static Accessor Numbers(ModelRoot root, List<ushort> numbers)
        {
            var bytes = numbers.SelectMany(BitConverter.GetBytes).ToArray();
            var accessor = root.CreateAccessor("box triangles");
            accessor.SetIndexData(root.UseBufferView(bytes, 0, null, 0, BufferMode.ELEMENT_ARRAY_BUFFER), 0, numbers.Count, IndexEncodingType.UNSIGNED_SHORT);
            return accessor;
        }
    }
}
