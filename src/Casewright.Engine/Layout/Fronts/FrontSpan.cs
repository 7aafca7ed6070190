using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>Doors or drawers in front of some openings of a case, with their materials resolved.</summary>
/// <param name="Design">As designed.</param>
/// <param name="Path">Its path in the job file.</param>
/// <param name="Number">Its place among the fronts of the case, from 1.</param>
/// <param name="First">The lowest opening it closes, from 0 at the bottom.</param>
/// <param name="Last">The highest opening it closes.</param>
/// <param name="Material">Material of doors and drawer fronts.</param>
/// <param name="Box">Material of drawer boxes; null for doors.</param>
/// <param name="Bottom">Material of drawer bottoms; null for doors.</param>
internal sealed record FrontSpan(FrontDesign Design, string Path, int Number, int First, int Last, Material Material, Material? Box, Material? Bottom)
{
    /// <summary>Whether it is drawers.</summary>
    public bool IsDrawers => Design.Kind == FrontKind.Drawers;

    /// <summary>Whether it sits within the opening.</summary>
    public bool IsInset => Design.Fit == FrontFit.Inset;

    /// <summary>Whether it closes an opening.</summary>
    public bool Closes(int opening) => opening >= First && opening <= Last;

    /// <summary>How far what is behind it must stand back from the front of the case: an inset front lies within it, or within its frame.</summary>
    public Length Into(RunFigures run) => IsInset ? Length.Max(Length.Zero, Material.Thickness - run.Tf) : Length.Zero;

    /// <summary>Front face from the wall: flush with the run inset, before the buffers overlaid.</summary>
    public Length FrontZ(RunFigures run) => IsInset ? run.Run.Depth : run.Run.Depth + run.Gaps.Buffer + Material.Thickness;

    /// <summary>Rear face from the wall.</summary>
    public Length RearZ(RunFigures run) => FrontZ(run) - Material.Thickness;
}
