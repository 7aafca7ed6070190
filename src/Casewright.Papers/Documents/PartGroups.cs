using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Papers.Documents;

/// <summary>Parts that are alike in everything a maker does to them.</summary>
/// <param name="Parts">The parts, in the order of the plan.</param>
/// <param name="Splices">Splices of the first of them.</param>
public sealed record PartGroup(ValueList<Part> Parts, ValueList<Splice> Splices)
{
    /// <summary>One of them, for what they share.</summary>
    public Part First => Parts[0];
}

/// <summary>Puts alike parts together.</summary>
public static class PartGroups
{
    /// <summary>Groups in the order of their first part.</summary>
    public static IReadOnlyList<PartGroup> Of(PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        return [.. index.Plan.Parts
            .GroupBy(part => Key.Of(part, index.SplicesOf(part)))
            .Select(group => new PartGroup(group.ToValueList(), index.SplicesOf(group.First()).ToValueList()))];
    }

    private sealed record Joint(Length Position, SpliceMethod Method, Face? Access, ValueList<Tenon> Tenons, ValueList<DrawConnector> Connectors);

    private sealed record Key(
        PartRole Role, Hand Hand, string Material, Length Length, Length Width, Length Thickness, Grain Grain, bool Nosed, string Fit,
        Exposure Reference, Exposure Opposite, string Machining, ValueList<Joint> Joints)
    {
        public static Key Of(Part part, IReadOnlyList<Splice> splices) => new(
            part.Role, part.Hand, part.Material, part.Length, part.Width, part.Thickness, part.Grain, part.Nosing is not null, part.FitOnSite ?? "",
            part.ReferenceFace, part.OppositeFace, string.Join(';', part.Machining.Select(WithoutName)),
            splices.Select(s => new Joint(s.Position, s.Method, s.AccessFace, s.Tenons, s.Connectors)).ToValueList());

        // What goes into a dado has another id in every case; the work is the same.
        private static string WithoutName(Machining work) => (work with { For = "" }).ToString();
    }
}
