namespace Casewright.Model.Timeline;

/// <summary>Hands-on time that the shop logged for an operation on one job.</summary>
public sealed record LoggedTime
{
    /// <summary>Name of the job that it was logged on.</summary>
    public required string Job { get; init; }

    /// <summary>The operation.</summary>
    public required Operation Operation { get; init; }

    /// <summary>How many units were done; above 0.</summary>
    public required decimal Quantity { get; init; }

    /// <summary>Minutes that they took, as the standard time counts them; above 0.</summary>
    public required decimal Minutes { get; init; }
}
