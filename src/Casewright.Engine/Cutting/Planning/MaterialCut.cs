using Casewright.Engine.Splicing;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>How the parts of one material are made and cut.</summary>
/// <param name="Parts">Every part with the option that it is made by.</param>
/// <param name="Pieces">Its pieces, in no order.</param>
/// <param name="Sheets">Sheets; empty for boards.</param>
/// <param name="Boards">Boards; empty for sheets.</param>
/// <param name="Bounds">How good that is.</param>
internal sealed record MaterialCut(
    ValueList<JointedPart> Parts, ValueList<Piece> Pieces, ValueList<SheetLayout> Sheets, ValueList<BoardLayout> Boards, MaterialBounds Bounds);
