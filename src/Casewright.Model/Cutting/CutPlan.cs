using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Splices;

namespace Casewright.Model.Cutting;

/// <summary>How good a cutting plan is proven to be.</summary>
public sealed record CutBounds
{
    /// <summary>Cost of stock bought plus labour of splices, in the job's currency.</summary>
    public required decimal Cost { get; init; }

    /// <summary>No plan under the same rules can cost less.</summary>
    public required decimal LowerBound { get; init; }

    /// <summary>Sheets used, on hand and bought.</summary>
    public required int Sheets { get; init; }

    /// <summary>No plan under the same rules can use fewer sheets.</summary>
    public required int SheetsLowerBound { get; init; }

    /// <summary>Whether cost and lower bound meet.</summary>
    public required bool Proven { get; init; }

    /// <summary>Relative distance of cost and lower bound, 0 to 1.</summary>
    public double Gap => Cost == 0 ? 0 : (double)((Cost - LowerBound) / Cost);
}

/// <summary>Bounds of the sheets of one material; for solid stock, of its boards, which are then counted as sheets.</summary>
/// <param name="Material">Id of the material.</param>
/// <param name="Bounds">Its share of the plan.</param>
public sealed record MaterialBounds(string Material, CutBounds Bounds);

/// <summary>What is cut from what, and where parts are spliced.</summary>
public sealed record CutPlan
{
    /// <summary>Every piece, in the order of parts.</summary>
    public required ValueList<Piece> Pieces { get; init; }

    /// <summary>Every splice, in the order of parts.</summary>
    public required ValueList<Splice> Splices { get; init; }

    /// <summary>Sheets.</summary>
    public required ValueList<SheetLayout> Sheets { get; init; }

    /// <summary>Boards.</summary>
    public required ValueList<BoardLayout> Boards { get; init; }

    /// <summary>Quality of the whole.</summary>
    public required CutBounds Bounds { get; init; }

    /// <summary>Quality material by material.</summary>
    public required ValueList<MaterialBounds> Materials { get; init; }

    /// <summary>What splicing and cutting noticed, such as a joint too narrow to be keyed.</summary>
    public ValueList<Finding> Findings { get; init; } = [];

    /// <summary>What the stock still to be bought costs: sheets and boards that are sawn already are paid for.</summary>
    public decimal ToBuy => Sheets.Where(s => !s.Sawn).Sum(s => s.Cost) + Boards.Where(b => !b.Sawn).Sum(b => b.Cost);
}
