using System.Globalization;
using Casewright.Model.Findings;
using Casewright.Model.Shop;

namespace Casewright.Engine.Checks;

/// <summary>A limit that the shop may edit, with the published or usual value beside it.</summary>
/// <param name="Name">What it limits, in words.</param>
/// <param name="Setting">Reads the shop's own value.</param>
/// <param name="Usual">The published or usual value.</param>
/// <param name="Unit">Unit of both; empty when they have none.</param>
/// <param name="Source">Where the usual value comes from.</param>
/// <param name="Standing">What stands behind it.</param>
public sealed record EditableLimit(string Name, Func<CheckLimits, double> Setting, double Usual, string Unit, string Source, Standing Standing)
{
    /// <summary>The shop's value and the usual one beside it, as inputs of a finding.</summary>
    public FindingInput AsInput(CheckLimits limits)
    {
        var own = Setting(limits);
        var text = own.ToString("0.###", CultureInfo.InvariantCulture);
        var usual = Usual.ToString("0.###", CultureInfo.InvariantCulture);
        return new("limit: " + Name, text == usual ? $"{text} ({Source})" : $"{text} set by the shop; {usual} is usual ({Source})", Unit);
    }
}
