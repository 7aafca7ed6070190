using Casewright.Engine.Layout.Figures;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Rules;

/// <summary>The symbols that belong to one case.</summary>
internal readonly record struct CaseSymbols(CaseFigures Box)
{
    /// <summary>W: outer width.</summary>
    public DerivationInput W => new("W", $"outer width of case {Box.Number}", Box.Width);

    /// <summary>H: height, the base not counted.</summary>
    public DerivationInput H => new("H", $"height of case {Box.Number}, base not counted", Box.Height);

    /// <summary>u: how far a face frame's bottom rail stands below the bottom panel; null for frameless cases.</summary>
    public DerivationInput? Raise => Box.Run.BottomRaise == Length.Zero
        ? null
        : new("u", "bottom panel above the lower edge of the case: bottom rail less panel thickness", Box.Run.BottomRaise);

    /// <summary>B: height of the base where the sides run to the floor; null elsewhere.</summary>
    public DerivationInput? B => Box.ToFloor ? Symbols.Base(Box.Run) : null;

    /// <summary>c: clear width of a bay.</summary>
    public DerivationInput Clear(int bay) => new("c", $"clear width of the bay in case {Box.Number}", Box.BayWidth(bay));
}
