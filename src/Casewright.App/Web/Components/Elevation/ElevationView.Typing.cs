using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Casewright.App.Web.Components.Elevation;

/// <content>Typing a figure over a dimension of the drawing.</content>
public sealed partial class ElevationView
{
    private ElementReference _typeField;
    private Dimension? _typing;
    private string _typedText = "";
    private string? _typeError;
    private bool _typeFocus;

    private void Type(Dimension dimension) => (_typing, _typedText, _typeError, _typeFocus) = (dimension, Text(dimension.Value), null, true);

    private void DimensionKey(KeyboardEventArgs e, Dimension dimension)
    {
        if (e.Key is "Enter" or " ")
            Type(dimension);
    }

    private void TypeKey(KeyboardEventArgs e)
    {
        if (e.Key == "Escape")
            _typing = null;
    }

    private async Task Typed(ChangeEventArgs e)
    {
        if (_typing is not { Target: { } target } dimension)
            return;
        _typedText = e.Value as string ?? "";
        if (!Shown.TryRead(_typedText, Job.Units, out var length, out _typeError))
            return;
        _typing = null;
        if (length != dimension.Value)
            await Edit.InvokeAsync((target.Name, (job, casework) => target.Apply(job, casework, length)));
    }
}
