using Casewright.Model.Collections;
using Casewright.Papers.Drawing;

namespace Casewright.Papers.Kit;

/// <summary>Numbers pages and gives them heading and foot.</summary>
public static class Pagination
{
    /// <summary>The finished pages, in the order given.</summary>
    public static ValueList<Page> Number(IReadOnlyList<PageDraft> drafts, string job, int revision, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(drafts);
        return drafts.Select((draft, index) => Finish(draft, new(job, revision, date, index + 1, drafts.Count))).ToValueList();
    }

    private static Page Finish(PageDraft draft, PageStamp stamp)
    {
        var sketch = new Sketch();
        var title = draft.Heading?.Title ?? draft.Description;
        if (draft.Heading is { } heading)
        {
            heading.Draw(sketch, draft.Format.Printed, stamp);
            PageStamp.DrawFoot(sketch, draft.Format.Foot, draft.FootNote);
        }
        else
        {
            DrawSlimHead(sketch, draft, stamp);
        }

        sketch.Add(draft.Body);
        return new(draft.Document, draft.Key, stamp.Page, sketch.ToScene(draft.Format.Width, draft.Format.Height, title, draft.Description));
    }

    private static void DrawSlimHead(Sketch sketch, PageDraft draft, PageStamp stamp)
    {
        var lettering = Drawing.Text.Lettering.Small;
        var right = FormattableString.Invariant($"revision {stamp.Revision} · {PageStamp.Written(stamp.Date)} · page {stamp.Page} of {stamp.Pages}");
        var width = draft.Format.Width - 20;
        sketch.Text(right, draft.Format.Width - 10, 9, lettering, Anchor.End);
        var room = width - Drawing.Text.TextLayout.Width(right, lettering) - 6;
        sketch.Text(Fitting.Cut($"{stamp.Job} · {draft.Description}", lettering, room), 10, 9, lettering);
    }
}
