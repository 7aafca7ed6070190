using System.Collections.Immutable;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Splices;
using Casewright.Store;

namespace Casewright.App.Web.Making;

/// <summary>A sheet, or the boards of one stock, with what is sawn from it.</summary>
/// <param name="Id">Id of the sheet or board.</param>
/// <param name="Sheet">The sheet; null for a board.</param>
/// <param name="Pieces">What is sawn from it.</param>
/// <param name="Items">The same, to tick off, in the same order.</param>
public sealed record SawJob(string Id, SheetLayout? Sheet, IReadOnlyList<Piece> Pieces, IReadOnlyList<ShopItem> Items)
{
    /// <summary>Whether every piece is sawn.</summary>
    public bool Done => Items.All(i => i.Done);
}

/// <summary>A plan as work to tick off: pieces to saw, joints to glue, cases to put together; each becomes ready when what it needs is done.</summary>
public sealed class ShopWork
{
    private ShopWork(IReadOnlyList<SawJob> saw, IReadOnlyList<ShopItem> joints, IReadOnlyList<ShopItem> cases)
    {
        Saw = saw;
        Joints = joints;
        Cases = cases;
    }

    /// <summary>Sheets in the order of the plan, then boards.</summary>
    public IReadOnlyList<SawJob> Saw { get; }

    /// <summary>Glued joints, in the order of the parts; butt joints that other parts carry are made while assembling.</summary>
    public IReadOnlyList<ShopItem> Joints { get; }

    /// <summary>Cases, in the order of the plan.</summary>
    public IReadOnlyList<ShopItem> Cases { get; }

    /// <summary>Pieces sawn, and pieces in all.</summary>
    public (int Done, int Of) Pieces => (Saw.Sum(s => s.Items.Count(i => i.Done)), Saw.Sum(s => s.Items.Count));

    /// <summary>The sheet or board to saw next; null when everything is sawn.</summary>
    public SawJob? NextSheet => Saw.FirstOrDefault(s => s.Items.Any(i => i.Done) && !s.Done) ?? Saw.FirstOrDefault(s => !s.Done);

    /// <summary>Everything that was done to an earlier plan and does not suit this one.</summary>
    public IEnumerable<ShopItem> Outdated => Saw.SelectMany(s => s.Items).Concat(Joints).Concat(Cases).Where(i => i.Standing == ItemStanding.Outdated);

    /// <summary>The work of a plan.</summary>
    public static ShopWork Of(Plan plan, ImmutableDictionary<string, StoredTick> ticks)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ticks);
        ShopItem Item(string kind, string id, string was, IReadOnlyList<string> needs)
        {
            var tick = ticks.GetValueOrDefault($"{kind}:{id}");
            var standing = tick is null ? (needs.Count == 0 ? ItemStanding.Ready : ItemStanding.Waiting) : tick.Was == was ? ItemStanding.Done : ItemStanding.Outdated;
            return new($"{kind}:{id}", id, was, standing, needs, tick);
        }

        var pieces = plan.Cutting.Pieces.ToLookup(p => p.Stock, StringComparer.Ordinal);
        SawJob Job(string id, SheetLayout? sheet) => new(id, sheet, [.. pieces[id]], [.. pieces[id].Select(p => Item("piece", p.Id, Size(p), []))]);
        List<SawJob> saw = [.. plan.Cutting.Sheets.Select(s => Job(s.Id, s)), .. plan.Cutting.Boards.Select(b => Job(b.Id, null))];

        var sawn = saw.SelectMany(s => s.Items).Where(i => i.Done).Select(i => i.Id).ToHashSet(StringComparer.Ordinal);
        var unsawn = plan.Cutting.Pieces.Where(p => !sawn.Contains(p.Id)).ToLookup(p => p.Part, p => p.Id, StringComparer.Ordinal);
        List<ShopItem> joints =
        [
            .. plan.Cutting.Splices.Where(s => s.Method != SpliceMethod.CoveredButt).Select(s => Item("splice", s.Id, Words(s), [.. Beside(plan, s).Where(p => !sawn.Contains(p))])),
        ];
        var open = joints.Where(j => !j.Done).ToLookup(j => j.Id.Split('/')[0], j => j.Id, StringComparer.Ordinal);
        List<ShopItem> cases =
        [
            .. plan.Cases.Select(c => Item("case", c.Id, $"{c.Width} × {c.Height}", [.. plan.Parts.Where(p => p.Case == c.Id).SelectMany(p => unsawn[p.Id].Concat(open[p.Id]))])),
        ];
        return new(saw, joints, cases);
    }

    /// <summary>The two pieces that a joint joins.</summary>
    private static IEnumerable<string> Beside(Plan plan, Splice splice) =>
        plan.Cutting.Pieces.Where(p => p.Part == splice.Part && (p.To == splice.Position || p.From == splice.Position)).Select(p => p.Id);

    private static string Size(Piece piece) => $"{Exact(piece.Length)} × {Exact(piece.Width)}";

    private static string Words(Splice splice) => $"{splice.Method} at {Exact(splice.Position)}, key {splice.KeyClass}";

    private static string Exact(Length length) => length.ToString();
}
