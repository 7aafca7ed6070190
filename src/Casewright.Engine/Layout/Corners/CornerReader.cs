using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Surveying;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Corners;

/// <summary>Works out the corners of a run and notes those that cannot be.</summary>
internal sealed class CornerReader(Job job, int index, ProblemList problems)
{
    /// <summary>Least and greatest angle of a corner that cases are set in: beyond, nothing made square fits (our judgement).</summary>
    private const double Least = 60;
    private const double Most = 120;

    private readonly Run _run = job.Runs[index];

    /// <summary>The corner at an end; null where there is none or it has a problem.</summary>
    public CornerFigures? At(bool left)
    {
        var end = left ? _run.Left : _run.Right;
        var path = string.Create(CultureInfo.InvariantCulture, $"runs[{index}].{(left ? "left" : "right")}");
        if (end.Kind != EndKind.Corner)
        {
            if (end.Corner is not null)
                problems.Add(path + ".corner", "Only an end of kind corner meets another run there.", "a corner", "none, or kind corner");
            return null;
        }

        if (end.Corner is not { } design)
        {
            problems.Add(path + ".corner", "An end of kind corner needs the run that it meets.", "nothing", "the id of that run and the kind of corner");
            return null;
        }

        return Other(design, path) is { } other && IsAtEnd(left, path) && AngleOf(left, design, path) is { } angle
            ? design.Kind == CornerKind.Diagonal
                ? new DiagonalReader(job, index, problems).Read(design, path, other, angle, left, end.Filler)
                : Figures(design, path, other, angle, left, end.Filler)
            : null;
    }

    /// <summary>What stands in front of this run's end cases in blind corners.</summary>
    public IEnumerable<BlindFigures> Blind(Length wallWidth)
    {
        foreach (var other in job.Runs)
        {
            foreach (var (end, atLeft) in new[] { (other.Left, true), (other.Right, false) })
            {
                if (end is not { Kind: EndKind.Corner, Corner: { Kind: CornerKind.Blind } corner } || corner.Run != _run.Id)
                    continue;
                // The other run's left end meets this run's right end.
                var angle = corner.Angle ?? Surveyed(other.Wall, atLeft) ?? 90;
                if (angle is < Least or > Most)
                    continue;
                var at = CornerCut.Of(RunReach.Deepest(other), RunReach.Deepest(_run), angle).AtFront + end.Filler;
                yield return new(atLeft, atLeft ? wallWidth - at : at, end.Filler, other);
            }
        }
    }

    private Run? Other(CornerDesign design, string path)
    {
        var other = job.Runs.FirstOrDefault(r => r.Id == design.Run);
        if (other is null || other.Id == _run.Id)
            problems.Add(path + ".corner.run", "There is no such other run.", $"'{design.Run}'", "one of " + string.Join(", ", job.Runs.Where(r => r.Id != _run.Id).Select(r => r.Id)));
        else if (other.Wall == _run.Wall)
            problems.Add(path + ".corner.run", "The two runs stand along one wall.", $"'{design.Run}'", "a run along the wall that meets this one here");
        else if (design.Kind is CornerKind.Dead or CornerKind.Diagonal && !MeetsBack(other, design.Kind))
            problems.Add(path + ".corner.kind", $"In a {(design.Kind == CornerKind.Dead ? "dead" : "diagonal")} corner both runs stop.", "only this one", $"an end of run {other.Name} of kind corner with run {_run.Id}");
        else
            return other;
        return null;
    }

    private bool MeetsBack(Run other, CornerKind kind) =>
        new[] { other.Left, other.Right }.Any(e => e is { Kind: EndKind.Corner, Corner: { } corner } && corner.Kind == kind && corner.Run == _run.Id);

    private bool IsAtEnd(bool left, string path)
    {
        if (job.Walls.FirstOrDefault(w => w.Id == _run.Wall) is not { } wall)
            return false;
        var end = _run.Width is { } width ? _run.Offset + width : wall.Width;
        if (left ? _run.Offset == Length.Zero : end == wall.Width)
            return true;
        problems.Add(path + ".kind", "A run that meets a corner is measured from it.", left ? _run.Offset : end, left ? "no offset" : $"a run that ends at {problems.Say(wall.Width)}, the end of its wall");
        return false;
    }

    private double? AngleOf(bool left, CornerDesign design, string path)
    {
        var angle = design.Angle ?? (design.Kind == CornerKind.Diagonal ? DiagonalReader.StatedAngle(job, _run, design) : null) ?? Surveyed(_run.Wall, left) ?? 90;
        if (angle is >= Least and <= Most)
            return angle;
        problems.Add(path + ".corner.angle", "Square cases do not fit a corner of this angle.", string.Create(CultureInfo.InvariantCulture, $"{angle:0.#}°"), string.Create(CultureInfo.InvariantCulture, $"{Least} to {Most} degrees; end both runs short of it and close it by itself"));
        return null;
    }

    private double? Surveyed(string wall, bool left)
    {
        var survey = job.Walls.FirstOrDefault(w => w.Id == wall)?.Survey;
        return (left ? survey?.LeftEnd : survey?.RightEnd)?.Corner?.Angle;
    }

    private CornerFigures Figures(CornerDesign design, string path, Run other, double angle, bool left, Length filler)
    {
        var reach = RunReach.Of(job, other, design.Kind == CornerKind.Blind);
        var (atWall, atFront) = CornerCut.Of(reach, RunReach.Deepest(_run), angle);
        var opening = job.Walls.First(w => w.Id == _run.Wall).Survey?.Opening;
        var offset = (left ? opening?.LeftIn : opening?.RightIn) ?? Length.Zero;
        return new(design, path, other, reach, angle, atWall, atFront, filler, offset);
    }
}
