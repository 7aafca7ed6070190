namespace Casewright.Engine.Checks.Mechanics;

/// <summary>Quality of the grip.</summary>
public enum Grip
{
    /// <summary>Handles or cut-outs.</summary>
    Good,

    /// <summary>An edge that fingers go under.</summary>
    Fair,

    /// <summary>No hold.</summary>
    Poor,
}

/// <summary>A two-handed lift by one person. Lengths in cm and angles in degrees, as published.</summary>
/// <param name="Reach">H: from the ankles to the hands, cm.</param>
/// <param name="Height">V: of the hands over the floor at the start, cm.</param>
/// <param name="Travel">D: up, cm.</param>
/// <param name="Turn">A: of the body, degrees.</param>
/// <param name="Grip">Quality of the grip.</param>
public readonly record struct Lift(double Reach, double Height, double Travel, double Turn, Grip Grip);

/// <summary>
/// Recommended mass of a lift by the revised lifting equation, NIOSH publication 94-110. It is made for one person lifting with both hands,
/// not for carrying or for teams.
/// </summary>
public static class LiftingEquation
{
    /// <summary>Load constant in kg.</summary>
    public const double LoadConstant = 23;

    /// <summary>HM: 25/H, at most 1; 0 beyond 63 cm.</summary>
    public static double ReachMultiplier(double reach) => reach > 63 ? 0 : Math.Min(1, 25 / reach);

    /// <summary>VM: 1 − 0.003 |V − 75|; 0 above 175 cm.</summary>
    public static double HeightMultiplier(double height) => height > 175 ? 0 : 1 - (0.003 * Math.Abs(height - 75));

    /// <summary>DM: 0.82 + 4.5/D, at most 1; 0 beyond 175 cm.</summary>
    public static double TravelMultiplier(double travel) => travel > 175 ? 0 : travel <= 25 ? 1 : 0.82 + (4.5 / travel);

    /// <summary>AM: 1 − 0.0032 A; 0 beyond 135°.</summary>
    public static double TurnMultiplier(double turn) => turn > 135 ? 0 : 1 - (0.0032 * turn);

    /// <summary>CM: good 1.00, fair 0.95 below 75 cm and 1.00 above, poor 0.90.</summary>
    public static double GripMultiplier(Grip grip, double height) => grip switch
    {
        Grip.Good => 1,
        Grip.Fair => height < 75 ? 0.95 : 1,
        _ => 0.9,
    };

    /// <summary>Recommended mass in kg for lifts no oftener than once in five minutes, less than an hour a day.</summary>
    public static double RecommendedMass(in Lift lift) => LoadConstant * ReachMultiplier(lift.Reach) * HeightMultiplier(lift.Height)
        * TravelMultiplier(lift.Travel) * TurnMultiplier(lift.Turn) * GripMultiplier(lift.Grip, lift.Height);

    /// <summary>
    /// What a team may lift in kg when each could lift <paramref name="each"/> alone: two take two thirds of the sum, three half
    /// (guidance of the British safety authority). More than three gain little and are counted as three.
    /// </summary>
    public static double TeamMass(int people, double each) => people switch
    {
        <= 0 => 0,
        1 => each,
        2 => 2 * each * 2 / 3,
        _ => 3 * each / 2,
    };

    /// <summary>Fewest people, up to three, who may lift a mass when each could lift <paramref name="each"/> kg alone; null when it is too much for three.</summary>
    public static int? People(double mass, double each)
    {
        for (var people = 1; people <= 3; people++)
        {
            if (mass <= TeamMass(people, each))
                return people;
        }

        return null;
    }
}
