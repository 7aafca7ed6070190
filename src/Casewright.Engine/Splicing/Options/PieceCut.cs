using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Options;

/// <summary>A piece that an option of a part asks for.</summary>
/// <param name="From">Start of the stretch of the finished part that it covers.</param>
/// <param name="To">End of that stretch.</param>
/// <param name="AllowanceStart">Sawn beyond the stretch at its start.</param>
/// <param name="AllowanceEnd">Sawn beyond the stretch at its end.</param>
/// <param name="Width">Width as sawn.</param>
/// <param name="Strip">Strip of a part joined edge to edge, from 0 at the reference edge.</param>
public sealed record PieceCut(Length From, Length To, Length AllowanceStart, Length AllowanceEnd, Length Width, int Strip = 0)
{
    /// <summary>Length as sawn.</summary>
    public Length Length => To - From + AllowanceStart + AllowanceEnd;
}

/// <summary>One way to make a part.</summary>
/// <param name="Id">Name, unique among the options of its parts.</param>
/// <param name="Method">How its joints are made; null for a part without end joints.</param>
/// <param name="Joints">Joint lines from the reference end of the finished part, ascending.</param>
/// <param name="Pieces">What is cut, from the reference end, strip by strip.</param>
/// <param name="Labour">What its joints cost in work, in the job's currency.</param>
/// <param name="Line">Number that parts of one sight line share when they take the same joint heights; null for options without joints.</param>
/// <param name="Preference">Between plans of one cost, lower is better: 0 where joints hide best, just under a fixed shelf.</param>
public sealed record PartOption(
    string Id, SpliceMethod? Method, ValueList<Length> Joints, ValueList<PieceCut> Pieces, decimal Labour, long? Line = null,
    int Preference = 0);
