using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>The room that a part fills, as stretches along the three axes of its wall.</summary>
/// <param name="Along">Along the wall.</param>
/// <param name="Up">Above the floor.</param>
/// <param name="Out">Out from the wall.</param>
internal readonly record struct Box(Stretch Along, Stretch Up, Stretch Out)
{
    /// <summary>Gap within which two parts are taken to touch: rounding and working play.</summary>
    private static readonly Length s_touch = Length.FromMillimetres(2);

    /// <summary>The box of a part.</summary>
    public static Box Of(Part part)
    {
        var low = part.LowCorner;
        var high = part.HighCorner;
        return new(new(low.X, high.X), new(low.Y, high.Y), new(low.Z, high.Z));
    }

    /// <summary>The stretch along a direction of the room.</summary>
    public Stretch this[Axis axis] => axis switch
    {
        Axis.Left or Axis.Right => Along,
        Axis.Up or Axis.Down => Up,
        _ => Out,
    };

    /// <summary>Whether two boxes overlap or lie against each other.</summary>
    public bool Touches(Box other) => Meet(Along, other.Along) && Meet(Up, other.Up) && Meet(Out, other.Out);

    private static bool Meet(Stretch a, Stretch b) => a.From <= b.To + s_touch && b.From <= a.To + s_touch;
}
