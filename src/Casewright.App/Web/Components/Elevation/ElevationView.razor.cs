using System.Globalization;
using Casewright.Engine.Layout;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>The wall as one works on it: to scale, with everything that can be dragged, selected or read.</summary>
public sealed partial class ElevationView
{
    private const double MarginLeft = 92;
    private const double MarginRight = 112;
    private const double MarginTop = 26;
    private const double MarginBottom = 92;

    private ElementReference _frame;
    private DotNetObjectReference<ElevationView>? _self;
    private IJSObjectReference? _script;
    private ElevationPicture? _picture;
    private Drag? _drag;
    private double _pixelsWide = 1000;
    private double _pixelsHigh = 640;
    private bool _prevent;

    /// <summary>The job.</summary>
    [Parameter, EditorRequired]
    public required Job Job { get; set; }

    /// <summary>Its layout.</summary>
    [Parameter, EditorRequired]
    public required Casework Casework { get; set; }

    /// <summary>Its cutting plan; null while there is none.</summary>
    [Parameter]
    public CutPlan? Cutting { get; set; }

    /// <summary>Findings to show where they are.</summary>
    [Parameter]
    public IReadOnlyList<Finding> Findings { get; set; } = [];

    /// <summary>Id of the wall shown.</summary>
    [Parameter, EditorRequired]
    public required string Wall { get; set; }

    /// <summary>Id of the case or part selected; null for none.</summary>
    [Parameter]
    public string? Selected { get; set; }

    /// <summary>Told when a case or part is selected.</summary>
    [Parameter]
    public EventCallback<string?> Select { get; set; }

    /// <summary>Told when a finding is selected.</summary>
    [Parameter]
    public EventCallback<Finding> SelectFinding { get; set; }

    /// <summary>Told of an edit made by dragging or by keys.</summary>
    [Parameter]
    public EventCallback<(string Words, Func<Job, Casework, Job> Change)> Edit { get; set; }

    /// <summary>Heights, in mm of the room, where the splice line may not go.</summary>
    [Parameter]
    public IReadOnlyList<(double From, double To)> Zones { get; set; } = [];

    /// <summary>Millimetres of the room in one pixel of the screen.</summary>
    private double U { get; set; } = 4;

    private Length Step => Job.Units == UnitSystem.Inches ? Length.FromInches(0, 1, 4) : Length.FromMillimetres(5);

    private Length FineStep => Job.Units == UnitSystem.Inches ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_drag is null)
            Draw(Job, Casework);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        _self = DotNetObjectReference.Create(this);
        _script = await Js.InvokeAsync<IJSObjectReference>("import", "./elevation.js");
        await _script.InvokeVoidAsync("attach", _frame, _self);
    }

    /// <summary>Told by the script how large the drawing is on the screen, in pixels.</summary>
    [JSInvokable]
    public void Resized(double width, double height)
    {
        if (width < 50 || (Math.Abs(width - _pixelsWide) < 1 && Math.Abs(height - _pixelsHigh) < 1))
            return;
        (_pixelsWide, _pixelsHigh) = (width, height);
        Draw(Job, Casework);
        StateHasChanged();
    }

    /// <summary>Told by the script that something is dragged to a point, in mm of the drawing.</summary>
    [JSInvokable]
    public async Task Dragged(string key, double x, double y, bool fine, bool done, bool cancelled)
    {
        if (_picture is null || Drag.Parse(key) is not { } drag)
            return;
        if (cancelled)
        {
            _drag = null;
            Draw(Job, Casework);
            StateHasChanged();
            return;
        }

        var value = drag.IsVertical ? _picture.WallHeight - y : x;
        var to = Snapped(drag, value, fine);
        if (done)
        {
            _drag = null;
            await Apply(drag, to);
            return;
        }

        _drag = drag with { Value = ElevationPicture.Mm(to) };
        Preview(drag, to);
        StateHasChanged();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_script is not null)
                await _script.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The window is gone; so is its script.
        }

        _self?.Dispose();
    }

    private static double Mm(Length length) => ElevationPicture.Mm(length);

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static double Top(ElevationPicture picture, double height) => picture.WallHeight - height;

    private static string PartClass(Part part) => part.Role switch
    {
        PartRole.Back => "part back",
        PartRole.BaseRail or PartRole.BaseRung or PartRole.ToeFace => "part base",
        PartRole.Crown or PartRole.TrimBand or PartRole.Nosing or PartRole.Stile or PartRole.Rail => "part solid",
        PartRole.FixedShelf => "part fixed",
        PartRole.Filler or PartRole.EndPanel => "part filler",
        _ => "part",
    };

    private string Text(Length length) => Shown.Length(length, Job.Units);

    private string Label(ElevationPicture picture) =>
        $"Elevation of {Job.Walls.First(w => w.Id == Wall).Name}: {picture.Cases.Count} cases, {picture.Splices.Sum(s => s.Count)} upright splices";

    private string CaseLabel(CaseBox box) =>
        $"Case {box.Id}, {Text(box.Width)} wide, {Text(box.Height)} high, {box.Bays} {(box.Bays == 1 ? "bay" : "bays")}";

    private string CaseClass(CaseBox box) => Selected is { } id && (id == box.Id || id.StartsWith(box.Id + "-", StringComparison.Ordinal)) ? "case chosen" : "case";

    private void Draw(Job job, Casework casework)
    {
        _picture = ElevationPicture.Of(job, casework, Cutting, Wall);
        var forWidth = _picture.WallWidth / Math.Max(120, _pixelsWide - MarginLeft - MarginRight);
        var forHeight = _picture.WallHeight / Math.Max(120, _pixelsHigh - MarginTop - MarginBottom);
        U = Math.Max(forWidth, forHeight);
    }

    private string Box(ElevationPicture picture) =>
        $"{N(-MarginLeft * U)} {N(-MarginTop * U)} {N(picture.WallWidth + ((MarginLeft + MarginRight) * U))} {N(picture.WallHeight + ((MarginTop + MarginBottom) * U))}";

    private void Preview(Drag drag, Length to)
    {
        if (drag.Kind == "splice")
            return;
        try
        {
            var job = drag.Apply(Job, Casework, to);
            if (LayoutStage.Lay(job) is { Succeeded: true } laid)
                Draw(job, laid.Value);
        }
        catch (ArgumentException)
        {
            // The last good preview stays while the hand is out of range.
        }
    }

    private Length Snapped(Drag drag, double millimetres, bool fine)
    {
        var exact = Length.FromNanometres((long)(Math.Round(millimetres, 3) * 1e6));
        if (drag.Kind != "splice" || fine)
            return exact.RoundTo(fine ? FineStep : Step);
        var free = exact.RoundTo(Step);
        foreach (var (from, to) in Zones)
        {
            var at = Mm(free);
            if (at > from && at < to)
                free = Length.FromNanometres((long)((at - from < to - at ? from : to) * 1e6)).RoundTo(FineStep);
        }

        return free;
    }

    private Task Apply(Drag drag, Length to) => Edit.InvokeAsync((drag.Words, (job, casework) => drag.Apply(job, casework, to)));

    private Task CaseKey(KeyboardEventArgs e, CaseBox box) => e.Key is "Enter" or " " ? Select.InvokeAsync(box.Id) : Task.CompletedTask;

    private Task MarkKey(KeyboardEventArgs e, Finding finding) => e.Key is "Enter" or " " ? SelectFinding.InvokeAsync(finding) : Task.CompletedTask;

    private async Task HandleKey(KeyboardEventArgs e, Drag drag, Length at)
    {
        var direction = e.Key switch
        {
            "ArrowUp" when drag.IsVertical => 1,
            "ArrowRight" when !drag.IsVertical => 1,
            "ArrowDown" when drag.IsVertical => -1,
            "ArrowLeft" when !drag.IsVertical => -1,
            _ => 0,
        };
        _prevent = direction != 0;
        if (direction != 0)
            await Apply(drag, at + ((e.ShiftKey ? Step * 10 : e.AltKey ? FineStep : Step) * direction));
    }

    private IEnumerable<Handle> Handles(ElevationPicture picture)
    {
        foreach (var row in picture.Cases.Where(c => c.Tier == 0).GroupBy(c => c.Run, StringComparer.Ordinal))
        {
            var boxes = row.OrderBy(c => c.Column).ToList();
            var top = picture.Cases.Where(c => c.Run == row.Key).Max(c => Mm(c.Y + c.Height));
            for (var i = 0; i + 1 < boxes.Count; i++)
            {
                var x = Mm(boxes[i].X + boxes[i].Width);
                yield return new(Drag.Line(row.Key, boxes[i].Column), $"line between case {boxes[i].Id} and case {boxes[i + 1].Id}", boxes[i].X + boxes[i].Width,
                    x, Top(picture, top), x, Top(picture, Mm(boxes[i].Y)), Vertical: false);
            }

            if (Job.Runs.FirstOrDefault(r => r.Id == row.Key) is { Base.Kind: not Casewright.Model.Design.BaseKind.None } run)
            {
                var y = Top(picture, Mm(run.Base.Height));
                yield return new(Drag.Base(row.Key), $"base height of run {row.Key}", run.Base.Height, Mm(boxes[0].X), y, Mm(boxes[^1].X + boxes[^1].Width), y, Vertical: true);
            }
        }

        if (picture.Cases.FirstOrDefault(c => CaseClass(c) != "case") is not { } chosen)
            yield break;
        foreach (var height in Casewright.Engine.Editing.ShelfEditing.HeightsNow(Casework, chosen.Id))
        {
            var y = Top(picture, Mm(height));
            yield return new(Drag.Shelf(chosen.Run, chosen.Id, height), $"fixed shelf of case {chosen.Id}", height, Mm(chosen.X), y, Mm(chosen.X + chosen.Width), y, Vertical: true);
        }
    }

    private IEnumerable<Mark> Marks(ElevationPicture picture)
    {
        var grave = Findings.Where(f => f.Severity is Severity.Stop or Severity.Caution);
        foreach (var place in grave.GroupBy(f => CaseOf(picture, f.Subject)).Where(g => g.Key is not null))
        {
            var box = place.Key!;
            var worst = place.MaxBy(f => f.Severity)!;
            yield return new(
                Mm(box.X) + (Mm(box.Width) / 2),
                Top(picture, Mm(box.Y)) - (24 * U),
                worst.Severity == Severity.Stop ? "stop" : "caution",
                place.Count() > 1 ? place.Count().ToString(CultureInfo.InvariantCulture) : "!",
                place.Count() > 1 ? $"{place.Count()} findings in case {box.Id}, first: {worst.Message}" : worst.Message,
                worst);
        }
    }

    private CaseBox? CaseOf(ElevationPicture picture, string subject)
    {
        var part = Casework.Parts.FirstOrDefault(p => p.Id == subject || subject.StartsWith(p.Id + "/", StringComparison.Ordinal));
        return picture.Cases.FirstOrDefault(c => c.Id == (part?.Case ?? subject));
    }

    private IEnumerable<Dimension> Dimensions(ElevationPicture picture)
    {
        var below = picture.WallHeight + (38 * U);
        foreach (var box in picture.Cases.Where(c => c.Tier == 0).OrderBy(c => c.X))
        {
            var label = Text(box.Width);
            var room = Mm(box.Width) / U;
            yield return Dimension.Level(Mm(box.X), Mm(box.X + box.Width), below, U, room > (label.Length * 7.5) + 14 ? label : "");
        }

        yield return Dimension.Level(0, picture.WallWidth, below + (32 * U), U, Text(Job.Walls.First(w => w.Id == Wall).Width));
        var left = -42 * U;
        var heights = picture.Cases.SelectMany(c => new[] { Mm(c.Y), Mm(c.Y + c.Height) }).Append(0).Distinct().Order().ToList();
        for (var i = 0; i + 1 < heights.Count; i++)
        {
            var length = Length.FromNanometres((long)Math.Round((heights[i + 1] - heights[i]) * 1e6));
            var label = Text(length);
            yield return Dimension.Upright(left, Top(picture, heights[i]), Top(picture, heights[i + 1]), U, (heights[i + 1] - heights[i]) / U > (label.Length * 7.5) + 10 ? label : "");
        }

        yield return Dimension.Upright(left - (30 * U), picture.WallHeight, 0, U, Text(Job.Walls.First(w => w.Id == Wall).Height));
    }

    private sealed record Handle(Drag Drag, string Name, Length At, double X0, double Y0, double X1, double Y1, bool Vertical)
    {
        public string Key => Drag.Key;
    }

    private sealed record Mark(double X, double Y, string Class, string Sign, string Words, Finding Finding);

    private sealed record Dimension(double X0, double Y0, double X1, double Y1, double TickX, double TickY, string Label)
    {
        public static Dimension Level(double from, double to, double y, double u, string label) => new(from, y, to, y, 0, 7 * u, label);

        public static Dimension Upright(double x, double from, double to, double u, string label) => new(x, from, x, to, 7 * u, 0, label);
    }
}
