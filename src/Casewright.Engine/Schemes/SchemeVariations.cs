using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Schemes;
using Casewright.Model.Splices;

namespace Casewright.Engine.Schemes;

/// <summary>A job changed towards one scheme, or why it cannot be.</summary>
/// <param name="Kind">The scheme.</param>
/// <param name="Job">The changed job; the stated one when the change is impossible.</param>
/// <param name="Changes">What was changed, in words.</param>
/// <param name="Obstacles">Why it cannot be done; empty when it can.</param>
internal sealed record SchemeVariation(SchemeKind Kind, Job Job, ValueList<string> Changes, ValueList<string> Obstacles);

/// <summary>Changes a job towards each scheme.</summary>
internal sealed class SchemeVariations(Job job, Casework casework)
{
    /// <summary>Most that a base may be raised, and a head lowered, before the look of the work is another (our judgement).</summary>
    private Length MostBase => job.Units == UnitSystem.Inches ? Length.FromInches(6) : Length.FromMillimetres(150);

    private Length MostHead => MostBase;

    public IEnumerable<SchemeVariation> All()
    {
        yield return DesignedAway();
        yield return Stacked();
        yield return LongSheets();
        yield return Spliced();
        yield return new(SchemeKind.Mixed, job, [], []);
    }

    private SchemeVariation Spliced()
    {
        var usual = UsualLengths();
        var kept = job.Stock.Sheets.Where(s => s.OnHand > 0 || Along(s) <= usual[s.Material]).ToValueList();
        var dropped = job.Stock.Sheets.Count - kept.Count;
        var changes = dropped == 0 ? ValueList<string>.Empty : ["longer sheets are not bought"];
        return new(SchemeKind.Spliced, job with { Stock = job.Stock with { Sheets = kept } }, changes, []);
    }

    private SchemeVariation LongSheets()
    {
        var longest = job.Stock.Sheets.Where(s => s.OnHand > 0 || s.Limit is null or > 0)
            .GroupBy(s => s.Material, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Select(Along).Aggregate(Length.Max), StringComparer.Ordinal);
        var obstacles = casework.Parts
            .Where(p => p.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel && longest.TryGetValue(p.Material, out var length) && p.Length > length)
            .GroupBy(p => (p.Run, p.Material))
            .Select(g => $"uprights of {job.Runs.First(r => r.Id == g.Key.Run).Name} are {Text(g.Select(p => p.Length).Aggregate(Length.Max))} long, and the longest sheet of {job.Stock.Material(g.Key.Material).Name} that can be had gives {Text(longest[g.Key.Material])}");
        return new(SchemeKind.LongSheets, WithoutSplices(job), ["no part is spliced"], obstacles.ToValueList());
    }

    private SchemeVariation DesignedAway()
    {
        var changed = job;
        var (changes, obstacles) = (new List<string>(), new List<string>());
        foreach (var run in job.Runs)
        {
            var over = Overrun(run);
            if (over <= Length.Zero)
                continue;
            if (run.Tiers.Count > 1)
            {
                obstacles.Add($"{run.Name} is stacked already and still {Text(over)} over the sheet");
                continue;
            }

            var raise = run.Base.Kind == BaseKind.Plinth ? Length.Min(over, MostBase) : Length.Zero;
            var lower = over - raise;
            if (lower > MostHead)
            {
                obstacles.Add($"{run.Name} is {Text(over)} over the usual sheet: more than a base {Text(MostBase)} higher and a head {Text(MostHead)} lower take up");
                continue;
            }

            changed = Replace(changed, run, Shorten(run, raise, lower));
            if (raise > Length.Zero)
                changes.Add($"base of {run.Name} {Text(raise)} higher");
            if (lower > Length.Zero)
                changes.Add($"cases of {run.Name} end {Text(lower)} lower");
        }

        return new(SchemeKind.DesignedAway, WithoutSplices(changed), changes.ToValueList(), obstacles.ToValueList());
    }

    private SchemeVariation Stacked()
    {
        var changed = job;
        var (changes, obstacles) = (new List<string>(), new List<string>());
        foreach (var run in job.Runs.Where(r => Overrun(r) > Length.Zero))
        {
            if (run.Tiers.Count > 1)
                obstacles.Add($"{run.Name} is stacked already and still over the sheet");
            else if (Stack(run) is { } stacked)
            {
                changed = Replace(changed, run, stacked.Run);
                changes.Add($"{run.Name} in two tiers, with a line {Text(stacked.Line)} above the floor");
            }
            else
                obstacles.Add($"{run.Name} has no height at which both tiers fit the usual sheet");
        }

        return new(SchemeKind.Stacked, WithoutSplices(changed), changes.ToValueList(), obstacles.ToValueList());
    }

    /// <summary>Splits a run at the fixed shelf nearest its middle, or at its middle without one.</summary>
    private (Run Run, Length Line)? Stack(Run run)
    {
        var cases = casework.Cases.Where(c => c.Run == run.Id).ToList();
        var bottom = run.Base.Kind == BaseKind.SidesToFloor ? run.Base.Height : cases.Min(c => c.Y);
        var top = cases.Max(c => c.Y + c.Height);
        var limit = UsualLengths()[run.Material];
        var middle = (bottom + top) / 2;
        var interior = run.Tiers[0].Interior;
        var step = job.Units == UnitSystem.Inches ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        bool Serves(Length height) => height - bottom <= limit && top - height <= limit && height > bottom && height < top;
        var lines = interior.FixedAt.Where(Serves).OrderBy(h => (h - middle).Abs()).Append(middle.RoundTo(step)).Where(Serves).ToList();
        if (lines.Count == 0 || run.Columns.Any(c => c.Interiors.Count > 0))
            return null;
        var at = lines[0];
        var share = (at - bottom).Nanometres / (decimal)(top - bottom).Nanometres;
        var (fixedLow, looseLow) = (Share(interior.Fixed, share), Share(interior.Loose, share));
        var low = interior with { FixedAt = interior.FixedAt.Where(h => h < at).ToValueList(), Fixed = fixedLow, Loose = looseLow };
        var high = interior with { FixedAt = interior.FixedAt.Where(h => h > at).ToValueList(), Fixed = Math.Max(0, interior.Fixed - fixedLow - 1), Loose = interior.Loose - looseLow };
        return (run with { Tiers = [new() { Height = at - bottom, Interior = low }, new() { Interior = high }] }, at);
    }

    private static int Share(int count, decimal share) => (int)Math.Round(count * share, MidpointRounding.AwayFromZero);

    /// <summary>How much the longest upright of a run is over the usual sheet; zero or less when it fits.</summary>
    private Length Overrun(Run run)
    {
        var uprights = casework.Parts.Where(p => p.Run == run.Id && p.Role is PartRole.Side or PartRole.Partition).ToList();
        if (uprights.Count == 0)
            return Length.Zero;
        var usual = UsualLengths();
        return uprights.Select(p => p.Length - (usual.TryGetValue(p.Material, out var length) ? length : p.Length)).Aggregate(Length.Max);
    }

    /// <summary>Usable length of the shortest full sheet on offer of each material: what the shop buys without thinking.</summary>
    private Dictionary<string, Length> UsualLengths() => job.Stock.Sheets
        .Where(s => !s.IsOffcut && s.Limit is null or > 0)
        .GroupBy(s => s.Material, StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => g.Select(Along).Aggregate(Length.Min), StringComparer.Ordinal);

    private Length Along(Model.Stock.SheetStock sheet)
    {
        var trim = sheet.IsOffcut ? Length.Zero : job.Shop.Saw.EdgeTrim * 2;
        var grain = job.Stock.Material(sheet.Material).HasGrain;
        var along = grain ? (sheet.GrainAcross ? sheet.Width : sheet.Length) : Length.Max(sheet.Length, sheet.Width);
        return along - trim;
    }

    private static Run Shorten(Run run, Length raise, Length lower) => run with
    {
        Base = run.Base with { Height = run.Base.Height + raise },
        Head = run.Head.Height is { } height
            ? run.Head with { Height = height - lower }
            : run.Head with { Gap = (run.Head.Gap ?? Length.Zero) + lower },
    };

    /// <summary>Leaves only the joints of backs and trim, which lie on the parts that carry them.</summary>
    private static Job WithoutSplices(Job job) =>
        job with { Runs = job.Runs.Select(r => r with { Splices = r.Splices with { Method = SpliceMethod.CoveredButt, Height = null } }).ToValueList() };

    private static Job Replace(Job job, Run old, Run run) => job with { Runs = job.Runs.Select(r => r.Id == old.Id ? run : r).ToValueList() };

    private string Text(Length length) => LengthText.Of(length, job.Units);
}
