using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>How far the floor lies below the highest floor point: by stations along the wall, straight between them and between the lines.</summary>
public sealed class FloorProfile
{
    private readonly ReadingCurve _back;
    private readonly ReadingCurve _front;
    private readonly Length? _frontLine;

    /// <summary>The profile of a floor.</summary>
    public FloorProfile(WallSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        _frontLine = survey.FrontLine;
        _back = Curve(survey, ReadingLine.Back);
        _front = Curve(survey, ReadingLine.Front);
    }

    /// <summary>Whether the floor was not measured.</summary>
    public bool IsEmpty => _back.IsEmpty && _front.IsEmpty;

    /// <summary>Every measured point, by place and line: how far below the highest floor point, negative where the reading is above it.</summary>
    public IEnumerable<(Length At, ReadingLine Line, Length Below)> Points => _back.Readings
        .Select(r => (r.At, Line: ReadingLine.Back, r.Value))
        .Concat(_front.Readings.Select(r => (r.At, Line: ReadingLine.Front, r.Value)))
        .OrderBy(r => r.At)
        .ThenBy(r => r.Line);

    /// <summary>How far below, at a place on a line; a line without readings lies as the other.</summary>
    public Length Below(Length at, ReadingLine line)
    {
        var own = line == ReadingLine.Back ? _back : _front;
        return (own.IsEmpty ? line == ReadingLine.Back ? _front : _back : own).At(at);
    }

    /// <summary>How far below, at a place and a distance out from the wall.</summary>
    public Length Below(Length at, Length distance)
    {
        var back = Below(at, ReadingLine.Back);
        return _frontLine is { } line && line > Length.Zero
            ? ReadingCurve.Between((Length.Zero, back), (line, Below(at, ReadingLine.Front)), distance)
            : back;
    }

    /// <summary>Places measured on either line, and both ends of a stretch.</summary>
    public ValueList<Length> Places(Length from, Length to) => Points
        .Select(p => p.At)
        .Where(at => at > from && at < to)
        .Append(from)
        .Append(to)
        .Distinct()
        .Order()
        .ToValueList();

    /// <summary>The lowest that the floor lies below the highest point, over a stretch, at a distance out from the wall; not negative.</summary>
    public Length Deepest(Length from, Length to, Length distance) => Places(from, to).Select(at => Below(at, distance)).Append(Length.Zero).Max();

    private static ReadingCurve Curve(WallSurvey survey, ReadingLine line) =>
        new(survey.Floor.Where(s => s.On(line) is not null).Select(s => (s.At, s.On(line)!.Value - survey.Datum)));
}
