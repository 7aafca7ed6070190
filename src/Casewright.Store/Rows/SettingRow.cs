namespace Casewright.Store.Rows;

/// <summary>A setting of the shop that holds for all jobs.</summary>
internal sealed class SettingRow
{
    public required string Name { get; init; }

    public required string Value { get; set; }
}
