using System.Collections.Immutable;
using Casewright.App.Web.Making;
using Casewright.Engine;
using Casewright.Model.Files;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Splices;
using Casewright.Store;

namespace Casewright.App.Tests.Web;

/// <summary>Work to tick off: what waits for what is a fact of the trade, no source: a joint needs both its pieces, a case all its parts.</summary>
public sealed class ShopWorkTests
{
    private static readonly Plan s_plan = Planner.Plan(JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value! with
    {
        Walls = [.. JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value!.Walls.Select(w => w with { Height = Length.FromMillimetres(2900) })],
    }).Plan!;

    [Fact]
    public void At_first_every_piece_can_be_sawn_and_everything_else_waits()
    {
        var work = ShopWork.Of(s_plan, []);

        Assert.Equal((0, s_plan.Cutting.Pieces.Count), work.Pieces);
        Assert.All(work.Saw.SelectMany(s => s.Items), i => Assert.Equal(ItemStanding.Ready, i.Standing));
        Assert.NotEmpty(work.Joints);
        Assert.All(work.Joints, j => Assert.Equal(ItemStanding.Waiting, j.Standing));
        Assert.All(work.Cases, c => Assert.Equal(ItemStanding.Waiting, c.Standing));
        Assert.Equal("S1", work.NextSheet!.Id);
    }

    [Fact]
    public void A_joint_is_ready_when_both_its_pieces_are_sawn_and_not_before()
    {
        var splice = s_plan.Cutting.Splices.First(s => s.Method != SpliceMethod.CoveredButt);
        var both = s_plan.Cutting.Pieces.Where(p => p.Part == splice.Part).ToList();
        Assert.Equal(2, both.Count);
        var items = ShopWork.Of(s_plan, []).Saw.SelectMany(s => s.Items).ToDictionary(i => i.Id, StringComparer.Ordinal);

        var one = ShopWork.Of(s_plan, Ticked(items[both[0].Id]));
        var two = ShopWork.Of(s_plan, Ticked(items[both[0].Id], items[both[1].Id]));

        Assert.Equal([both[1].Id], one.Joints.Single(j => j.Id == splice.Id).Needs);
        Assert.Equal(ItemStanding.Ready, two.Joints.Single(j => j.Id == splice.Id).Standing);
    }

    [Fact]
    public void A_case_is_ready_when_every_piece_is_sawn_and_every_joint_glued()
    {
        var first = ShopWork.Of(s_plan, []);
        var sawn = first.Saw.SelectMany(s => s.Items).ToArray();

        var unglued = ShopWork.Of(s_plan, Ticked(sawn));
        var glued = ShopWork.Of(s_plan, Ticked([.. sawn, .. unglued.Joints]));

        Assert.Null(glued.NextSheet);
        Assert.Contains(unglued.Cases, c => c.Standing == ItemStanding.Waiting);
        Assert.All(glued.Cases, c => Assert.Equal(ItemStanding.Ready, c.Standing));
    }

    [Fact]
    public void A_piece_sawn_to_an_earlier_plan_is_shown_as_such_and_does_not_count()
    {
        var piece = ShopWork.Of(s_plan, []).Saw[0].Items[0];
        var ticks = ImmutableDictionary<string, StoredTick>.Empty.Add(piece.Item, new(piece.Item, "1 mm × 1 mm", DateTimeOffset.UnixEpoch));

        var work = ShopWork.Of(s_plan, ticks);

        Assert.Equal(ItemStanding.Outdated, work.Saw[0].Items[0].Standing);
        Assert.Equal(0, work.Pieces.Done);
        Assert.Equal(piece.Id, Assert.Single(work.Outdated).Id);
    }

    private static ImmutableDictionary<string, StoredTick> Ticked(params ShopItem[] items) =>
        items.ToImmutableDictionary(i => i.Item, i => new StoredTick(i.Item, i.Was, DateTimeOffset.UnixEpoch), StringComparer.Ordinal);
}
