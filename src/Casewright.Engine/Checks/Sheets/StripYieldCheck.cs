using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Sheets;

/// <summary>Depths and shelf lengths just over a better division of the sheet.</summary>
public sealed class StripYieldCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "just-over-a-division",
        "Depth of uprights and length of shelves just over what gives one more from each sheet.",
        "n + 1 parts fit when size ≤ (usable + kerf)/(n + 1) − kerf",
        "Arithmetic; the band of 30 mm is common practice",
        Standing.CommonPractice)
    {
        Limits = [new("band", l => (double)l.JustOver.Millimetres, 30, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var material in SheetFit.WithoutSheets(context, context.PartsWith(PartRole.Side, PartRole.Partition, PartRole.FixedShelf, PartRole.AdjustableShelf)))
            yield return NotChecked(context, material.Id, $"no sheet of {material.Name} is on offer.", "Add the sheet sizes that you can buy.");
        var uprights = context.PartsWith(PartRole.Side, PartRole.Partition).DistinctBy(p => (p.Run, p.Material, p.Width));
        foreach (var part in uprights)
        {
            if (SheetFit.Usable(context, part).FirstOrDefault() is var sheet && sheet.Across > Length.Zero)
                yield return One(context, part, "depth", part.Width, sheet.Across, "rip");
        }

        foreach (var part in context.PartsWith(PartRole.FixedShelf, PartRole.AdjustableShelf).DistinctBy(p => (p.Run, p.Material, p.Length)))
        {
            if (SheetFit.Usable(context, part).FirstOrDefault() is var sheet && sheet.Along > Length.Zero)
                yield return One(context, part, "length", part.Length, sheet.Along, "shelf");
        }
    }

    private Finding One(CheckContext context, Part part, string what, Length size, Length usable, string gain)
    {
        var (say, kerf, band) = (context.Say, context.Job.Shop.Saw.Kerf, context.Limits.JustOver);
        var count = SheetFit.Count(usable, size, kerf);
        var next = ((usable + kerf) / (count + 1)) - kerf;
        var over = size - next;
        var close = count > 0 && over <= band;
        return Report(
            context,
            close ? Severity.Caution : Severity.Pass,
            part.Id,
            $"At a {what} of {say.Size(size)} a sheet gives {count}; {say.AtMost(next.Metres)} would give {count + 1}.",
            new((double)over.Millimetres, (double)band.Millimetres, "mm", []),
            $"{say.AtLeast(over.Metres)} less gains one {gain} from each sheet: compare.");
    }
}
