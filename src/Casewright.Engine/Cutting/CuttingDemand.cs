using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting;

/// <summary>A group of alike parts. Every copy is made by one of the options; copies may differ in theirs.</summary>
/// <param name="Id">Stable name, repeated in reasons.</param>
/// <param name="Count">How many parts, 0 or more.</param>
/// <param name="Options">The ways to make one part, at least one.</param>
/// <param name="SightLineGroup">
/// Parts that must keep one joint line between them: every copy of every demand with this name picks options of one same
/// <see cref="CuttingOption.SightLine"/>, or options without one. Null when the joint line is free.
/// </param>
public sealed record CuttingDemand(string Id, int Count, ValueList<CuttingOption> Options, string? SightLineGroup = null);

/// <summary>One way to make a part: whole, or spliced in given places by a given method.</summary>
/// <param name="Id">Name of the option, unique in its demand.</param>
/// <param name="Pieces">The pieces to cut, at least one, joint allowances included.</param>
/// <param name="ExtraCost">Cost beyond the sheets (labour of the splices), 0 or more, in the currency of the sheets.</param>
/// <param name="SightLine">Height of the joint line; null for options that show none.</param>
/// <param name="Preference">Between answers of one cost, copies of lower preference numbers win; 0 or more.</param>
public sealed record CuttingOption(string Id, ValueList<CuttingPiece> Pieces, decimal ExtraCost = 0, long? SightLine = null, int Preference = 0);

/// <summary>A rectangle to cut.</summary>
/// <param name="Length">Size as sawn along x of the sheet (along the grain) when not turned, above 0.</param>
/// <param name="Width">Size as sawn along y, above 0.</param>
/// <param name="MayTurn">Whether it may lie across the grain.</param>
public sealed record CuttingPiece(long Length, long Width, bool MayTurn);
