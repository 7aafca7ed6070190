using System.Globalization;
using Casewright.Engine.Splicing;
using Casewright.Engine.Splicing.Keying;
using Casewright.Engine.Splicing.Options;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>Tells which part every copy of a demand is: copies of alike options stay together, in the order of the parts.</summary>
internal sealed class CopyBook
{
    private readonly ValueList<PartDemand> _demands;
    private readonly JointedPart[][] _byCopy;

    public CopyBook(ValueList<PartDemand> demands, ValueList<CopyChoice> choices)
    {
        _demands = demands;
        _byCopy = [.. demands.Select(d => new JointedPart[d.Parts.Count])];
        foreach (var demand in choices.GroupBy(c => c.Demand))
        {
            var of = demands[demand.Key];
            foreach (var (index, choice) in demand.OrderBy(c => c.Option).ThenBy(c => c.Copy).Index())
                _byCopy[demand.Key][choice.Copy] = new JointedPart(of.Parts[index], of.Options[choice.Option], of.SightLineGroup is not null);
        }
    }

    /// <summary>Every part with its option, by demand and copy.</summary>
    public ValueList<JointedPart> Parts => [.. _byCopy.SelectMany(copies => copies)];

    /// <summary>The demands as the engine takes them.</summary>
    /// <param name="demands">The demands.</param>
    /// <param name="piece">Turns a piece into a rectangle of the engine.</param>
    public static ValueList<CuttingDemand> ForEngine(ValueList<PartDemand> demands, Func<PartDemand, PieceCut, CuttingPiece> piece) =>
    [
        .. demands.Select(demand => new CuttingDemand(
            demand.Id,
            demand.Parts.Count,
            [.. demand.Options.Select(o => new CuttingOption(o.Id, [.. demand.ToCut(o).Select(i => piece(demand, o.Pieces[i]))], o.Labour, o.Line, o.Preference))],
            demand.SightLineGroup)),
    ];

    /// <summary>Id of a piece by its number within the option of its part.</summary>
    public static string IdOf(Part part, int number) => $"{part.Id}/{PairLetters.Of(number).ToLower(CultureInfo.InvariantCulture)}";

    /// <summary>The group that a copy belongs to.</summary>
    public PartDemand Demand(int demand) => _demands[demand];

    /// <summary>The piece that a copy's cut gives, at its place in the stock.</summary>
    public Piece Piece(int demand, int copy, int piece, string stock, bool fromBoard, Length x, Length y, bool rotated)
    {
        var (part, option, _) = _byCopy[demand][copy];
        var number = _demands[demand].ToCut(option).ElementAt(piece);
        var cut = option.Pieces[number];
        return new Piece
        {
            Id = IdOf(part, number),
            Part = part.Id,
            Stock = stock,
            FromBoard = fromBoard,
            Length = cut.Length,
            Width = cut.Width,
            X = x,
            Y = y,
            Rotated = rotated,
            From = cut.From,
            To = cut.To,
            AllowanceStart = cut.AllowanceStart,
            AllowanceEnd = cut.AllowanceEnd,
            Strip = cut.Strip,
        };
    }
}
