using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Spreadsheets;

/// <summary>The lists of a plan: parts, pieces, what to buy. Lengths as exact millimetres, and as the shop reads them.</summary>
public static class PlanLists
{
    /// <summary>Every part by itself.</summary>
    public static ListTable Parts(Plan plan)
    {
        var index = new PlanIndex(plan);
        ValueList<string> columns =
        [
            "id", "name", "case", "run", "role", "hand", "material", "length mm", "width mm", "thickness mm", $"length {index.Figures.Unit}",
            $"width {index.Figures.Unit}", $"thickness {index.Figures.Unit}", "grain", "x mm", "y mm", "z mm", "pieces", "splices",
        ];
        return new("parts", columns, plan.Parts.Select(part => PartRow(index, part)).ToValueList());
    }

    /// <summary>Every piece by itself, as sawn, with its place on its sheet or board.</summary>
    public static ListTable Pieces(Plan plan)
    {
        var index = new PlanIndex(plan);
        ValueList<string> columns =
        [
            "id", "part", "name", "stock", "from", "material", "length mm", "width mm", "thickness mm", $"length {index.Figures.Unit}",
            $"width {index.Figures.Unit}", "x mm", "y mm", "turned", "allowance start mm", "allowance end mm", "pair",
        ];
        return new("pieces", columns, plan.Cutting.Pieces.Select(piece => PieceRow(index, piece)).ToValueList());
    }

    /// <summary>What to buy and what to take from the rack.</summary>
    public static ListTable Buying(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ValueList<string> columns =
            ["kind", "stock", "what", "length mm", "width mm", "thickness mm", "buy", "from rack", $"each {plan.Job.Currency}", $"comes to {plan.Job.Currency}", "days"];
        return new("buying", columns, BuyingList.Lines(plan).Select(BuyingRow).ToValueList());
    }

    private static ValueList<object?> PartRow(PlanIndex index, Part part)
    {
        var low = part.LowCorner;
        return
        [
            part.Id, part.Name, part.Case, part.Run, part.Role.ToString(), part.Hand == Hand.None ? "" : part.Hand.ToString(), part.Material,
            part.Length.Millimetres, part.Width.Millimetres, part.Thickness.Millimetres, Plain(index, part.Length), Plain(index, part.Width),
            Plain(index, part.Thickness), Words.Of(part.Grain), low.X.Millimetres, low.Y.Millimetres, low.Z.Millimetres,
            (decimal)index.PiecesOf(part).Count, (decimal)index.SplicesOf(part).Count,
        ];
    }

    private static ValueList<object?> PieceRow(PlanIndex index, Piece piece)
    {
        var part = index.Part(piece.Part);
        return
        [
            piece.Id, piece.Part, part.Name, piece.Stock, piece.FromBoard ? "board" : "sheet", part.Material, piece.Length.Millimetres,
            piece.Width.Millimetres, part.Thickness.Millimetres, Plain(index, piece.Length), Plain(index, piece.Width), piece.X.Millimetres,
            piece.Y.Millimetres, piece.Rotated ? "yes" : "", piece.AllowanceStart.Millimetres, piece.AllowanceEnd.Millimetres, index.PairLetters(piece),
        ];
    }

    private static ValueList<object?> BuyingRow(BuyingLine line) =>
    [
        line.Kind, line.Stock, line.Name, line.Length?.Millimetres, line.Width?.Millimetres, line.Thickness?.Millimetres,
        (decimal)line.Buy, (decimal)line.OnHand, line.Price, line.Cost, line.LeadDays is { } days ? (decimal)days : null,
    ];

    // Spreadsheets have no typeset fractions: 77 3/4.
    private static string Plain(PlanIndex index, Length length) => index.Figures.Main(length).Replace(TextLayout.FractionSlash, '/');
}
