using System.Globalization;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.App.Web.Components.Steps;

/// <summary>A surveyed wall as drawn: what is out of level or plumb is enlarged against lengths, by a factor that is stated. Units of the picture.</summary>
public sealed class MeasurePicture
{
    private const double Largest = 26;
    private const double Widest = 720;
    private const double Side = 54;
    private const double Ends = 48;
    private readonly Wall _wall;
    private readonly WallSurvey _survey;
    private readonly double _scale;

    /// <summary>Draws a wall, plumb and level without a survey; null while its width or height is not known.</summary>
    public static MeasurePicture? Of(Wall wall)
    {
        ArgumentNullException.ThrowIfNull(wall);
        return wall.Width > Length.Zero && wall.Height > Length.Zero ? new(wall, wall.Survey ?? new() { Datum = Length.FromMillimetres(1000) }) : null;
    }

    private MeasurePicture(Wall wall, WallSurvey survey)
    {
        (_wall, _survey) = (wall, survey);
        _scale = Math.Min((Widest - (2 * Side)) / Mm(wall.Width), 330 / Mm(wall.Height));
        var deepest = Deviations().DefaultIfEmpty(1).Max();
        Times = Math.Clamp(Math.Floor(Largest / (Math.Max(deepest, 0.5) * _scale)), 1, 40);
    }

    /// <summary>Width of the picture.</summary>
    public double Width => (Mm(_wall.Width) * _scale) + (2 * Side);

    /// <summary>Height of the picture.</summary>
    public double Height => (Mm(_wall.Height) * _scale) + (2 * Ends);

    /// <summary>How many times what is crooked is enlarged.</summary>
    public double Times { get; }

    /// <summary>The plumb box of the opening: left, top, width, height.</summary>
    public (double X, double Y, double W, double H) Opening => (X(Length.Zero), Y(_wall.Height), Mm(_wall.Width) * _scale, Mm(_wall.Height) * _scale);

    /// <summary>X of a place along the wall.</summary>
    public double X(Length at) => Side + (Mm(at) * _scale);

    /// <summary>Y of a height.</summary>
    public double Y(Length height) => Height - Ends - (Mm(height) * _scale);

    /// <summary>A length, not enlarged.</summary>
    public double Span(Length length) => Mm(length) * _scale;

    /// <summary>The floor on a line, as points; empty when it was not read.</summary>
    public string Floor(ReadingLine line) => Points(_survey.Floor.Where(s => s.On(line) is not null).OrderBy(s => s.At)
        .Select(s => (X(s.At), Y(Length.Zero) + Enlarged(s.On(line)!.Value - _survey.Datum))));

    /// <summary>The ceiling on a line, as points.</summary>
    public string Ceiling(ReadingLine line) => Points(_survey.Ceiling.Where(s => s.On(line) is not null).OrderBy(s => s.At)
        .Select(s => (X(s.At), Y(_wall.Height) - Enlarged(_survey.Datum + s.On(line)!.Value - _wall.Height))));

    /// <summary>An end on a line, as points.</summary>
    public string End(bool isLeft, ReadingLine line)
    {
        var end = isLeft ? _survey.LeftEnd : _survey.RightEnd;
        if (end is not { Plumb.Count: > 0 } || _survey.Opening is not { } opening || (line == ReadingLine.Front && _survey.FrontLine is null))
            return "";
        var profile = new EndProfile(end, _survey.FrontLine);
        var most = isLeft ? opening.LeftIn : opening.RightIn;
        return Points(profile.Heights.Select(h => (X(isLeft ? Length.Zero : _wall.Width) + ((isLeft ? -1 : 1) * Enlarged(most - profile.In(h, line))), Y(h))));
    }

    private double Enlarged(Length length) => Mm(length) * _scale * Times;

    private IEnumerable<double> Deviations()
    {
        var floor = new FloorProfile(_survey).Points.Select(p => Mm(p.Below.Abs()));
        var ceiling = _survey.Ceiling.SelectMany(s => new[] { s.Back, s.Front }).Where(r => r is not null).Select(r => Mm((_survey.Datum + r!.Value - _wall.Height).Abs()));
        var ends = new[] { _survey.LeftEnd, _survey.RightEnd }.Select(e => new EndProfile(e, _survey.FrontLine)).Select(p => Mm(p.InMost - p.InLeast));
        return floor.Concat(ceiling).Concat(ends);
    }

    private static string Points(IEnumerable<(double X, double Y)> points) =>
        string.Join(' ', points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:0.0},{p.Y:0.0}")));

    private static double Mm(Length length) => (double)length.Millimetres;
}
