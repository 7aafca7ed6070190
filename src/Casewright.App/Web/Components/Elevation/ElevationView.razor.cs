using System.Globalization;
using Casewright.Engine.Layout;
using Casewright.Engine.Splicing;
using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>The wall as one works on it: to scale, with everything that can be dragged, selected, read or typed over.</summary>
public sealed partial class ElevationView
{
    private const double SnapPixels = 9;

    private readonly string _id = Guid.NewGuid().ToString("N")[..6];
    private ElementReference _frame;
    private DotNetObjectReference<ElevationView>? _self;
    private IJSObjectReference? _script;
    private ElevationPicture? _picture;
    private Job _shownJob = null!;
    private Casework _shownCasework = null!;
    private ElevationScale _scale = new(4, 96, 116, 24, 90);
    private Drag? _drag;
    private Rest? _rest;
    private JointHeights? _heights;
    private double _pixelsWide = 1000;
    private double _pixelsHigh = 640;

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

    /// <summary>The case chosen; null for none.</summary>
    [Parameter]
    public CaseBox? Chosen { get; set; }

    /// <summary>The part chosen; null for none.</summary>
    [Parameter]
    public Part? SelectedPart { get; set; }

    /// <summary>Width of the drawing as a share of the room on the screen, in percent; 100 shows the whole wall.</summary>
    [Parameter]
    public int Zoom { get; set; } = 100;

    /// <summary>Told when a case or part is selected; null when nothing is.</summary>
    [Parameter]
    public EventCallback<string?> Select { get; set; }

    /// <summary>Told the id of what a finding is about when its mark is selected.</summary>
    [Parameter]
    public EventCallback<string> SelectFinding { get; set; }

    /// <summary>Told of an edit made by dragging, by keys or by typing over a dimension.</summary>
    [Parameter]
    public EventCallback<(string Words, Func<Job, Casework, Job> Change)> Edit { get; set; }

    private double U => _scale.U;

    private string Hatch => "hatch-" + _id;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_drag is null)
            Draw(Job, Casework);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_typeFocus)
        {
            _typeFocus = false;
            await _typeField.FocusAsync();
        }

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

    /// <summary>Told by the script what was pressed and let go without being dragged.</summary>
    [JSInvokable]
    public Task Picked(string id) => Select.InvokeAsync(id);

    /// <summary>Told by the script that something is dragged to a point, in mm of the drawing.</summary>
    [JSInvokable]
    public async Task Dragged(string key, double x, double y, bool fine, bool done, bool cancelled)
    {
        if (_picture is null || Drag.Parse(key) is not { } drag)
            return;
        if (cancelled)
        {
            (_drag, _rest) = (null, null);
            Draw(Job, Casework);
            StateHasChanged();
            return;
        }

        if (_drag?.Key != drag.Key)
            _heights = drag.Kind == "splice" ? JointHeights.Of(Job, Casework, drag.Run) : null;
        var hand = Length.FromNanometres((long)(Math.Round(drag.IsVertical ? _picture.WallHeight - y : x, 3) * 1e6));
        var rest = new Snap(Job, Casework, _heights).At(drag, hand, Length.FromNanometres((long)(SnapPixels * U * 1e6)), fine);
        if (done)
        {
            (_drag, _rest) = (null, null);
            await Apply(drag, rest.To);
            return;
        }

        (_drag, _rest) = (drag with { Value = Mm(rest.To) }, rest);
        Preview(drag, rest.To);
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

    private string Text(Length length) => Shown.Length(length, Job.Units);

    private void Draw(Job job, Casework casework)
    {
        (_shownJob, _shownCasework) = (job, casework);
        _picture = ElevationPicture.Of(job, casework, Cutting, Wall);
        _scale = ElevationScale.Fit(_picture.WallWidth, _picture.WallHeight, _pixelsWide, _pixelsHigh);
    }

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

    private Task Apply(Drag drag, Length to) => Edit.InvokeAsync((drag.Words, (job, casework) => drag.Apply(job, casework, to)));

    private Task CaseKey(KeyboardEventArgs e, CaseBox box) => e.Key is "Enter" or " " ? Select.InvokeAsync(box.Id) : Task.CompletedTask;

    private Task PartKey(KeyboardEventArgs e, Part part) => e.Key is "Enter" or " " ? Select.InvokeAsync(part.Id) : Task.CompletedTask;

    private Task MarkKey(KeyboardEventArgs e, FindingSpot mark) => e.Key is "Enter" or " " ? SelectFinding.InvokeAsync(mark.Subject) : Task.CompletedTask;

    private Task HandleKey(KeyboardEventArgs e, Drag drag, Length at)
    {
        var direction = e.Key switch
        {
            "ArrowUp" when drag.IsVertical => 1,
            "ArrowRight" when !drag.IsVertical => 1,
            "ArrowDown" when drag.IsVertical => -1,
            "ArrowLeft" when !drag.IsVertical => -1,
            _ => 0,
        };
        return direction == 0 ? Task.CompletedTask : Apply(drag, at + (StepOf(e) * direction));
    }

    /// <summary>Keys take the splice line to the next place where a joint may lie.</summary>
    private Task SpliceKey(KeyboardEventArgs e, SpliceLine line)
    {
        if (e.Key is not ("ArrowUp" or "ArrowDown"))
            return Task.CompletedTask;
        var open = JointHeights.Of(Job, Casework, line.Run)?.Open ?? [];
        var wished = e.Key == "ArrowUp" ? line.Height + StepOf(e) : line.Height - StepOf(e);
        var to = open.Count == 0 ? wished : e.Key == "ArrowUp" ? open.AtOrAbove(wished) : open.AtOrBelow(wished);
        return to is { } height ? Apply(Drag.Splice(line.Run), height) : Task.CompletedTask;
    }

    private Length StepOf(KeyboardEventArgs e) => e.ShiftKey ? Snap.Step(Job.Units) * 10 : e.AltKey ? Snap.FineStep(Job.Units) : Snap.Step(Job.Units);
}
