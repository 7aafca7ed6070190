using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Engine.Schemes;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Pricing;
using Casewright.Model.Schemes;

namespace Casewright.App.Commands.Tables;

/// <summary>Schemes side by side, in plain text.</summary>
public static class SchemeText
{
    private const string Nothing = "-";

    /// <summary>Writes the table, then what each scheme changes and why one cannot be built.</summary>
    public static void Write(TextWriter writer, Job job, SchemeList list)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(list);
        var schemes = list.Schemes;
        var table = new TextTable([job.Name, .. schemes.Select(s => SchemeNames.Of(s.Kind))]);
        foreach (var (name, write) in Figures(job))
            table.Add([name, .. schemes.Select(s => s.Figures is { } figures ? write(figures) : Nothing)]);
        table.Add(["can be built", .. schemes.Select(s => s.Feasible ? "yes" : "no")]);
        table.Write(writer);
        writer.WriteLine();
        foreach (var scheme in schemes)
        {
            writer.WriteLine($"{Capital(SchemeNames.Of(scheme.Kind))}: {Done(scheme)}.");
            foreach (var why in scheme.Why)
                writer.WriteLine($"  Not feasible: {why}");
        }

        foreach (var lack in list.NoTimetable)
            writer.WriteLine($"No way has a timetable: {lack}");
        if (schemes.Select(s => s.Figures).Distinct().Count() == 1)
            writer.WriteLine("All ways come to the same: no part outruns the usual sheet.");
        else if (schemes.Where(s => s is { Feasible: true, Figures.Net: not null }).MinBy(s => s.Figures!.Net) is { } cheapest)
            writer.WriteLine($"Cheapest that can be built: {SchemeNames.Of(cheapest.Kind)}. Adopt one with --adopt NAME --out FILE.");
    }

    private static string Done(Scheme scheme) =>
        scheme.Changes.Count > 0 ? string.Join("; ", scheme.Changes) : scheme.Figures is null ? "cannot be done" : "the job as it is stated";

    private static IEnumerable<(string Name, Func<SchemeFigures, string> Write)> Figures(Job job)
    {
        yield return ("sheets", f => Number(f.Sheets));
        yield return ("splices", f => Number(f.Splices));
        yield return ($"material, {job.Currency}", f => Money(f.Material, job.Currency));
        yield return ("hours", f => f.Hours.ToString("0.0", CultureInfo.InvariantCulture));
        yield return ("station days", f => f.StationDays?.ToString("0.00", CultureInfo.InvariantCulture) ?? Nothing);
        yield return ("lead time, days", f => Number(f.LeadDays));
        yield return ("lines in view", f => Number(f.LinesInView));
        yield return ("heaviest case", f => new Say(job.Units).Mass(Math.Round(f.Heaviest, 1)));
        yield return ("longest part", f => job.Units == UnitSystem.Inches ? LengthFormat.Usual(f.Longest, job.Units) : LengthFormat.Millimetres(f.Longest));
        yield return ("finished", f => f.Finish?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? Nothing);
        yield return ($"price before tax, {job.Currency}", f => f.Net is { } net ? Money(net, job.Currency) : Nothing);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Money(decimal amount, string currency) =>
        amount.ToString("F" + MoneyText.Decimals(currency).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
