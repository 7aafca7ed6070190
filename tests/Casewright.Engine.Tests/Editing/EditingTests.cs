using Casewright.Engine.Editing;
using Casewright.Engine.Layout;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Tests.Editing;

/// <summary>Edits made on the drawing: whatever is moved, the run still fills its wall exactly.</summary>
public sealed class EditingTests
{
    private static readonly Job s_job = JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value!;

    private static string Run => s_job.Runs[0].Id;

    public static TheoryData<string> Edits => ["line", "width", "bays", "add", "split", "merge", "remove"];

    [Theory]
    [MemberData(nameof(Edits))]
    public void Any_edit_of_columns_leaves_the_run_as_wide_as_it_was(string edit)
    {
        var before = Lay(s_job);

        var after = Lay(Apply(edit, before));

        Assert.Equal(Spread(before), Spread(after));
        Assert.NotEqual(Shape(before), Shape(after));
    }

    [Fact]
    public void A_line_moved_and_moved_back_gives_the_widths_there_were()
    {
        var laid = Lay(s_job);
        var by = Length.FromMillimetres(25);

        var moved = ColumnEditing.MoveLine(s_job, laid, Run, 0, by);
        var back = ColumnEditing.MoveLine(moved, Lay(moved), Run, 0, -by);

        Assert.Equal(laid.Cases[0].Width + by, Lay(moved).Cases[0].Width);
        Assert.Equal(laid.Cases.Select(c => c.Width), Lay(back).Cases.Select(c => c.Width));
    }

    [Fact]
    public void A_case_added_and_removed_gives_the_widths_there_were()
    {
        var laid = Lay(s_job);

        var more = ColumnEditing.Add(s_job, laid, Run, 0);
        var less = ColumnEditing.Remove(more, Lay(more), Run, 1);

        Assert.Equal(laid.Cases.Count + 1, Lay(more).Cases.Count);
        Assert.Equal(laid.Cases.Select(c => c.Width), Lay(less).Cases.Select(c => c.Width));
    }

    [Fact]
    public void A_fixed_shelf_moves_in_its_own_case_only_unless_everywhere_is_asked()
    {
        var laid = Lay(s_job);
        var box = laid.Cases[0];
        var from = ShelfEditing.HeightsNow(laid, box.Id)[0];
        var to = from + Length.FromMillimetres(20);

        var here = Lay(ShelfEditing.MoveFixed(s_job, laid, box, from, to, everywhere: false));
        var everywhere = Lay(ShelfEditing.MoveFixed(s_job, laid, box, from, to, everywhere: true));

        Assert.Contains(to, ShelfEditing.HeightsNow(here, box.Id));
        Assert.All(here.Cases.Skip(1), c => Assert.DoesNotContain(to, ShelfEditing.HeightsNow(here, c.Id)));
        Assert.All(everywhere.Cases, c => Assert.Contains(to, ShelfEditing.HeightsNow(everywhere, c.Id)));
    }

    [Fact]
    public void A_line_or_column_that_is_not_there_is_refused()
    {
        var laid = Lay(s_job);

        Assert.Throws<ArgumentOutOfRangeException>(() => ColumnEditing.MoveLine(s_job, laid, Run, laid.Cases.Count - 1, Length.FromMillimetres(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ColumnEditing.SetBays(s_job, laid, Run, 0, 0));
        Assert.Throws<KeyNotFoundException>(() => RunEditing.SetDepth(s_job, "nowhere", Length.FromMillimetres(300)));
    }

    private static Job Apply(string edit, Casework laid) => edit switch
    {
        "line" => ColumnEditing.MoveLine(s_job, laid, Run, 0, Length.FromMillimetres(40)),
        "width" => ColumnEditing.SetWidth(s_job, laid, Run, 0, laid.Cases[0].Width - Length.FromMillimetres(60)),
        "bays" => ColumnEditing.SetBays(s_job, laid, Run, 0, laid.Cases[0].Bays + 1),
        "add" => ColumnEditing.Add(s_job, laid, Run, 0),
        "split" => ColumnEditing.Split(s_job, laid, Run, 0),
        "merge" => ColumnEditing.Merge(s_job, laid, Run, 0),
        _ => ColumnEditing.Remove(s_job, laid, Run, 0),
    };

    private static Casework Lay(Job job)
    {
        var laid = LayoutStage.Lay(job);
        Assert.True(laid.Succeeded, string.Join("; ", laid.Problems.Take(3)));
        return laid.Value;
    }

    private static (Length From, Length To) Spread(Casework laid) => (laid.Cases.Min(c => c.X), laid.Cases.Max(c => c.X + c.Width));

    private static string Shape(Casework laid) => string.Join(' ', laid.Cases.Select(c => $"{c.Width.Nanometres}/{c.Bays}"));
}
