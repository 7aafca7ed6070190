using System.Globalization;
using Casewright.Engine.Cutting;
using Casewright.Model.Collections;
using CsCheck;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>Makes problems for tests.</summary>
internal static class CuttingProblems
{
    /// <summary>A problem of whole pieces.</summary>
    public static CuttingProblem Of(CuttingRules rules, SheetType[] sheets, params (long Length, long Width, int Count, bool MayTurn)[] pieces) => new(
        sheets.ToValueList(),
        pieces.Select((p, i) => new CuttingDemand("part " + i.ToString(CultureInfo.InvariantCulture), p.Count, [Whole(p.Length, p.Width, p.MayTurn)])).ToValueList(),
        rules,
        300_000);

    public static CuttingOption Whole(long length, long width, bool mayTurn = false) => new("whole", [new CuttingPiece(length, width, mayTurn)]);

    /// <summary>A part joined from two pieces of one width.</summary>
    public static CuttingOption Spliced(long first, long second, long width, decimal cost = 0, long? line = null) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{first}+{second}"), [new CuttingPiece(first, width, false), new CuttingPiece(second, width, false)], cost, line);

    /// <summary>Tiny problems of up to six pieces that mostly need two or three sheets, with every rule that the oracle knows.</summary>
    public static Gen<CuttingProblem> Tiny { get; } =
        from kerf in Gen.Long[0, 1]
        from trim in Gen.Long[0, 1]
        from stages in OneOf<int?>(2, 3, null)
        from first in OneOf(FirstCut.Either, FirstCut.Along, FirstCut.Across)
        from turn in Gen.Bool
        from second in Gen.Select(Gen.Long[8, 16], Gen.Long[6, 12], Gen.Int[0, 9], Gen.Int[1, 2])
        from sizes in Gen.Select(Gen.Long[1, 12], Gen.Long[1, 9]).Array[1, 6]
        select Make(new CuttingRules(kerf, trim, stages, first), turn, second, sizes);

    /// <summary>Tiny problems whose parts may be spliced.</summary>
    public static Gen<CuttingProblem> TinySpliced { get; } =
        from kerf in Gen.Long[0, 1]
        from stages in OneOf<int?>(2, 3)
        from labour in Gen.Int[0, 4]
        from grouped in Gen.Bool
        from parts in Gen.Select(Gen.Long[5, 19], Gen.Long[2, 6]).Array[2, 3]
        select MakeSpliced(new CuttingRules(kerf, 0, stages), labour, grouped, parts);

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static CuttingProblem Make(CuttingRules rules, bool turn, (long Length, long Width, int Cost, int Count) second, (long Length, long Width)[] sizes)
    {
        SheetType[] sheets = [new("new", 16, 12, 10), new("offcut", second.Length, second.Width, second.Cost, second.Count)];
        return Of(rules, sheets, [.. sizes.Select(s => (s.Length, s.Width, 1, turn))]);
    }

    private static CuttingProblem MakeSpliced(CuttingRules rules, int labour, bool grouped, (long Length, long Width)[] parts)
    {
        var demands = parts.Select((p, i) => new CuttingDemand(
            "part " + i.ToString(CultureInfo.InvariantCulture), 1, Options(p.Length, p.Width, labour).ToValueList(), grouped ? "line" : null));
        return new CuttingProblem([new SheetType("new", 14, 8, 10)], demands.ToValueList(), rules, 300_000);
    }

    private static IEnumerable<CuttingOption> Options(long length, long width, int labour)
    {
        if (length <= 14)
            yield return Whole(length, width);
        for (var line = 4L; line <= 12; line += 4)
        {
            if (length - line >= 2)
                yield return Spliced(line, length - line, width, labour, line);
        }
    }
}
