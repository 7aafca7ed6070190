using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Sheets;

/// <summary>Parts longer or wider than any sheet on offer.</summary>
public sealed class PartOverSheetCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "part-over-sheet",
        "Whether each part comes out of a sheet on offer, edge trim counted, whole or spliced.",
        "length ≤ sheet − 2 trim, width ≤ sheet − 2 trim",
        "Arithmetic",
        Standing.Arithmetic);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Parts.Where(p => !context.Material(p).IsBoard).Select(p => One(context, p));
    }

    private Finding One(CheckContext context, Part part)
    {
        var sheets = SheetFit.Usable(context, part).ToList();
        if (sheets.Count == 0)
            return NotChecked(context, part.Id, $"no sheet of {context.Material(part).Name} is on offer.", "Add the sheet sizes that you can buy.");
        var (along, across) = SheetFit.Sizes(part);
        var (say, turns) = (context.Say, SheetFit.MayTurn(context, part));
        bool Fits((Length Along, Length Across) s) => (along <= s.Along && across <= s.Across) || (turns && along <= s.Across && across <= s.Along);
        var longest = sheets.Max(s => turns ? Length.Max(s.Along, s.Across) : s.Along);
        var figures = new Figures((double)along.Millimetres, (double)longest.Millimetres, "mm", []);
        if (sheets.Any(Fits))
            return Report(context, Severity.Pass, part.Id, $"{part.Name} comes whole out of a sheet.", figures);
        var spliced = context.SplicesOf(part).Any();
        var stripped = context.Plan?.Pieces.Any(p => p.Part == part.Id && p.Strip > 0) ?? false;
        if (spliced || stripped)
            return Report(context, Severity.Pass, part.Id, $"{part.Name} is over the sheet and the plan joins it.", figures);
        var widest = sheets.Max(s => s.Across);
        return across > widest && !turns
            ? Report(context, Severity.Stop, part.Id, $"{part.Name} is {say.Size(across)} wide; the widest sheet gives {say.Size(widest)}.", figures, $"Make it {say.AtLeast((across - widest).Metres)} narrower, buy a wider sheet, or allow strips joined edge to edge.")
            : Report(context, context.Plan is null ? Severity.NotChecked : Severity.Stop, part.Id, $"{part.Name} is {say.Size(along)} long; the longest sheet gives {say.Size(longest)}, and no joint is planned{(context.Plan is null ? " yet" : "")}.", figures, $"Splice it, buy a longer sheet, or design away {say.AtLeast((along - longest).Metres)} by a higher base, a deeper crown or stacked cases.");
    }
}
