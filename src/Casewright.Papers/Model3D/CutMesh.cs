using System.Numerics;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Papers.Model3D;

/// <summary>
/// Triangles of a part that is no block: its two faces and what lies between them, in metres of its wall's room coordinates, three corners
/// to each triangle with the normal of its plane, anticlockwise seen from outside as glTF asks.
/// </summary>
internal sealed record CutMesh(IReadOnlyList<Vector3> Positions, IReadOnlyList<Vector3> Normals)
{
    /// <summary>The triangles of a part.</summary>
    public static CutMesh Of(Part part)
    {
        var solid = PartSolid.Of(part);
        var near = solid.Reference.Select(p => Metres(part.Place.At(p.X, p.Y, Length.Zero))).ToArray();
        var far = solid.Opposite.Select(p => Metres(part.Place.At(p.X, p.Y, part.Thickness))).ToArray();
        var centre = near.Concat(far).Aggregate(Vector3.Zero, (sum, p) => sum + p) / (near.Length + far.Length);
        var (positions, normals) = (new List<Vector3>(), new List<Vector3>());
        Add(near);
        Add(far);
        for (var i = 0; i < near.Length; i++)
        {
            var next = (i + 1) % near.Length;
            Add([near[i], near[next], far[next], far[i]]);
        }

        return new(positions, normals);

        void Add(Vector3[] face)
        {
            for (var i = 1; i < face.Length - 1; i++)
                AddTriangle(face[0], face[i], face[i + 1]);
        }

        void AddTriangle(Vector3 a, Vector3 b, Vector3 c)
        {
            var normal = Vector3.Cross(b - a, c - a);
            if (normal.LengthSquared() == 0)
                return;
            var outward = Vector3.Dot(normal, a - centre) >= 0;
            positions.AddRange(outward ? [a, b, c] : [a, c, b]);
            normals.AddRange(Enumerable.Repeat(Vector3.Normalize(outward ? normal : -normal), 3));
        }
    }

    private static Vector3 Metres(Point3 point) => new((float)point.X.Metres, (float)point.Y.Metres, (float)point.Z.Metres);
}
