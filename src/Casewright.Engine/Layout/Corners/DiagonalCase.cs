using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Corners;

/// <summary>
/// One case in a diagonal corner: side A square to the wall of the run that carries it, side B square to the other; pentagon tops, bottoms and shelves, each cut
/// from a rectangle with one corner clipped at 45 degrees; backs planted along both walls; shelves housed in the sides and borne by cleats on the backs.
/// </summary>
internal sealed class DiagonalCase
{
    private readonly RunFigures _run;
    private readonly TierSpan _tier;
    private readonly CornerFigures _corner;
    private readonly DiagonalFigures _d;
    private readonly bool _atRight;
    private readonly Length _near;
    private readonly Length _far;

    /// <summary>The case of a tier.</summary>
    /// <param name="run">The run that carries it.</param>
    /// <param name="tier">The tier.</param>
    /// <param name="id">Its id.</param>
    /// <param name="atRight">Whether the corner is at the right end of the run.</param>
    public DiagonalCase(RunFigures run, TierSpan tier, string id, bool atRight)
    {
        (_run, _tier, Id, _atRight) = (run, tier, id, atRight);
        _corner = (atRight ? run.Right : run.Left).Corner!;
        _d = _corner.Diagonal!;
        _near = atRight ? run.CasesRight : run.CasesLeft;
        _far = atRight ? _near + _d.Leg : _near - _d.Leg;
    }

    /// <summary>Its id.</summary>
    public string Id { get; }

    private Length T => _run.T;

    private Length Tb => _run.Tb;

    private Length A => _run.Joinery.DadoDepth;

    private Length Left => Length.Min(_near, _far);

    /// <summary>What is cut off the front corner of a panel: from arris to arris, and both dados.</summary>
    private Length ClipLeg => _d.Across + (A * 2);

    /// <summary>The case as placed; its box is the rectangle that it is cut from.</summary>
    public CaseBox Box(int column) => new()
    {
        Id = Id,
        Run = _run.Run.Id,
        Wall = _run.Wall.Id,
        Column = column,
        Tier = _tier.Index,
        X = Left,
        Y = _tier.Y,
        Width = _d.Leg,
        Height = _tier.Height,
        Depth = _d.OtherLeg,
        Bays = 1,
        ClearBay = _d.Leg - T - Tb,
    };

    /// <summary>Sides, bottom, top, shelves, backs, cleats, door.</summary>
    public IEnumerable<Part> Parts()
    {
        var levels = Levels().ToList();
        yield return SideA(levels);
        yield return SideB(levels);
        foreach (var level in levels)
            yield return Panel(level);
        foreach (var back in Backs())
            yield return back;
        foreach (var cleat in levels.Where(l => l.Role == PartRole.FixedShelf && _run.Back is not null).SelectMany(Cleats))
            yield return cleat;
        if (_d.Door is not null)
            yield return Door();
    }

    private sealed record LevelAt(string Id, string Name, PartRole Role, Length Upper, Length Setback);

    private IEnumerable<LevelAt> Levels()
    {
        yield return new(Id + "-B", "bottom", PartRole.Bottom, _tier.Y + T, Length.Zero);
        var shelves = _corner.Design.Shelves;
        var clear = _tier.Height - (T * (2 + shelves));

        // Shelves stand back behind a door by its thickness and its gap, measured square to the front.
        var setback = _d.Door is { } door ? DiagonalFigures.Diagonal(door.Thickness + _run.Gaps.Inset) : Length.Zero;
        for (var i = 1; i <= shelves; i++)
        {
            var upper = _tier.Y + T + (clear * i / (shelves + 1)) + (T * i);
            yield return new(PartIds.Numbered(Id, "F", i), string.Create(CultureInfo.InvariantCulture, $"fixed shelf {i}"), PartRole.FixedShelf, upper, setback);
        }

        yield return new(Id + "-T", "top", PartRole.Top, _tier.YEnd, Length.Zero);
    }

    private Part SideA(List<LevelAt> levels)
    {
        var inner = _atRight ? _near + T : _near - T;
        var place = _atRight ? Pose.LeftSide(_run.Wall.Id, inner, _tier.Y, _d.Depth) : Pose.FacingLeft(_run.Wall.Id, inner, _tier.Y, _d.Depth);
        return Side(_atRight ? Hand.Left : Hand.Right, _run.Run.Depth, $"depth of run {_run.Run.Name} ({_run.DepthPath})", place, levels, hinged: true);
    }

    private Part SideB(List<LevelAt> levels)
    {
        var front = _atRight ? _far - _d.OtherDepth : _far + _d.OtherDepth;
        var place = new Placement(_run.Wall.Id, new(front, _tier.Y, _d.OtherLeg - T), Axis.Up, _atRight ? Axis.Right : Axis.Left, Axis.Out);
        return Side(_atRight ? Hand.Right : Hand.Left, _d.OtherDepth, $"depth of run {_corner.Other.Name}", place, levels, hinged: false);
    }

    private Part Side(Hand hand, Length depth, string meaning, Placement place, List<LevelAt> levels, bool hinged)
    {
        var length = Rule.Of(new("H", "height of the tier", _tier.Height)).Nearest(Dimensions.Length, _run.Step);
        var width = Rule.Of(new("D", meaning, depth)).MinusAny(Symbols.Back(_run)).Nearest(Dimensions.Width, _run.Step);
        var left = hand == Hand.Left;
        var part = Make(Id + (left ? "-L" : "-R"), (left ? "left" : "right") + " side", PartRole.Side, new(length, width, PartMaker.Thickness(_run.Panel)), place, FaceView.Side(Exposure.Hidden));
        var dados = A == Length.Zero
            ? []
            : levels.Select(l => new Dado(l.Id, Face.Reference, l.Upper - T - _tier.Y, T, A, Length.Zero, part.Width) as Machining);
        var plates = hinged && _d.Door is not null ? HingeHeights().Select(y => new HardwareZone($"hinge of {Id}-D1", Face.Reference, y - s_halfPlate, y + s_halfPlate) as Machining) : [];
        return part with { Hand = hand, Machining = [.. dados, .. plates] };
    }

    /// <summary>L − t + a − tb by M − t + a − tb, the corner clipped from arris to arris and by both dados.</summary>
    private Part Panel(LevelAt level)
    {
        Rule Along(string symbol, string meaning, Length leg) => Rule.Of(new DerivationInput(symbol, meaning, leg))
            .Minus(Symbols.Thickness(_run)).Plus(Symbols.Dado(_run)).MinusAny(Symbols.Back(_run));
        var size = new PartSize(
            Along("L", $"leg of the diagonal case ({_corner.Path}.corner.leg)", _d.Leg).Nearest(Dimensions.Length, _run.Step),
            Along("M", "leg along the other wall: L − D2 + D1", _d.OtherLeg).Nearest(Dimensions.Width, _run.Step),
            PartMaker.Thickness(_run.Panel));
        var left = _atRight ? _near + T - A : _far + Tb;
        var place = Pose.Level(_run.Wall.Id, left, level.Upper, _d.OtherLeg - T + A);
        var faces = level.Role switch { PartRole.Bottom => FaceView.Bottom, PartRole.Top => FaceView.Top(Exposure.Hidden), _ => FaceView.Shelf };
        var leg = (ClipLeg + level.Setback).RoundTo(_run.Step);
        var part = Make(level.Id, level.Name, level.Role, size, place, faces);
        return part with { Machining = [new Clip("diagonal front", _atRight ? PartEdge.Start : PartEdge.End, PartEdge.Reference, leg, leg)] };
    }

    private IEnumerable<Part> Backs()
    {
        if (_run.Back is not { } material)
            yield break;
        var reveal = Symbols.Joint(_run, "v", "reveal of the back", "backReveal", _run.Joinery.BackReveal);
        var height = Rule.Of(new("H", "height of the tier", _tier.Height)).Minus(reveal, 2).Down(Dimensions.Length, _run.Step);
        var foot = _tier.Y + reveal.Value;
        var along = Rule.Of(new("L", "leg along the wall", _d.Leg)).Minus(reveal).Down(Dimensions.Width, _run.Step);
        var leftA = _atRight ? _near + reveal.Value : _far;
        yield return Make(
            Id + "-K1", "back 1", PartRole.Back, new(height, along, PartMaker.Thickness(material)), Pose.UprightFacingRoom(_run.Wall.Id, leftA, foot, Tb), FaceView.FrontOnly, material);
        var across = Rule.Of(new("M", "leg along the other wall: L − D2 + D1", _d.OtherLeg)).Minus(reveal).MinusAny(Symbols.Back(_run)).Down(Dimensions.Width, _run.Step);
        var place = new Placement(_run.Wall.Id, new(_atRight ? _far - Tb : _far + Tb, foot, Tb), Axis.Up, Axis.Out, _atRight ? Axis.Right : Axis.Left);
        yield return Make(Id + "-K2", "back 2", PartRole.Back, new(height, across, PartMaker.Thickness(material)), place, FaceView.FrontOnly, material);
    }

    private static readonly Length s_cleat = Length.FromMillimetres(40);

    private IEnumerable<Part> Cleats(LevelAt shelf)
    {
        var width = Rule.Of(new("y", "height of a cleat, 40 mm (common practice, no source)", s_cleat)).Nearest(Dimensions.Width, _run.Step);
        var under = shelf.Upper - T;
        var number = shelf.Id[(shelf.Id.LastIndexOf('F') + 1)..];
        var along = Rule.Of(new("L", "leg along the wall", _d.Leg)).Minus(Symbols.Thickness(_run)).MinusAny(Symbols.Back(_run)).Down(Dimensions.Length, _run.Step);
        var left = _atRight ? _near + T : _far + Tb;
        yield return Make(
            $"{Id}-Y{number}.1", $"cleat 1 of shelf {number}", PartRole.Cleat, new(along, width, PartMaker.Thickness(_run.Panel)), Pose.StripFromAbove(_run.Wall.Id, left, under, Tb + T), FaceView.FrontOnly);
        var across = Rule.Of(new("M", "leg along the other wall", _d.OtherLeg)).Minus(Symbols.Thickness(_run), 2).MinusAny(Symbols.Back(_run)).Down(Dimensions.Length, _run.Step);
        var place = _atRight
            ? Pose.ReturnFacingLeft(_run.Wall.Id, _far - Tb - T, under, _d.OtherLeg - T)
            : Pose.ReturnFacingRight(_run.Wall.Id, _far + Tb + T, under, _d.OtherLeg - T);
        yield return Make($"{Id}-Y{number}.2", $"cleat 2 of shelf {number}", PartRole.Cleat, new(across, width, PartMaker.Thickness(_run.Panel)), place, FaceView.FrontOnly);
    }

    private static readonly Length s_halfPlate = Length.FromMillimetres(26);

    /// <summary>Middles of the hinges above the foot of the case: 100 mm from the ends of the door, the rest evenly between.</summary>
    private IEnumerable<Length> HingeHeights()
    {
        var height = _tier.Height - (T * 2);
        var count = Fronts.Hinges.Count(height);
        var end = Length.FromMillimetres(100);
        return Enumerable.Range(0, count).Select(i => T + end + ((height - (end * 2)) * i / (count - 1)));
    }

    /// <summary>o − 2 gaps by opening − 2 gaps, inset between the arrises, hung on side A on hinges for a front at 45 degrees.</summary>
    private Part Door()
    {
        var material = _d.Door!;
        var gap = new DerivationInput("gi", $"gap round an inset front ({_run.Path}.frontGaps.inset)", _run.Gaps.Inset);
        var height = Rule.Of(new("H", "height of the tier", _tier.Height)).Minus(Symbols.Thickness(_run), 2).Minus(gap, 2).Down(Dimensions.Length, _run.Step);
        var width = Rule.Of(new("o", "clear width of the diagonal front: √2·(L − D2 − t)", _d.Opening)).Minus(gap, 2).Down(Dimensions.Width, _run.Step);
        var share = DiagonalFigures.Diagonal(_run.Gaps.Inset) / 2;
        var corner = _atRight
            ? new Point3(_near + T + share, _tier.Y + T + _run.Gaps.Inset, _d.Depth + share)
            : new Point3(_far + _d.OtherDepth + share, _tier.Y + T + _run.Gaps.Inset, _d.OtherLeg - T - share);
        var place = new Placement(_run.Wall.Id, corner, Axis.Up, Axis.Right, Axis.In) { Eighths = _atRight ? 1 : -1 };
        var part = Make(Id + "-D1", "diagonal door", PartRole.Door, new(height, width, PartMaker.Thickness(material)), place, FaceView.Front, material);
        var cup = Length.FromMillimetres(22.5m);
        var cups = HingeHeights().Select(y => new Bore(
            Fronts.Hinges.For, Face.Opposite, y - T - _run.Gaps.Inset, _atRight ? cup : part.Width - cup, Length.FromMillimetres(35), Length.FromMillimetres(12.5m)) as Machining);
        return part with { Hand = _atRight ? Hand.Left : Hand.Right, Machining = [.. cups] };
    }

    private Part Make(string id, string name, PartRole role, PartSize size, Placement place, FaceView faces, Material? material = null) =>
        PartMaker.InRun(_run, id, $"{name}, corner case {Id[1..]}", role, material ?? _run.Panel, size, place, faces) with { Case = Id };
}
