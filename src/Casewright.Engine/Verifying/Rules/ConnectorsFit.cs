using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Draw connectors: only in their method, at least one, in order from the reference edge, clear of the edges, of the tenons and of each other.</summary>
internal sealed class ConnectorsFit : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) => evidence.Joints().SelectMany(joint => Splice(joint.Splice, joint.Part));

    private static IEnumerable<Problem> Splice(Splice splice, Part part)
    {
        var place = $"splices[{splice.Id}].connectors";
        var wants = splice.Method == SpliceMethod.TenonsAndConnectors;
        if (wants != splice.Connectors.Count > 0)
            return [new Problem(place, $"{splice.Method} and its connectors do not agree.", $"{splice.Connectors.Count}", wants ? "at least one" : "none")];

        return splice.Connectors.SelectMany((connector, i) => Connector($"{place}[{i + 1}].offset", splice, part, connector, i));
    }

    private static IEnumerable<Problem> Connector(string place, Splice splice, Part part, DrawConnector connector, int index)
    {
        var offset = connector.Offset;
        if (offset < Practice.ConnectorToEdge || part.Width - offset < Practice.ConnectorToEdge)
            yield return new(place, "The connector comes too near an edge.", $"{offset} in a width of {part.Width}", $"at least {Practice.ConnectorToEdge} from both edges");

        foreach (var tenon in splice.Tenons)
        {
            if ((tenon.Offset - offset).Abs() < ((tenon.Width + tenon.Play) / 2) + Practice.MortiseToConnector)
                yield return new(place, "The connector runs into a tenon.", $"{offset} beside a tenon at {tenon.Offset}", $"at least {Practice.MortiseToConnector} from its mortise");
        }

        if (index > 0 && offset - splice.Connectors[index - 1].Offset < Practice.ConnectorToConnector)
            yield return new(place, "Two connectors stand too close or are not in order from the reference edge.", $"{splice.Connectors[index - 1].Offset} and {offset}", $"at least {Practice.ConnectorToConnector} apart");
    }
}
