using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Plans;
using Casewright.Model.Pricing;
using Casewright.Papers.Documents.Offers;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>What is changed of an order: old against new, why, what it costs and how many days it takes.</summary>
public static class ChangeOrder
{
    /// <summary>The pages.</summary>
    /// <param name="old">The plan that was ordered.</param>
    /// <param name="plan">The plan as it is to be.</param>
    /// <param name="why">Why, in a sentence; may be empty, and then a line is left to write on.</param>
    /// <param name="settings">Paper and date.</param>
    public static ValueList<PageDraft> Pages(Plan old, Plan plan, string why, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(why);
        var revision = old.Job.Revision == plan.Job.Revision ? "" : string.Create(CultureInfo.InvariantCulture, $"revision {old.Job.Revision} becomes revision {plan.Job.Revision}");
        var flow = Drafting.Flow(
            DocumentKind.ChangeOrder, settings, landscape: false, new("Change order", revision.Length > 0 ? revision : plan.Job.Name),
            "What is changed of the order, why, and what it costs.", "Nothing is changed before both have signed.");
        flow.Paragraph($"Why: {(why.Length > 0 ? why : "________________________________________________________")}", Lettering.BodyStrong);
        Stated(flow, old, plan);
        Outcome(flow, old, plan);
        Signatures.Draw(flow, "Agreed; price and date of the order change by what is stated above", "client", "maker");
        return flow.Finish();
    }

    private static void Stated(PageFlow flow, Plan old, Plan plan)
    {
        flow.Heading("What is stated otherwise");
        var changes = JobChanges.Between(old.Job, plan.Job);
        if (changes.Count == 0)
        {
            flow.Paragraph("Nothing.");
            return;
        }

        Column[] columns = [new("Where", 1.4), new("Old", 1), new("New", 1)];
        Table.Draw(flow, columns, [.. changes.Select(c => Row.Of(new(c.Where), new(c.Old), new(c.New)))]);
    }

    private static void Outcome(PageFlow flow, Plan old, Plan plan)
    {
        flow.Heading("What that comes to");
        Column[] columns =
        [
            new("", 1.4),
            new("Old", Fixed: 36, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("New", Fixed: 36, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Change", Fixed: 36, Anchor: Anchor.End, Lettering: Lettering.Figure.Sized(14)),
        ];
        var rows = new List<Row>
        {
            Count("sheets", old.Cutting.Sheets.Count, plan.Cutting.Sheets.Count),
            Count("joints", old.Cutting.Splices.Count, plan.Cutting.Splices.Count),
            Count("parts", old.Parts.Count, plan.Parts.Count),
        };
        if (old.Estimate is { } was && plan.Estimate is { } now)
        {
            rows.Add(Amount("hours", was.TotalHours, now.TotalHours, "0.0"));
            rows.Add(Amount($"price before tax, {now.Currency}", was.Net, now.Net, Money(now.Currency)));
            rows.Add(Amount($"price with tax, {now.Currency}", was.Gross, now.Gross, Money(now.Currency)));
        }

        if (old.Schedule is { } before && plan.Schedule is { } after)
            rows.Add(Days(before.Finish, plan, after.Finish));
        Table.Draw(flow, columns, rows);
    }

    private static string Money(string currency) => "N" + MoneyText.Decimals(currency).ToString(CultureInfo.InvariantCulture);

    private static Row Days(DateTime before, Plan plan, DateTime after)
    {
        var (first, last) = (DateOnly.FromDateTime(before), DateOnly.FromDateTime(after));
        var (low, high) = first <= last ? (first, last) : (last, first);
        var days = Enumerable.Range(low.DayNumber + 1, high.DayNumber - low.DayNumber).Count(d => plan.Job.Shop.Hours.Works(DateOnly.FromDayNumber(d)));
        return Row.Of(new("finished; change in working days"), new(PageStamp.Written(first)), new(PageStamp.Written(last)), new(Signed(first <= last ? days : -days, "0")));
    }

    private static Row Count(string name, int old, int now) => Amount(name, old, now, "0");

    private static Row Amount(string name, decimal old, decimal now, string format) => Row.Of(
        new(name),
        new(old.ToString(format, CultureInfo.InvariantCulture)),
        new(now.ToString(format, CultureInfo.InvariantCulture)),
        new(Signed(now - old, format)));

    private static string Signed(decimal value, string format)
    {
        var text = Math.Abs(value).ToString(format, CultureInfo.InvariantCulture);
        return value == 0 ? "none" : (value > 0 ? "+" : "−") + text;
    }
}
