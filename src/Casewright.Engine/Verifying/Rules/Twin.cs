using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>All that two joints and their parts must share so that their pieces can be exchanged one for one.</summary>
internal sealed record Twin(
    Hand Hand,
    string Material,
    Length PartLength,
    Length Width,
    Length Thickness,
    Length Position,
    SpliceMethod Method,
    Face? AccessFace,
    Length Consumes,
    ValueList<Tenon> Tenons,
    ValueList<DrawConnector> Connectors,
    Length MarkOffset,
    ValueList<Machining> Machining)
{
    public static Twin Of(Splice splice, Part part) => new(
        part.Hand,
        part.Material,
        part.Length,
        part.Width,
        part.Thickness,
        splice.Position,
        splice.Method,
        splice.AccessFace,
        splice.Consumes,
        splice.Tenons,
        splice.Connectors,
        splice.MarkOffset,
        part.Machining.Select(machining => machining with { For = "" }).ToValueList());
}
