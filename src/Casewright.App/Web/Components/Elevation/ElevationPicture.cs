using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>A part seen from the front, in millimetres of the room, y upwards.</summary>
public sealed record PartPicture(Part Part, double X, double Y, double Width, double Height)
{
    /// <summary>Its true outline, where it is cut on a slant; null for a rectangle.</summary>
    public IReadOnlyList<(double X, double Y)>? Outline { get; } = PartSolid.IsCut(Part)
        ? [.. PartSolid.SeenFromFront(Part).Select(p => (ElevationPicture.Mm(p.X), ElevationPicture.Mm(p.Y)))]
        : null;
}

/// <summary>A height at which splices of a run stand.</summary>
public sealed record SpliceLine(string Run, Length Height, int Count, double FromX, double ToX, bool Sight);

/// <summary>One wall with its casework, seen from the front.</summary>
public sealed class ElevationPicture
{
    private ElevationPicture(string wall, double wallWidth, double wallHeight, IReadOnlyList<PartPicture> parts, IReadOnlyList<CaseBox> cases, IReadOnlyList<SpliceLine> splices)
    {
        Wall = wall;
        WallWidth = wallWidth;
        WallHeight = wallHeight;
        Parts = parts;
        Cases = cases;
        Splices = splices;
    }

    /// <summary>Id of the wall.</summary>
    public string Wall { get; }

    /// <summary>Width of the wall, mm.</summary>
    public double WallWidth { get; }

    /// <summary>Height of the ceiling, mm.</summary>
    public double WallHeight { get; }

    /// <summary>What lies above a sloping ceiling, up to <see cref="WallHeight"/>; empty under a level one.</summary>
    public IReadOnlyList<(double X, double Y)> AboveSlope { get; private init; } = [];

    /// <summary>The outline of a case, its top along the slope.</summary>
    public static IReadOnlyList<(double X, double Y)> OutlineOf(CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(box);
        var (left, right) = (box.X, box.X + box.Width);
        return
        [
            (Mm(left), Mm(box.Y)), (Mm(right), Mm(box.Y)),
            (Mm(right), Mm(box.Y + box.HeightAt(right))), (Mm(left), Mm(box.Y + box.HeightAt(left))),
        ];
    }

    /// <summary>Parts from the wall outwards, so that later ones cover earlier ones.</summary>
    public IReadOnlyList<PartPicture> Parts { get; }

    /// <summary>Cases of the wall.</summary>
    public IReadOnlyList<CaseBox> Cases { get; }

    /// <summary>Heights of splices, run by run.</summary>
    public IReadOnlyList<SpliceLine> Splices { get; }

    /// <summary>The picture of a wall.</summary>
    public static ElevationPicture Of(Job job, Casework casework, CutPlan? cutting, string wallId)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        var wall = job.Walls.First(w => w.Id == wallId);
        var parts = casework.Parts.Where(p => p.Place.Wall == wallId).ToList();
        var pictures = parts
            .Select(p => (Part: p, Low: p.LowCorner, High: p.HighCorner))
            .OrderBy(p => p.High.Z).ThenBy(p => p.Part.Role == PartRole.Back ? 0 : 1)
            .Select(p => new PartPicture(p.Part, Mm(p.Low.X), Mm(p.Low.Y), Mm(p.High.X - p.Low.X), Mm(p.High.Y - p.Low.Y)))
            .ToList();
        return new(
            wallId,
            Mm(wall.Width),
            Mm(wall.Height),
            pictures,
            [.. casework.Cases.Where(c => c.Wall == wallId)],
            cutting is null ? [] : [.. Lines(cutting, parts)])
        {
            AboveSlope = wall.CeilingSlopes.Count == 0
                ? []
                : [(0, Mm(wall.Height)), .. wall.CeilingLine(Length.Zero, wall.Width).Select(c => (Mm(c.X), Mm(c.Height))), (Mm(wall.Width), Mm(wall.Height))],
        };
    }

    /// <summary>The height above the floor of a splice in an upright part; null when the part does not stand.</summary>
    public static Length? HeightOf(Splice splice, Part part)
    {
        ArgumentNullException.ThrowIfNull(splice);
        ArgumentNullException.ThrowIfNull(part);
        return part.Place.AlongLength switch
        {
            Axis.Up => part.Place.Origin.Y + splice.Position,
            Axis.Down => part.Place.Origin.Y - splice.Position,
            _ => null,
        };
    }

    /// <summary>Millimetres for drawing only.</summary>
    public static double Mm(Length length) => length.Nanometres / 1e6;

    private static IEnumerable<SpliceLine> Lines(CutPlan cutting, IReadOnlyList<Part> parts)
    {
        var byId = parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var lines = from splice in cutting.Splices
                    where byId.ContainsKey(splice.Part)
                    let part = byId[splice.Part]
                    where part.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel
                    let height = HeightOf(splice, part)
                    where height is not null
                    group (splice, part) by (part.Run, Height: height.Value) into line
                    select new SpliceLine(
                        line.Key.Run,
                        line.Key.Height,
                        line.Count(),
                        line.Min(s => Mm(s.part.LowCorner.X)),
                        line.Max(s => Mm(s.part.HighCorner.X)),
                        line.Any(s => s.splice.SightLine is not null));
        return lines.OrderBy(l => l.Run, StringComparer.Ordinal).ThenBy(l => l.Height);
    }
}
