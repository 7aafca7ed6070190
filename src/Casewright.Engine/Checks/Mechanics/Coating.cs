namespace Casewright.Engine.Checks.Mechanics;

/// <summary>Spread of a finish.</summary>
public static class Coating
{
    /// <summary>Area in m² that a litre covers without loss: 10 × solids by volume in % / dry film in µm.</summary>
    public static double SquareMetresPerLitre(double solidsPercent, double dryMicrometres) => 10 * solidsPercent / dryMicrometres;

    /// <summary>Area in ft² that a US gallon covers without loss: 231 in³ × solids / film; 1604 × solids / mils.</summary>
    public static double SquareFeetPerGallon(double solidsPercent, double dryMils) => 231 * solidsPercent / 100 / (dryMils / 1000) / 144;
}
