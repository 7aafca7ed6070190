using Casewright.Store;

namespace Casewright.App.Web.Making;

/// <summary>How far something in the shop has come.</summary>
public enum ItemStanding
{
    /// <summary>Something it needs is not done yet.</summary>
    Waiting,

    /// <summary>It can be done now.</summary>
    Ready,

    /// <summary>It is done as the plan has it.</summary>
    Done,

    /// <summary>It was done, and the plan has changed since: what lies in the shop is not what the plan wants.</summary>
    Outdated,
}

/// <summary>Something to tick off.</summary>
/// <param name="Item">Its key in the store.</param>
/// <param name="Id">Id of the piece, splice or case.</param>
/// <param name="Was">What it is by the plan; kept with the tick.</param>
/// <param name="Standing">How far it has come.</param>
/// <param name="Needs">Ids of what it waits for.</param>
/// <param name="Tick">Its tick; null when there is none.</param>
public sealed record ShopItem(string Item, string Id, string Was, ItemStanding Standing, IReadOnlyList<string> Needs, StoredTick? Tick)
{
    /// <summary>Whether it is done as the plan has it.</summary>
    public bool Done => Standing == ItemStanding.Done;
}
