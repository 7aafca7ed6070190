using Casewright.Engine.Editing;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.App.Web.Components.Elevation.ElevationPicture;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>A dimension line of the elevation, in mm of the drawing, y downwards.</summary>
/// <param name="X0">Its start.</param>
/// <param name="Y0">Its start.</param>
/// <param name="X1">Its end.</param>
/// <param name="Y1">Its end.</param>
/// <param name="Value">The length it tells.</param>
/// <param name="Shown">Whether there is room for its figure.</param>
/// <param name="Target">What typing over it changes; null when it only tells.</param>
/// <param name="Chosen">Whether it is of what is chosen.</param>
public sealed record Dimension(double X0, double Y0, double X1, double Y1, Length Value, bool Shown, DimensionTarget? Target, bool Chosen)
{
    /// <summary>Whether it stands upright.</summary>
    public bool Upright => X0 == X1;

    /// <summary>A name that stays while the drawing changes.</summary>
    public string Key => Target?.Name ?? $"{X0:0}|{Y0:0}|{X1:0}|{Y1:0}";
}

/// <summary>The dimension lines of an elevation: cases and wall below; levels and ceiling at the left, those of the chosen case where one is chosen.</summary>
/// <param name="job">The job.</param>
/// <param name="casework">Its layout.</param>
/// <param name="picture">The drawing.</param>
/// <param name="scale">Its scale.</param>
/// <param name="chosen">The case chosen; null when none is.</param>
public sealed class Dimensions(Job job, Casework casework, ElevationPicture picture, ElevationScale scale, CaseBox? chosen)
{
    private const double FigureWidth = 7.6;
    private readonly double _u = scale.U;

    /// <summary>All of them.</summary>
    public IEnumerable<Dimension> All()
    {
        var wall = job.Walls.First(w => w.Id == picture.Wall);
        var below = picture.WallHeight + (38 * _u);
        foreach (var box in picture.Cases.Where(c => c.Tier == 0).OrderBy(c => c.X))
            yield return Level(Mm(box.X), Mm(box.X + box.Width), below, box.Width, DimensionTarget.CaseWidth(box), box.Id == chosen?.Id);
        yield return Level(0, picture.WallWidth, below + (32 * _u), wall.Width, DimensionTarget.WallWidth(wall.Id, wall.Name), false);

        var left = -(scale.Narrow ? 30 : 42) * _u;
        foreach (var level in Levels())
            yield return Standing(left, level.From, level.To, level.Target, chosen is not null);
        yield return Standing(left - (30 * _u), Length.Zero, wall.Height, DimensionTarget.WallHeight(wall.Id, wall.Name), false);
    }

    private IEnumerable<(Length From, Length To, DimensionTarget? Target)> Levels()
    {
        if (chosen is { } box)
            return LevelsOf(box);
        var first = picture.Cases.OrderBy(c => c.X).ThenBy(c => c.Y).Select(c => c.Run).FirstOrDefault();
        var stack = picture.Cases.Where(c => c.Run == first && c.Column == 0).OrderBy(c => c.Y).ToList();
        return stack.SelectMany((c, i) => i == 0 && c.Y > Length.Zero
            ? new[] { (Length.Zero, c.Y, (DimensionTarget?)DimensionTarget.BaseHeight(c.Run)), (c.Y, c.Y + c.Height, DimensionTarget.CaseHeight(c)) }
            : [(c.Y, c.Y + c.Height, DimensionTarget.CaseHeight(c))]);
    }

    private IEnumerable<(Length From, Length To, DimensionTarget? Target)> LevelsOf(CaseBox box)
    {
        if (box.Tier == 0 && box.Y > Length.Zero)
            yield return (Length.Zero, box.Y, DimensionTarget.BaseHeight(box.Run));
        var from = box.Y;
        foreach (var shelf in ShelfEditing.HeightsNow(casework, box.Id))
        {
            yield return (from, shelf, DimensionTarget.Opening(box, from, shelf));
            from = shelf;
        }

        yield return from == box.Y ? (from, box.Y + box.Height, DimensionTarget.CaseHeight(box)) : (from, box.Y + box.Height, null);
    }

    private Dimension Level(double from, double to, double y, Length value, DimensionTarget target, bool isChosen) =>
        new(from, y, to, y, value, HasRoom(value, to - from), target, isChosen);

    private Dimension Standing(double x, Length from, Length to, DimensionTarget? target, bool isChosen) =>
        new(x, picture.WallHeight - Mm(from), x, picture.WallHeight - Mm(to), to - from, HasRoom(to - from, Mm(to - from)), target, isChosen);

    private bool HasRoom(Length value, double millimetres) => millimetres / _u > (Shown.Length(value, job.Units).Length * FigureWidth) + 10;
}
