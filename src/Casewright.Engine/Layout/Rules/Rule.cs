using System.Globalization;
using System.Text;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Rules;

/// <summary>A dimension as a sum of whole multiples of known figures: its formula and its value cannot disagree.</summary>
/// <remarks>Reads as it is written: <c>Rule.Of(w).Minus(t, 2).Plus(a, 2)</c> is W − 2t + 2a.</remarks>
internal sealed class Rule
{
    private readonly ValueList<(long Count, DerivationInput Input)> _terms;

    private Rule(ValueList<(long Count, DerivationInput Input)> terms) => _terms = terms;

    /// <summary>The exact value.</summary>
    public Length Exact => _terms.Aggregate(Length.Zero, (sum, term) => sum + (term.Input.Value * term.Count));

    /// <summary>The formula in symbols.</summary>
    public string Formula
    {
        get
        {
            var text = new StringBuilder();
            foreach (var (count, input) in _terms)
            {
                text.Append(text.Length == 0 ? (count < 0 ? "−" : "") : (count < 0 ? " − " : " + "));
                if (Math.Abs(count) != 1)
                    text.Append(Math.Abs(count).ToString(CultureInfo.InvariantCulture));
                text.Append(input.Symbol);
            }

            return text.ToString();
        }
    }

    /// <summary>The rule that begins with a figure.</summary>
    public static Rule Of(DerivationInput input, long count = 1) => new([(count, input)]);

    /// <summary>The rule with a figure added.</summary>
    public Rule Plus(DerivationInput input, long count = 1) => new(_terms.Add((count, input)));

    /// <summary>The rule with a figure taken off.</summary>
    public Rule Minus(DerivationInput input, long count = 1) => Plus(input, -count);

    /// <summary>The rule with a figure added where it applies: one that is null leaves the rule as it is.</summary>
    public Rule PlusAny(DerivationInput? input, long count = 1) => input is null ? this : Plus(input, count);

    /// <summary>The rule with a figure taken off where it applies: one that is null leaves the rule as it is.</summary>
    public Rule MinusAny(DerivationInput? input, long count = 1) => PlusAny(input, -count);

    /// <summary>The dimension as it comes out, not rounded.</summary>
    public Derivation As(string dimension) => Make(dimension, Exact);

    /// <summary>The dimension of a finished part: rounded once, to the nearest step.</summary>
    public Derivation Nearest(string dimension, Length step) => Make(dimension, Exact.RoundTo(step));

    /// <summary>The dimension of a loose or inserted part: rounded once, down to the step.</summary>
    public Derivation Down(string dimension, Length step) => Make(dimension, Exact.FloorTo(step));

    /// <summary>The dimension of one of several equal loose parts that share it: rounded once, down to the step.</summary>
    public Derivation ShareDown(string dimension, int among, Length step)
    {
        if (among == 1)
            return Down(dimension, step);
        var exact = Exact / among;
        var formula = string.Create(CultureInfo.InvariantCulture, $"({Formula})/{among}");
        return new(dimension, formula, _terms.Select(t => t.Input).Distinct().ToValueList(), exact, exact.FloorTo(step));
    }

    private Derivation Make(string dimension, Length result) =>
        new(dimension, Formula, _terms.Select(t => t.Input).Distinct().ToValueList(), Exact, result);
}
