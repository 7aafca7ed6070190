using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Surveying;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>Whether the sloping ceilings of a job can be built under.</summary>
internal static class SlopeProblems
{
    /// <summary>Steepest slope that is laid out with raked tops: 45°, as far as the blades of saws tilt (common practice, no source).</summary>
    public const double Steepest = 45;

    /// <summary>Flattest slope that is one: 1°. Less is a ceiling out of level, which the gap takes up (our judgement).</summary>
    public const double Flattest = 1;

    /// <summary>Notes each slope that is none, is too steep, or lies lower than stated.</summary>
    public static void Check(Job job, ProblemList problems)
    {
        for (var w = 0; w < job.Walls.Count; w++)
        {
            var wall = job.Walls[w];
            for (var i = 0; i < wall.CeilingSlopes.Count; i++)
                Check(wall.CeilingSlopes[i], string.Create(CultureInfo.InvariantCulture, $"walls[{w}].ceilingSlopes[{i}]"), problems);
            if (problems.All.Count == 0 && wall.CeilingSlopes.Count > 0)
                CheckReadings(wall, w, problems);
        }
    }

    /// <summary>
    /// How far the ceiling was read lower than stated, at most, between two places of a wall: at the stations there and the nearest on either side.
    /// </summary>
    public static Length ReadLower(Wall wall, Length from, Length to)
    {
        if (wall.Survey is not { Ceiling.Count: > 0 } survey)
            return Length.Zero;
        var stations = survey.Ceiling.OrderBy(s => s.At).ToArray();
        var first = Math.Max(0, stations.Count(s => s.At < from) - 1);
        var last = Math.Min(stations.Length - 1, stations.Count(s => s.At <= to));
        return stations[first..(last + 1)]
            .SelectMany(s => new[] { s.Back, s.Front }.OfType<Length>().Select(read => wall.CeilingAt(s.At) - (survey.Datum + read)))
            .Append(Length.Zero)
            .Max();
    }

    private static void Check(CeilingSlope slope, string path, ProblemList problems)
    {
        if (slope.FromX == slope.ToX)
        {
            problems.Add($"{path}.toX", "Both points of this slope are at one place along the wall.", slope.ToX, "two points at two places, as far apart as they can be measured");
            return;
        }

        var degrees = slope.ToSlope().Degrees;
        if (degrees > Steepest)
            problems.Add($"{path}.toHeight", "This slope is steeper than raked tops and bevelled uprights are laid out for.", Degrees(degrees), $"at most {Degrees(Steepest)}; under a steeper one end the run, or give it a head height under the low end");
        else if (degrees < Flattest)
            problems.Add($"{path}.toHeight", "This slope is level, or nearly so.", Degrees(degrees), $"at least {Degrees(Flattest)}; a ceiling out of level is left to the gap and its scribe");
    }

    private static void CheckReadings(Wall wall, int index, ProblemList problems)
    {
        if (wall.Survey is not { } survey)
            return;
        for (var i = 0; i < survey.Ceiling.Count; i++)
        {
            var station = survey.Ceiling[i];
            var lowest = new[] { station.Back, station.Front }.OfType<Length>().Select(r => survey.Datum + r).Append(wall.CeilingAt(station.At)).Min();
            if (wall.CeilingAt(station.At) - lowest > MostLower)
                problems.Add(string.Create(CultureInfo.InvariantCulture, $"walls[{index}].survey.ceiling[{i}]"), "The ceiling was read far lower here than its stated height and slopes say.", lowest, $"{problems.Say(wall.CeilingAt(station.At) - MostLower)} or more; or the slope as it was read");
        }
    }

    /// <summary>What a reading may lie below the stated line before one of them must be wrong; less lowers the raked top (our judgement).</summary>
    private static Length MostLower { get; } = SurveyTolerance.Reading * 10;

    private static string Degrees(double degrees) => degrees.ToString("0.#", CultureInfo.InvariantCulture) + "°";
}
