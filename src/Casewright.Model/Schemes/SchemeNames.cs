namespace Casewright.Model.Schemes;

/// <summary>Schemes in the words of a maker and of a client.</summary>
public static class SchemeNames
{
    /// <summary>Short name, for a table.</summary>
    public static string Of(SchemeKind kind) => kind switch
    {
        SchemeKind.DesignedAway => "designed away",
        SchemeKind.Stacked => "stacked",
        SchemeKind.LongSheets => "long sheets",
        SchemeKind.Spliced => "spliced",
        SchemeKind.Mixed => "mixed",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown scheme."),
    };

    /// <summary>One sentence for somebody who does not know the word.</summary>
    public static string Meaning(SchemeKind kind) => kind switch
    {
        SchemeKind.DesignedAway => "The cases are made to fit the usual sheet: the base is higher or the top lower, and no upright is joined.",
        SchemeKind.Stacked => "Two cases stand one above the other; a line runs all round where they meet.",
        SchemeKind.LongSheets => "Every upright is one piece, out of longer sheets that have to be ordered.",
        SchemeKind.Spliced => "Uprights are joined end to end out of the usual sheets; a fine line shows where.",
        SchemeKind.Mixed => "Part by part whichever costs less: joined from the usual sheets, or whole from longer ones.",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown scheme."),
    };
}
