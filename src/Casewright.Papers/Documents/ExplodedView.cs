using Casewright.Model.Parts;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>
/// A case taken apart, each part moved out the way it came in: sides to the left and right, top and bottom up and down, bays apart, the
/// back to the right, a face frame to the left. Fronts are drawn true to scale, depths at half scale rising to the right, so upper and
/// right-hand faces are seen.
/// </summary>
internal sealed class ExplodedView
{
    private const double DepthScale = 0.5;
    private const double BalloonRadius = 2.3;

    private static readonly (double X, double Y) Receding = (DepthScale * Math.Cos(Math.PI / 5), DepthScale * Math.Sin(Math.PI / 5));
    private static readonly Lettering Code = new(10, FontFamily.BarlowCondensed, FontWeight.Bold);
    private static readonly Lettering Step = new(Lettering.Smallest, FontFamily.BarlowCondensed, FontWeight.Bold);
    private static readonly PartRole[] Frame = [PartRole.Stile, PartRole.Rail];

    private readonly CaseGroup _group;
    private readonly List<Solid> _solids;

    public ExplodedView(CaseGroup group, IReadOnlyList<AssemblyStep> steps)
    {
        _group = group;
        _solids = InPaintingOrder([.. steps.SelectMany(step => step.Parts.Select(part => SolidOf(part, step.Number)))]);
    }

    /// <summary>Draws into the box, as large as it allows; returns the height used.</summary>
    public double Draw(Sketch sketch, Box area)
    {
        var outline = Box.Around(_solids.SelectMany(solid => solid.Outline));
        var scale = Math.Min((area.Width - 8) / outline.Width, (area.Height - 8) / outline.Height);
        var left = area.Left + ((area.Width - (outline.Width * scale)) / 2);
        Point At(Point p) => new(left + ((p.X - outline.Left) * scale), area.Top + 4 + ((p.Y - outline.Top) * scale));
        foreach (var solid in _solids)
        {
            sketch.Group("assembly:" + solid.Part.Id, solid.Part.Name, "part", group =>
            {
                foreach (var (face, tone) in solid.Faces)
                    group.Area(face.Select(At), Pen.Thin, tone);
            });
        }

        Label(sketch, area, At);
        return (outline.Height * scale) + 8;
    }

    private void Label(Sketch sketch, Box area, Func<Point, Point> at)
    {
        var space = new FreeSpace();
        foreach (var solid in _solids.OrderBy(solid => solid.Part.Id, StringComparer.Ordinal))
        {
            var code = _group.CodeOf(solid.Part);
            var width = (2 * BalloonRadius) + 1 + TextLayout.Width(code, Code);
            var (low, high) = (at(solid.LowFront), at(solid.HighFront));
            var candidates = Spots(low, high).Select(p => new Box(p.X - (width / 2), p.Y - BalloonRadius, width, 2 * BalloonRadius))
                .Where(box => area.Contains(box));
            if (space.TakeFirst(candidates) is not { } place)
                continue;
            sketch.Circle(place.Left + BalloonRadius, place.Centre.Y, BalloonRadius, Pen.Thin, Tone.Sheet);
            sketch.TextCentred(Text(solid.Step), place.Left + BalloonRadius, place.Centre.Y, Step, Anchor.Middle, backed: true);
            sketch.TextCentred(code, place.Left + (2 * BalloonRadius) + 0.8, place.Centre.Y, Code, backed: true);
        }
    }

    // Along the middle of the front, from its middle outwards.
    private static IEnumerable<Point> Spots(Point low, Point high)
    {
        foreach (var share in (double[])[0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9])
        {
            yield return new(low.X + ((high.X - low.X) * share), (low.Y + high.Y) / 2);
            yield return new((low.X + high.X) / 2, low.Y + ((high.Y - low.Y) * share));
        }

        for (var away = 5.0; away <= 30; away += 5)
        {
            yield return new((low.X + high.X) / 2, low.Y + away);
            yield return new(high.X + away, (low.Y + high.Y) / 2);
            yield return new(low.X - away, (low.Y + high.Y) / 2);
            yield return new((low.X + high.X) / 2, high.Y - away);
        }
    }

    private static string Text(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private Solid SolidOf(Part part, int step)
    {
        var (low, high, move) = (PartBox.Low(part), PartBox.High(part), Move(part));
        return new(
            part,
            step,
            (PartBox.Mm(low.X) + move.X, PartBox.Mm(low.Y) + move.Y, PartBox.Mm(low.Z) + move.Z),
            (PartBox.Mm(high.X) + move.X, PartBox.Mm(high.Y) + move.Y, PartBox.Mm(high.Z) + move.Z))
        {
            Cut = PartSolid.IsCut(part) ? [.. PartSolid.SeenFromFront(part).Select(p => (PartBox.Mm(p.X) + move.X, PartBox.Mm(p.Y) + move.Y))] : [],
        };
    }

    private (double X, double Y, double Z) Move(Part part)
    {
        var box = _group.First;
        var (gap, depth, width) = (PartBox.Mm(box.Depth) * 0.9, PartBox.Mm(box.Depth), PartBox.Mm(box.Width));
        var middle = (box.Bays - 1) * gap / 2;
        return part.Role switch
        {
            PartRole.Side => (part.Hand == Hand.Right ? (box.Bays - 0.5) * gap : -0.5 * gap, 0, 0),
            PartRole.Top => (middle, gap * 0.8, 0),
            PartRole.Bottom => (middle, -gap * 0.8, 0),
            PartRole.Partition or PartRole.FixedShelf => (gap * Bay(part), 0, 0),
            PartRole.Back => (width + (box.Bays * gap) + (depth * 0.4), 0, 0),
            PartRole.Nailer => (BayShift(part, gap), 0, -depth * 0.6),
            PartRole.Stile or PartRole.Rail => (-width - gap - (depth * 0.4), 0, 0),
            PartRole.Nosing => Hosted(part, gap, depth),
            _ => (BayShift(part, gap), 0, depth * 0.5),
        };
    }

    // A nosing stays with what it belongs to, moved to the front.
    private (double X, double Y, double Z) Hosted(Part nosing, double gap, double depth)
    {
        var host = _group.Parts.FirstOrDefault(part => part.Nosing == nosing.Id);
        var (x, y, z) = host is null ? (BayShift(nosing, gap), 0, 0) : Move(host);
        return (x, y, z + (depth * 0.35));
    }

    private double BayShift(Part part, double gap) => part.Length > _group.First.ClearBay + (_group.First.ClearBay / 2) ? (_group.First.Bays - 1) * gap / 2 : gap * Bay(part);

    // Shelves by the bay they are in, partitions half a bay before the one to their right.
    private double Bay(Part part)
    {
        var box = _group.First;
        var (low, high) = (PartBox.Mm(PartBox.Low(part).X - box.X), PartBox.Mm(PartBox.High(part).X - box.X));
        var share = (low + high) / 2 / PartBox.Mm(box.Width) * box.Bays;
        return part.Role == PartRole.Partition ? Math.Round(share) - 0.5 : Math.Clamp(Math.Floor(share), 0, box.Bays - 1);
    }

    // What lies behind, beneath or to the left of another is drawn before it; the order of the steps decides the rest.
    private static List<Solid> InPaintingOrder(List<Solid> solids)
    {
        var (waiting, done) = (new List<Solid>(solids), new List<Solid>());
        while (waiting.Count > 0)
        {
            var next = waiting.FirstOrDefault(solid => !waiting.Any(other => other != solid && other.IsBehind(solid))) ?? waiting[0];
            waiting.Remove(next);
            done.Add(next);
        }

        return done;
    }

    private static Point Project((double X, double Y, double Z) p) => new(p.X - (p.Z * Receding.X), -(p.Y - (p.Z * Receding.Y)));

    private sealed record Solid(Part Part, int Step, (double X, double Y, double Z) Low, (double X, double Y, double Z) High)
    {
        /// <summary>Its outline from the front, anticlockwise, where it is cut on a slant; empty for a block.</summary>
        public IReadOnlyList<(double X, double Y)> Cut { get; init; } = [];

        public Point LowFront => Project((Low.X, Low.Y, High.Z));

        public Point HighFront => Project(High);

        public IEnumerable<Point> Outline =>
        [
            LowFront, Project((High.X, Low.Y, High.Z)), Project((High.X, Low.Y, Low.Z)), Project((High.X, High.Y, Low.Z)), Project((Low.X, High.Y, Low.Z)), Project((Low.X, High.Y, High.Z)),
        ];

        public IEnumerable<(Point[] Face, Tone Tone)> Faces
        {
            get
            {
                var tone = Frame.Contains(Part.Role) || Part.Role == PartRole.Nosing ? Tone.WoodEdge : Tone.Sheet;
                if (Cut.Count > 0)
                {
                    foreach (var face in CutFaces(tone))
                        yield return face;
                    yield break;
                }

                yield return ([Project((Low.X, High.Y, High.Z)), Project(High), Project((High.X, High.Y, Low.Z)), Project((Low.X, High.Y, Low.Z))], Tone.Wood);
                yield return ([Project((High.X, Low.Y, High.Z)), Project(High), Project((High.X, High.Y, Low.Z)), Project((High.X, Low.Y, Low.Z))], Tone.WoodEdge);
                yield return ([LowFront, Project((High.X, Low.Y, High.Z)), HighFront, Project((Low.X, High.Y, High.Z))], tone);
            }
        }

        // The edges that look up or to the right, as far back as the part is deep, then its front.
        private IEnumerable<(Point[] Face, Tone Tone)> CutFaces(Tone front)
        {
            for (var i = 0; i < Cut.Count; i++)
            {
                var (a, b) = (Cut[i], Cut[(i + 1) % Cut.Count]);
                var (right, up) = (b.Y - a.Y, a.X - b.X);
                if ((right * Receding.X) + (up * Receding.Y) > 0)
                    yield return ([Project((a.X, a.Y, High.Z)), Project((b.X, b.Y, High.Z)), Project((b.X, b.Y, Low.Z)), Project((a.X, a.Y, Low.Z))], up > right ? Tone.Wood : Tone.WoodEdge);
            }

            yield return ([.. Cut.Select(p => Project((p.X, p.Y, High.Z)))], front);
        }

        // Going away from the eye, x, y and z all fall: what lies farther in one direction and nearer in none is hidden, not hiding.
        public bool IsBehind(Solid other) => Overlaps(other) && IsFartherSomewhere(other) && !other.IsFartherSomewhere(this);

        private bool IsFartherSomewhere(Solid other) => High.X <= other.Low.X + 1 || High.Y <= other.Low.Y + 1 || High.Z <= other.Low.Z + 1;

        private bool Overlaps(Solid other) => Box.Around(Outline).Overlaps(Box.Around(other.Outline));
    }
}
