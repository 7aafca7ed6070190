using Casewright.Engine.Cutting;
using Casewright.Engine.Cutting.Verification;
using Casewright.Model.Collections;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>Good answers are spoilt one way at a time; each fault must be seen.</summary>
public class CuttingVerifierTests
{
    private static readonly CuttingProblem Problem = CuttingProblems.Of(
        new CuttingRules(4, 10, 3), [new("ply", 2440, 1220, 60, 5)], (800, 300, 6, false), (500, 200, 4, true));

    private static CuttingSolution Good() => SheetCutting.Solve(Problem, null, TestContext.Current.CancellationToken).Solution!;

    [Fact]
    public void A_good_answer_has_no_fault() => Assert.Empty(CuttingVerifier.FaultsOf(Problem, Good()));

    [Fact]
    public void A_piece_moved_onto_its_neighbour_is_seen() => Spoilt(p => p with { X = p.X + 1 });

    [Fact]
    public void A_piece_into_the_edge_trim_is_seen() => Spoilt(p => p with { X = 5 });

    [Fact]
    public void A_piece_of_the_wrong_size_is_seen() => Spoilt(p => p with { Length = p.Length - 1 });

    [Fact]
    public void A_piece_turned_against_the_grain_is_seen() => Spoilt(p => p with { Turned = true });

    [Fact]
    public void A_piece_cut_twice_is_seen() => Spoilt(p => p with { Copy = 1 - Math.Min(p.Copy, 1) });

    [Fact]
    public void A_missing_piece_is_seen()
    {
        var good = Good();
        var sheet = good.Sheets[0];
        AssertFault(good with { Sheets = [sheet with { Pieces = sheet.Pieces.Skip(1).ToValueList() }, .. good.Sheets.Skip(1)] });
    }

    [Fact]
    public void A_wrong_cost_is_seen() => AssertFault(Good() with { Cost = 1 });

    [Fact]
    public void A_bound_above_the_answer_is_seen() => AssertFault(Good() with { SheetsLowerBound = 99 });

    [Fact]
    public void More_sheets_than_there_are_is_seen() =>
        Assert.NotEmpty(CuttingVerifier.FaultsOf(Problem with { Sheets = [Problem.Sheets[0] with { Available = 0 }] }, Good()));

    [Fact]
    public void A_layout_that_no_straight_cut_parts_is_seen()
    {
        // Four pieces round a hole: the plain case that no edge-to-edge cut can part.
        var problem = CuttingProblems.Of(new CuttingRules(0, 0, null), [new("sheet", 3, 3, 1)], (2, 1, 4, true));
        PlacedPiece[] wheel =
        [
            new(0, 0, 0, 0, 0, 0, 2, 1, false), new(0, 1, 0, 0, 2, 0, 2, 1, true), new(0, 2, 0, 0, 1, 2, 2, 1, false), new(0, 3, 0, 0, 0, 1, 2, 1, true),
        ];
        var sheet = new SheetCut(0, new CutRegion(RegionKind.Rest, 0, 0, 3, 3, [], -1), [], wheel.ToValueList(), []);
        CopyChoice[] choices = [new(0, 0, 0), new(0, 1, 0), new(0, 2, 0), new(0, 3, 0)];
        var fault = Assert.Single(CuttingVerifier.FaultsOf(problem, new CuttingSolution([sheet], choices.ToValueList(), 1, 1, 1, 1, true, 0)));
        Assert.Contains("cannot part", fault, StringComparison.Ordinal);
    }

    private static void Spoilt(Func<PlacedPiece, PlacedPiece> spoil)
    {
        var good = Good();
        var sheet = good.Sheets[0];
        var index = sheet.Pieces.Index().First(p => p.Item.Demand == 0 && p.Item.X < 900).Index;
        var pieces = sheet.Pieces.ToArray();
        pieces[index] = spoil(pieces[index]);
        AssertFault(good with { Sheets = [sheet with { Pieces = pieces.ToValueList() }, .. good.Sheets.Skip(1)] });
    }

    private static void AssertFault(CuttingSolution solution) => Assert.NotEmpty(CuttingVerifier.FaultsOf(Problem, solution));
}
