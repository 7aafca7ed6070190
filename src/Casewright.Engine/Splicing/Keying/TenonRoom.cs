using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>Where across a part the centres of tenons and connectors may lie: clear of edges, grooves, rabbets and near pin holes.</summary>
/// <param name="Tenons">Places of tenon centres from the reference edge, ascending.</param>
/// <param name="Connectors">Places of connector centres.</param>
/// <param name="Width">Width of the part.</param>
/// <param name="TenonWidth">Width of a tenon.</param>
internal sealed record TenonRoom(ValueList<Stretch> Tenons, ValueList<Stretch> Connectors, Length Width, Length TenonWidth)
{
    /// <summary>The room at one joint line.</summary>
    public static TenonRoom At(Part part, Length joint, SpliceRules rules) =>
        Of(part, rules, part.Machining.SelectMany(work => Blocked(work, part, joint, rules)));

    /// <summary>The room at any joint line that lies in no stopped groove and near no pin hole.</summary>
    public static TenonRoom Along(Part part, SpliceRules rules) =>
        Of(part, rules, part.Machining.SelectMany(work => work is Groove or Rabbet ? Blocked(work, part, null, rules) : []));

    private static TenonRoom Of(Part part, SpliceRules rules, IEnumerable<ForbiddenZone> blocked)
    {
        ForbiddenZone[] zones = [.. blocked];
        var half = rules.TenonWidth / 2;
        return new(
            Free(part.Width, JointPractice.TenonToEdge, zones, half + JointPractice.WoodBesideMortise),
            Free(part.Width, JointPractice.ConnectorToEdge, zones, JointPractice.ConnectorRadius),
            part.Width,
            rules.TenonWidth);
    }

    private static ValueList<Stretch> Free(Length width, Length edge, IEnumerable<ForbiddenZone> zones, Length beside) =>
        width - edge < edge ? [] : Stretches.Without(
            new Stretch(edge, width - edge), zones.Select(z => z with { From = z.From - beside, To = z.To + beside }));

    private static IEnumerable<ForbiddenZone> Blocked(Machining work, Part part, Length? joint, SpliceRules rules)
    {
        var near = rules.TenonEmbedment + JointPractice.MortiseBeyondTenon + JointPractice.WoodBesideMortise;
        switch (work)
        {
            case Groove groove when joint is not { } x || (groove.FromX - near < x && x < groove.ToX + near):
                yield return new ForbiddenZone(groove.Y, groove.Y + groove.Width, groove.For);
                break;
            case Rabbet { Edge: PartEdge.Reference } rabbet:
                yield return new ForbiddenZone(Length.Zero, rabbet.Width, rabbet.For);
                break;
            case Rabbet { Edge: PartEdge.Opposite } rabbet:
                yield return new ForbiddenZone(part.Width - rabbet.Width, part.Width, rabbet.For);
                break;
            case PinRow row when joint is { } line && row.Count > 0 && row.FirstX - near < line && line < row.LastX + near:
                yield return new ForbiddenZone(row.Y - (row.Diameter / 2), row.Y + (row.Diameter / 2), row.For);
                break;
            default:
                break;
        }
    }
}
