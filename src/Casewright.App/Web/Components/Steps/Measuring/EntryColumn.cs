namespace Casewright.App.Web.Components.Steps.Measuring;

/// <summary>A column of a table of readings.</summary>
/// <param name="Name">At its head.</param>
/// <param name="Least">Smallest length accepted, mm.</param>
/// <param name="Most">Largest length accepted, mm.</param>
public sealed record EntryColumn(string Name, decimal Least, decimal Most)
{
    /// <summary>A place along a wall or a height.</summary>
    public static EntryColumn Place(string name) => new(name, 0, 30_000);

    /// <summary>A distance that the tape or the laser reads.</summary>
    public static EntryColumn Reading(string name) => new(name, 0.1m, 30_000);

    /// <summary>A gap between a line and a wall.</summary>
    public static EntryColumn Gap(string name) => new(name, 0, 2_000);
}
