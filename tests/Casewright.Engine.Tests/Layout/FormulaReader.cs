using System.Globalization;
using Casewright.Model.Parts;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Computes the formula of a derivation from its inputs: sums, whole factors, brackets and division by whole numbers.</summary>
internal sealed class FormulaReader
{
    private readonly string _text;
    private readonly Dictionary<string, decimal> _values;
    private int _at;

    private FormulaReader(Derivation derivation)
    {
        _text = derivation.Formula.Replace(" ", "", StringComparison.Ordinal);
        _values = derivation.Inputs.ToDictionary(i => i.Symbol, i => (decimal)i.Value.Nanometres, StringComparer.Ordinal);
    }

    /// <summary>The value in nanometres; halves of a nanometre and the like stay.</summary>
    public static decimal Compute(Derivation derivation)
    {
        var reader = new FormulaReader(derivation);
        var value = reader.Sum();
        Assert.True(reader._at == reader._text.Length, $"Cannot read '{derivation.Formula}' from {reader._at}.");
        return value;
    }

    private decimal Sum()
    {
        var value = Take('−') ? -Product() : Product();
        while (_at < _text.Length && _text[_at] is '+' or '−')
            value += Take('+') ? Product() : Take('−') ? -Product() : 0;
        return value;
    }

    private decimal Product()
    {
        var factor = Number() ?? 1;
        var value = factor * Atom();
        return Take('/') ? value / Number()!.Value : value;
    }

    private decimal Atom()
    {
        if (Take('('))
        {
            var inner = Sum();
            Assert.True(Take(')'));
            return inner;
        }

        var start = _at;
        while (_at < _text.Length && char.IsLetter(_text[_at]))
            _at++;
        return _values[_text[start.._at]];
    }

    private decimal? Number()
    {
        var start = _at;
        while (_at < _text.Length && char.IsAsciiDigit(_text[_at]))
            _at++;
        return start == _at ? null : decimal.Parse(_text[start.._at], CultureInfo.InvariantCulture);
    }

    private bool Take(char c)
    {
        if (_at >= _text.Length || _text[_at] != c)
            return false;
        _at++;
        return true;
    }
}
