namespace Casewright.Engine.Cutting;

/// <summary>One kind of sheet that may be cut: a size on offer, a size on hand, or an offcut from the rack.</summary>
/// <param name="Id">Stable name, repeated in reasons and layouts.</param>
/// <param name="Length">Raw length along x (grain), above 0; nanometres in jobs, any whole unit in benchmarks.</param>
/// <param name="Width">Raw width along y, above 0, same unit.</param>
/// <param name="Cost">Price of one sheet, 0 or more; 0 for sheets already paid for.</param>
/// <param name="Available">How many there are; null without limit.</param>
/// <param name="Preference">Order of use among sheets of equal cost: lower numbers first (old offcuts before new sheets).</param>
public sealed record SheetType(string Id, long Length, long Width, decimal Cost, int? Available = null, int Preference = 0);
