using System.Globalization;
using Casewright.Model.Measure;

namespace Casewright.Engine.Checks;

/// <summary>Figures in words, in the unit of the job.</summary>
/// <param name="Units">Unit of the job.</param>
public readonly record struct Say(UnitSystem Units)
{
    private const double KilogramsPerPound = 0.45359237;

    // What floating point may take off a whole step.
    private const double Whole = 1e-9;

    /// <summary>A length to build by, in the usual print of the job's unit.</summary>
    public string Size(Length length) => LengthFormat.Usual(length, Units);

    /// <summary>A length to build by, from metres, cut off to 0.1 mm or the nearest 1/32 in by the usual print.</summary>
    public string Size(double metres) => Size(Length.FromNanometres((long)Math.Round(metres * 1e4) * 100_000));

    /// <summary>The largest size to build by that is no more than this, from metres.</summary>
    public string AtMost(double metres) => Size(Length.FromNanometres((long)Math.Floor(metres * 1e9)).FloorTo(Step));

    /// <summary>The smallest size to build by that is no less than this, from metres.</summary>
    public string AtLeast(double metres) => Size(Length.FromNanometres((long)Math.Ceiling(metres * 1e9)).CeilingTo(Step));

    /// <summary>Finest step that sizes are printed in: 0.1 mm or 1/32 in.</summary>
    public Length Step => Units == UnitSystem.Millimetres ? Length.FromMillimetres(0.1m) : Length.FromInches(0, 1, 32);

    /// <summary>A small distance such as a sag, from metres.</summary>
    public string Fine(double metres) => Units == UnitSystem.Millimetres
        ? (metres * 1000).ToString("0.0#", CultureInfo.InvariantCulture) + " mm"
        : (metres / 0.0254).ToString("0.00#", CultureInfo.InvariantCulture) + " in";

    /// <summary>A mass, from kg.</summary>
    public string Mass(double kilograms) => Units == UnitSystem.Millimetres
        ? kilograms.ToString("0.#", CultureInfo.InvariantCulture) + " kg"
        : (kilograms / KilogramsPerPound).ToString("0", CultureInfo.InvariantCulture) + " lb";

    /// <summary>A load per length of shelf, from kg/m.</summary>
    public string LoadPerLength(double kilogramsPerMetre) => Units == UnitSystem.Millimetres
        ? kilogramsPerMetre.ToString("0.#", CultureInfo.InvariantCulture) + " kg/m"
        : (kilogramsPerMetre / KilogramsPerPound * 0.3048).ToString("0.#", CultureInfo.InvariantCulture) + " lb/ft";

    /// <summary>The largest printed load per length that is no more than this, from kg/m.</summary>
    public string LoadAtMost(double kilogramsPerMetre)
    {
        var unit = Units == UnitSystem.Millimetres ? 1 : KilogramsPerPound / 0.3048;
        return LoadPerLength(Math.Floor((kilogramsPerMetre / unit * 10) + Whole) / 10 * unit);
    }

    /// <summary>The largest printed mass that is no more than this, from kg.</summary>
    public string MassAtMost(double kilograms) => Units == UnitSystem.Millimetres
        ? Mass(Math.Floor((kilograms * 10) + Whole) / 10)
        : Mass(Math.Floor((kilograms / KilogramsPerPound) + Whole) * KilogramsPerPound);

    /// <summary>The smallest printed force that is no less than this, from newtons.</summary>
    public string ForceAtLeast(double newtons)
    {
        var unit = Units == UnitSystem.Millimetres ? 1 : Mechanics.Screws.NewtonsPerPound;
        return Force(Math.Ceiling((newtons / unit) - Whole) * unit);
    }

    /// <summary>A force, from newtons.</summary>
    public string Force(double newtons) => Units == UnitSystem.Millimetres
        ? newtons.ToString("0", CultureInfo.InvariantCulture) + " N"
        : (newtons / Mechanics.Screws.NewtonsPerPound).ToString("0", CultureInfo.InvariantCulture) + " lbf";

    /// <summary>A bending moment, from N·m.</summary>
    public string Moment(double newtonMetres) => Units == UnitSystem.Millimetres
        ? newtonMetres.ToString("0.0", CultureInfo.InvariantCulture) + " N·m"
        : (newtonMetres / Mechanics.Screws.NewtonsPerPound / 0.0254).ToString("0", CultureInfo.InvariantCulture) + " in·lbf";

    /// <summary>A stress, from N/mm².</summary>
    public string Stress(double newtonsPerSquareMillimetre) => Units == UnitSystem.Millimetres
        ? newtonsPerSquareMillimetre.ToString("0.0#", CultureInfo.InvariantCulture) + " N/mm²"
        : (newtonsPerSquareMillimetre / 0.006894757293168).ToString("0", CultureInfo.InvariantCulture) + " psi";

    /// <summary>A load on a floor, from kN/m².</summary>
    public string FloorLoad(double kilonewtonsPerSquareMetre) => Units == UnitSystem.Millimetres
        ? kilonewtonsPerSquareMetre.ToString("0.0", CultureInfo.InvariantCulture) + " kN/m²"
        : (kilonewtonsPerSquareMetre / 0.04788025898).ToString("0", CultureInfo.InvariantCulture) + " psf";

    /// <summary>The smallest printed load on a floor that is no less than this, from kN/m².</summary>
    public string FloorLoadAtLeast(double kilonewtonsPerSquareMetre) => Units == UnitSystem.Millimetres
        ? FloorLoad(Math.Ceiling((kilonewtonsPerSquareMetre * 10) - Whole) / 10)
        : FloorLoad(Math.Ceiling((kilonewtonsPerSquareMetre / 0.04788025898) - Whole) * 0.04788025898);

    /// <summary>A temperature, from °C.</summary>
    public string Temperature(double celsius) => Units == UnitSystem.Millimetres
        ? celsius.ToString("0.#", CultureInfo.InvariantCulture) + " °C"
        : ((celsius * 9 / 5) + 32).ToString("0", CultureInfo.InvariantCulture) + " °F";

    /// <summary>A number with the given decimals at most.</summary>
    public static string Number(double value, int decimals = 1) =>
        Math.Round(value, decimals).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>"Do this, do that, or do the other.", of one way or several.</summary>
    public static string Sentence(IReadOnlyList<string> ways)
    {
        ArgumentNullException.ThrowIfNull(ways);
        var text = ways.Count < 2 ? string.Concat(ways) : string.Join(", ", ways.Take(ways.Count - 1)) + (ways.Count > 2 ? ", or " : " or ") + ways[^1];
        return text.Length == 0 ? "" : char.ToUpperInvariant(text[0]) + text[1..] + ".";
    }

    /// <summary>"1 splice", "2 splices".</summary>
    public static string Count(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count} {many}";
}
