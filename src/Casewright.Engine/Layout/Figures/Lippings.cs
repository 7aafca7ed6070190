using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Figures;

/// <summary>
/// The lipping of one side of a case. The side is narrower by it: D − e − er + zw + s, so that the front lip ends flush with the front and the
/// rear one stands behind the wall line by what is planed off it. What is housed in the side clears the lips with notched corners.
/// </summary>
/// <param name="Run">The run, with the depth that holds there.</param>
/// <param name="End">The end of the run.</param>
/// <param name="Front">On the front edge; null for none.</param>
/// <param name="Rear">On the rear edge; null for none.</param>
internal sealed record Lippings(RunFigures Run, EndFigures End, Material? Front, Material? Rear)
{
    /// <summary>The lipping of a side; none on sides that no finished end shows.</summary>
    public static Lippings Of(CaseFigures box, Hand hand)
    {
        var end = hand == Hand.Left ? box.Run.Left : box.Run.Right;
        return (hand == Hand.Left ? box.IsFirst : box.IsLast) ? new(box.Run, end, end.FrontLip, end.RearLip) : new(box.Run, end, null, null);
    }

    /// <summary>Whether both edges are bare.</summary>
    public bool None => Front is null && Rear is null;

    /// <summary>What the front lip takes of the depth.</summary>
    public Length FrontDepth => Front?.Thickness ?? Length.Zero;

    /// <summary>How far the rear lip stands behind the plumb plane of the wall before it is planed.</summary>
    public Length Proud => Rear is null ? Length.Zero : Run.Joinery.ScribeAllowance + (End.Behind ?? Length.Zero);

    /// <summary>From the plumb plane of the wall to the rear edge of the side itself.</summary>
    public Length SideRear => Rear is { } rear ? rear.Thickness - Proud : Run.SideRear;

    /// <summary>Work laid out on the side as it would be without lips, in the coordinates of the side as cut; null where the lip takes it all.</summary>
    public Machining? Moved(Machining work, Length width) => None ? work : work switch
    {
        Dado dado => dado with { FromY = Length.Max(Length.Zero, dado.FromY - FrontDepth), ToY = Length.Min(width, dado.ToY - FrontDepth) },
        Groove groove => groove with { Y = groove.Y - FrontDepth },
        PinRow row => row with { Y = row.Y - FrontDepth },
        Notch notch when notch.LengthY <= FrontDepth => null,
        Notch notch => notch with { LengthY = notch.LengthY - FrontDepth },
        _ => work,
    };

    /// <summary>The corners that a level panel loses to the lips of the sides it is housed in.</summary>
    public static IEnumerable<Notch> Corners(CaseFigures box, Part panel, bool atLeft, bool atRight)
    {
        var dado = box.Run.Joinery.DadoDepth;
        if (dado == Length.Zero)
            yield break;
        foreach (var (hand, x) in new[] { (Hand.Left, Length.Zero), (Hand.Right, panel.Length - dado) })
        {
            var lips = Of(box, hand);
            if (lips.None || !(hand == Hand.Left ? atLeft : atRight))
                continue;
            var front = panel.Place.Origin.Z - (box.Run.UprightFront - lips.FrontDepth);
            if (front > Length.Zero)
                yield return new("lipping of the side", x, Length.Zero, dado, front);
            var rear = lips.SideRear - (panel.Place.Origin.Z - panel.Width);
            if (lips.Rear is not null && rear > Length.Zero)
                yield return new("lipping of the side", x, panel.Width - rear, dado, rear);
        }
    }
}
