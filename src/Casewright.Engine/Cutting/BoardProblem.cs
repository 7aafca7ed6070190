using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting;

/// <summary>One kind of solid stock: a length on offer or a board on hand.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Length">Raw length, above 0.</param>
/// <param name="Cost">Price of one, 0 or more.</param>
/// <param name="Available">How many there are; null without limit.</param>
/// <param name="Defects">Stretches that no piece may touch, from the reference end; empty for clear stock.</param>
public sealed record BoardType(string Id, long Length, decimal Cost, int? Available, ValueList<BoardDefect> Defects);

/// <summary>A stretch of a board that must be cut out.</summary>
/// <param name="From">Start, 0 or more.</param>
/// <param name="To">End, above <paramref name="From"/>.</param>
public sealed record BoardDefect(long From, long To);

/// <summary>Solid stock to cut to length. A demand is a group of alike parts, each copy made by one option: whole, or joined end to end.</summary>
/// <param name="Boards">The stock, at least one kind.</param>
/// <param name="Demands">The parts; only <see cref="CuttingPiece.Length"/> of their pieces counts.</param>
/// <param name="Kerf">Width of a saw cut, 0 or more.</param>
/// <param name="EndTrim">Cut off each end, 0 or more.</param>
/// <param name="WorkLimit">Effort in work units, 1 or more.</param>
public sealed record BoardProblem(
    ValueList<BoardType> Boards, ValueList<CuttingDemand> Demands, long Kerf = 0, long EndTrim = 0, long WorkLimit = CuttingProblem.UsualWork);

/// <summary>A piece on its board.</summary>
public sealed record BoardPiece(int Demand, int Copy, int Option, int Piece, long X, long Length);

/// <summary>One board and the pieces cut from it, from the reference end.</summary>
public sealed record BoardCut(int BoardType, ValueList<BoardPiece> Pieces, long LongestRest);

/// <summary>A complete answer for boards; members as in <see cref="CuttingSolution"/>.</summary>
public sealed record BoardSolution(
    ValueList<BoardCut> Boards, ValueList<CopyChoice> Choices, decimal Cost, decimal LowerBound, int BoardsUsed, int BoardsLowerBound, bool Proven, long Work);

/// <summary>Either an answer or the reasons why there is none.</summary>
public sealed record BoardOutcome(BoardSolution? Solution, ValueList<CuttingObstacle> Obstacles);
