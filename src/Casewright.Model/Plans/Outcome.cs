using System.Diagnostics.CodeAnalysis;
using Casewright.Model.Collections;

namespace Casewright.Model.Plans;

/// <summary>The result of a stage: a value, or the problems that kept it from one.</summary>
/// <typeparam name="T">What the stage makes.</typeparam>
public sealed record Outcome<T>
    where T : class
{
    private Outcome(T? value, ValueList<Problem> problems)
    {
        Value = value;
        Problems = problems;
    }

    /// <summary>The value; null when there are problems.</summary>
    public T? Value { get; }

    /// <summary>What went wrong; empty when there is a value.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool Succeeded => Value is not null;

    /// <summary>An outcome with a value.</summary>
    public static Outcome<T> Of(T value) => new(value, []);

    /// <summary>An outcome without one.</summary>
    /// <exception cref="ArgumentException">There is no problem.</exception>
    public static Outcome<T> Failed(IEnumerable<Problem> problems)
    {
        var list = problems.ToValueList();
        return list.Count > 0 ? new(null, list) : throw new ArgumentException("A failure needs at least one problem.", nameof(problems));
    }
}
