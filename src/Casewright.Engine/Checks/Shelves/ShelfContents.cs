using Casewright.Model.Collections;
using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>What people put on shelves, and what it weighs.</summary>
/// <param name="Name">Name as people say it.</param>
/// <param name="KilogramsPerMetre">Mass for each metre of full shelf.</param>
/// <param name="Source">Where the figure comes from.</param>
/// <param name="Standing">What stands behind it.</param>
public sealed record ShelfContents(string Name, double KilogramsPerMetre, string Source, Standing Standing)
{
    private const string Practice = "common practice, no source";

    /// <summary>Usual contents, the lightest first.</summary>
    public static ValueList<ShelfContents> Usual { get; } =
    [
        new("display", 10, Practice, Standing.CommonPractice),
        new("paperbacks", 20, Practice, Standing.CommonPractice),
        new("novels", 25, Practice, Standing.CommonPractice),
        new("mixed books", 37, "25 lb a foot, weighed by a state testing programme (structural engineers' list, 2000)", Standing.Published),
        new("music, magazines or law", 45, Practice, Standing.CommonPractice),
        new("pottery", 50, Practice, Standing.CommonPractice),
        new("reference or art books", 52, Practice, Standing.CommonPractice),
        new("records", 55, Practice, Standing.CommonPractice),
        new("archive boxes", 60, Practice, Standing.CommonPractice),
    ];

    /// <summary>Mass per metre of a shelf that carries a load per area.</summary>
    /// <param name="kilogramsPerSquareMetre">Load in kg/m²; 50 psf is 244.</param>
    /// <param name="depth">Depth of the shelf in m.</param>
    public static double PerMetre(double kilogramsPerSquareMetre, double depth) => kilogramsPerSquareMetre * depth;
}
