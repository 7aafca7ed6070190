namespace Casewright.Model.Measure;

/// <summary>Why a text was refused as a length.</summary>
public enum LengthRefusalKind
{
    /// <summary>The text is not written as a length.</summary>
    NotALength,

    /// <summary>The text can be read in two ways.</summary>
    Ambiguous,

    /// <summary>The length is not a whole number of nanometres, so it could only be kept rounded.</summary>
    NotExact,

    /// <summary>The length is outside ±9.2·10⁹ m.</summary>
    OutOfRange,
}

/// <summary>A refused length, with words for the person who wrote it.</summary>
/// <param name="Kind">Kind of refusal.</param>
/// <param name="Reason">One sentence that says what is wrong.</param>
/// <param name="Found">The text that was found, shortened when long.</param>
/// <param name="Accepted">What is accepted instead.</param>
public sealed record LengthRefusal(LengthRefusalKind Kind, string Reason, string Found, string Accepted);

/// <summary>What came of reading a length: the exact value, or a refusal.</summary>
public sealed record LengthReading
{
    /// <summary>The exact length; null when it was refused.</summary>
    public Length? Value { get; init; }

    /// <summary>Whether the text named its unit; false when the job's unit was taken.</summary>
    public bool HasUnit { get; init; }

    /// <summary>Why it was refused; null when there is a value.</summary>
    public LengthRefusal? Refusal { get; init; }
}
