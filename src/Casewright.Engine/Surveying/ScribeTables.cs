using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>The scribe tables of one run, from its parts and the readings of its wall.</summary>
internal sealed class ScribeTables(Job job, Run run, WallSurvey survey, Length wallWidth, IReadOnlyList<Part> parts)
{
    private readonly FloorProfile _floor = new(survey);

    /// <summary>Rows every 200 mm, in inches every 8.</summary>
    private Length Step => job.Units == UnitSystem.Inches ? Length.FromInches(8) : Length.FromMillimetres(200);

    /// <summary>Fillers at walls, left and right.</summary>
    public IEnumerable<FillerFit> Fillers()
    {
        foreach (var (end, measured, isLeft) in new[] { (run.Left, survey.LeftEnd, true), (run.Right, survey.RightEnd, false) })
        {
            if (end.Kind == EndKind.Wall && end.Filler > Length.Zero && measured is { Plumb.Count: > 0 } && Find(PartRole.Filler, isLeft) is { } part)
                yield return Filler(part, end, measured, isLeft);
        }
    }

    /// <summary>Toe faces, end panels, crowns.</summary>
    public IEnumerable<ScribeTable> Others() => ToeFaces().Concat(EndPanels()).Concat(Crowns());

    private FillerFit Filler(Part part, RunEnd end, WallEnd measured, bool isLeft)
    {
        var profile = new EndProfile(measured, survey.FrontLine);
        var most = isLeft ? survey.Opening!.LeftIn : survey.Opening!.RightIn;
        var away = isLeft ? run.Offset : wallWidth - RunEnd;
        var box = ShelfReader.Box(part);
        Length Gap(Length at) => end.Filler + away + most - profile.In(box.Low.Y + at, box.High.Z);
        return new(part.Id, isLeft, end.Filler, new()
        {
            Part = part.Id,
            Name = part.Name,
            Against = isLeft ? "left wall" : "right wall",
            Blank = part.Width,
            Length = part.Length,
            Rows = ScribeTable.RowsOf(part.Length, Step, profile.Heights.Select(h => h - box.Low.Y), part.Width, Gap),
        });
    }

    private IEnumerable<ScribeTable> ToeFaces()
    {
        if (_floor.IsEmpty)
            yield break;
        foreach (var part in parts.Where(p => p.Role == PartRole.ToeFace && p.Place.AlongLength is Axis.Right or Axis.Left))
        {
            var (low, high) = ShelfReader.Box(part);
            yield return new()
            {
                Part = part.Id,
                Name = part.Name,
                Against = "floor",
                Blank = part.Width,
                Length = part.Length,
                Rows = ScribeTable.RowsOf(
                    part.Length,
                    Step,
                    _floor.Points.Select(p => p.At - low.X).Distinct(),
                    part.Width,
                    at => run.Base.Height + _floor.Below(low.X + at, high.Z)),
            };
        }
    }

    private IEnumerable<ScribeTable> EndPanels()
    {
        var plane = new WallPlane(survey);
        if (plane.IsEmpty)
            yield break;
        foreach (var part in parts.Where(p => p.Role == PartRole.EndPanel))
        {
            var (low, high) = ShelfReader.Box(part);
            var x = low.X + ((high.X - low.X) / 2);
            yield return new()
            {
                Part = part.Id,
                Name = part.Name,
                Against = "wall behind",
                Blank = part.Width,
                Length = part.Length,
                Rows = ScribeTable.RowsOf(
                    part.Length,
                    Step,
                    survey.PlumbLines.SelectMany(l => l.Readings.Select(r => r.At - low.Y)).Distinct(),
                    part.Width,
                    at => run.Depth + plane.Behind(x, low.Y + at)),
            };
        }
    }

    private IEnumerable<ScribeTable> Crowns()
    {
        var ceiling = new ReadingCurve(survey.Ceiling.Select(s => (s.At, survey.Datum + Length.Min(s.Back ?? s.Front!.Value, s.Front ?? s.Back!.Value))));
        if (ceiling.IsEmpty)
            yield break;
        foreach (var part in parts.Where(p => p.Role == PartRole.Crown && p.Place.AlongLength is Axis.Right or Axis.Left))
        {
            var (low, _) = ShelfReader.Box(part);
            yield return new()
            {
                Part = part.Id,
                Name = part.Name,
                Against = "ceiling",
                Blank = part.Width,
                Length = part.Length,
                Rows = ScribeTable.RowsOf(part.Length, Step, ceiling.Readings.Select(r => r.At - low.X), part.Width, at => ceiling.At(low.X + at) - low.Y),
            };
        }
    }

    private Length RunEnd => run.Width is { } width ? run.Offset + width : wallWidth;

    private Part? Find(PartRole role, bool isLeft)
    {
        var found = parts.Where(p => p.Role == role).OrderBy(p => ShelfReader.Box(p).Low.X).ToList();
        if (found.Count == 0)
            return null;
        var part = isLeft ? found[0] : found[^1];
        var middle = run.Offset + ((RunEnd - run.Offset) / 2);
        return ShelfReader.Box(part).Low.X < middle == isLeft ? part : null;
    }
}
