using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>The match triangle is on the part and clear of the connectors' holes.</summary>
internal sealed class SpliceMarks : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        foreach (var (splice, part) in evidence.Joints())
        {
            var place = $"splices[{splice.Id}].markOffset";
            if (splice.MarkOffset <= Length.Zero || splice.MarkOffset >= part.Width)
                yield return new(place, "The match triangle is off the part.", $"{splice.MarkOffset}", $"within {part.Width}");
            foreach (var connector in splice.Connectors)
            {
                if ((connector.Offset - splice.MarkOffset).Abs() < Practice.MarkToHole)
                    yield return new(place, "The match triangle lies over a connector's hole.", $"{splice.MarkOffset}", $"{Practice.MarkToHole} or more from {connector.Offset}");
            }
        }
    }
}
