using System.Globalization;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Kit;

/// <summary>What tells a page's place and age: job, revision, date, number.</summary>
public sealed record PageStamp(string Job, int Revision, DateOnly Date, int Page, int Pages)
{
    /// <summary>The date as printed: 25 Nov 2026.</summary>
    public static string Written(DateOnly date) => date.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    internal void Draw(Sketch sketch, double right, double top, double width)
    {
        var strong = new Lettering(10.5, Weight: FontWeight.SemiBold);
        sketch.Text(string.Create(CultureInfo.InvariantCulture, $"page {Page} of {Pages}"), right, top + 3.6, strong, Anchor.End);
        sketch.Text(string.Create(CultureInfo.InvariantCulture, $"revision {Revision} · {Written(Date)}"), right, top + 8.2, Lettering.Small, Anchor.End);
        sketch.Text(Fitting.Cut(Job, Lettering.Small, width), right, top + 12.4, Lettering.Small, Anchor.End);
    }

    /// <summary>The line at the foot of every page.</summary>
    internal static void DrawFoot(Sketch sketch, Box foot, string note)
    {
        var lettering = Lettering.Small;
        const string Superseded = "Superseded if older than the newest revision: check before you cut.";
        sketch.Text(Superseded, foot.Left, foot.Bottom - 0.9, lettering);
        var room = foot.Width - TextLayout.Width(Superseded, lettering) - 6;
        sketch.Text(Fitting.Cut(note, lettering, room), foot.Right, foot.Bottom - 0.9, lettering, Anchor.End);
    }
}
