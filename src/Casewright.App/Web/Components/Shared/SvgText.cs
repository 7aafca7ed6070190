using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Casewright.App.Web.Components.Shared;

/// <summary>A text of a drawing; the page language keeps the element's own name for itself.</summary>
public sealed class SvgText : ComponentBase
{
    /// <summary>The words.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    /// <summary>Attributes of the element.</summary>
    [Parameter(CaptureUnmatchedValues = true)]
    public IReadOnlyDictionary<string, object>? Attributes { get; set; }

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.OpenElement(0, "text");
        builder.AddMultipleAttributes(1, Attributes);
        builder.AddContent(2, ChildContent);
        builder.CloseElement();
    }
}
