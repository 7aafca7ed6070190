using Casewright.Model.Site;

namespace Casewright.Engine.Access;

/// <summary>How a box is held where it passes. Metres.</summary>
/// <param name="Up">Size that stands upright, or for a tipped box the room it takes in height.</param>
/// <param name="Along">Size that leads in plan, tipped where it is tipped.</param>
/// <param name="Across">Size across it in plan.</param>
/// <param name="Tip">How far it is tipped from lying, in degrees; 0 when it is carried level or upright.</param>
/// <param name="Long">The box's own size that is tipped; 0 when none is.</param>
/// <param name="Thick">The box's own size in the plane of tipping; 0 when none is.</param>
public sealed record Hold(double Up, double Along, double Across, double Tip, double Long, double Thick);

/// <summary>A box at one narrow place.</summary>
/// <param name="Passage">The place.</param>
/// <param name="Hold">The best way to hold the box there.</param>
/// <param name="Spare">What is left in the dimension that decides, in metres, beyond the play; negative is what is lacking.</param>
/// <param name="Turning">Longest plan length that turns with the width across, in metres; null where nothing turns.</param>
public sealed record PassageFit(Passage Passage, Hold Hold, double Spare, double? Turning)
{
    /// <summary>Whether it passes.</summary>
    public bool Passes => Spare >= 0;
}
