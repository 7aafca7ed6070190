using Casewright.Model.Plans;

namespace Casewright.App.Web;

/// <summary>A figure of the foot line.</summary>
public sealed record FootFigure(string Value, string Name, string Note);

/// <summary>The figures of the foot line that come from stages beyond cutting and checks.</summary>
public static class FootFigures
{
    /// <summary>The figures of a plan; none for a stage that the plan lacks.</summary>
    public static IEnumerable<FootFigure> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        yield break;
    }
}
