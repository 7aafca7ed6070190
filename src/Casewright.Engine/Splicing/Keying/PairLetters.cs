namespace Casewright.Engine.Splicing.Keying;

/// <summary>Letters of pairs: A to Z, then AA to ZZ and on.</summary>
public static class PairLetters
{
    private const int Letters = 26;

    /// <summary>The letter of a pair.</summary>
    /// <param name="index">Its number, from 0.</param>
    public static string Of(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        var letter = ((char)('A' + (index % Letters))).ToString();
        return index < Letters ? letter : Of((index / Letters) - 1) + letter;
    }
}
