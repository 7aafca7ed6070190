using Casewright.Model.Cutting;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Splices;

namespace Casewright.Model.Files.PlanShapes;

/// <summary>Pieces, splices, sheets, boards and bounds in a plan file.</summary>
internal static class CuttingShapes
{
    private static ViewShape<LeftoverPlace> LeftOver { get; } = new ViewShape<LeftoverPlace>("leftOver", "What another sheet or board left over.")
        .Text("id", l => l.Id, "Id of that sheet or board.")
        .Length("x", l => l.X, "Nearest corner along it.")
        .Length("y", l => l.Y, "Nearest corner across it.");

    public static ViewShape<Piece> Piece { get; } = new ViewShape<Piece>("piece", "What is cut from one sheet or board.")
        .Text("id", p => p.Id, "Stable id.")
        .Text("part", p => p.Part, "Id of its part.")
        .TextOrNull("sheet", p => p.FromBoard ? null : p.Stock, "Id of the sheet it is cut from; null when it comes from a board.")
        .TextOrNull("board", p => p.FromBoard ? p.Stock : null, "Id of the board it is cut from; null when it comes from a sheet.")
        .Length("length", p => p.Length, "Size along the part's length as sawn, allowances included.")
        .Length("width", p => p.Width, "Size along the part's width as sawn, allowances included.")
        .Length("x", p => p.X, "Corner nearest the sheet's origin: along the sheet's length from its raw edge.")
        .Length("y", p => p.Y, "Corner nearest the sheet's origin: across the sheet from its raw edge.")
        .Flag("rotated", p => p.Rotated, "Whether the piece's length lies along y.")
        .Length("from", p => p.From, "Start of the stretch of the finished part that it covers, at the joint line.")
        .Length("to", p => p.To, "End of the stretch of the finished part that it covers, at the joint line.")
        .Length("allowanceStart", p => p.AllowanceStart, "Sawn beyond the stretch at its start.")
        .Length("allowanceEnd", p => p.AllowanceEnd, "Sawn beyond the stretch at its end.")
        .Count("strip", p => p.Strip, "Strip of a part that is joined edge to edge, from 0 at the reference edge.");

    public static ViewShape<Splice> Splice { get; } = new ViewShape<Splice>("splice", "An end-to-end joint inside a part.")
        .Text("id", s => s.Id, "Stable id.")
        .Text("part", s => s.Part, "Id of the part.")
        .Length("position", s => s.Position, "From the reference end of the finished part to the joint line.")
        .Choice("method", s => s.Method, "How it is made.")
        .Length("consumes", s => s.Consumes, "Length of stock used up beyond the finished part.")
        .ChoiceOrNull("accessFace", s => s.AccessFace, "Hidden face that takes holes or plate; null when neither is touched.")
        .Many("tenons", s => s.Tenons, Tenon, "Loose tenons, by offset.")
        .Many("connectors", s => s.Connectors, Connector, "Draw connectors, by offset.")
        .Choice("holding", s => s.Holding, "How it is held while the glue cures.")
        .One("marks", s => s, Marks, "Marks that tell the pieces that belong together.")
        .Text("keyClass", s => s.KeyClass, "Key that the joint is cut to; joints of different keys do not go together. Empty without mortises.")
        .LengthOrNull("keyMismatch", s => s.KeyMismatch, "How far the mortises are off, at the least, when wrongly put together; null without mortises.")
        .LengthOrNull("sightLine", s => s.SightLine, "Height above the floor of the sight line it keeps; null when it keeps none.")
        .TextOrNull("coveredBy", s => s.CoveredBy, "Id of the part that covers or carries a back's joint; null elsewhere.");

    public static ViewShape<SheetLayout> Sheet { get; } = new ViewShape<SheetLayout>("sheet", "One sheet and the cuts that turn it into pieces.")
        .Text("id", s => s.Id, "Stable id.")
        .Text("stock", s => s.Stock, "Id of the sheet stock in the job.")
        .Text("material", s => s.Material, "Id of the material.")
        .Length("length", s => s.Length, "Size along x.")
        .Length("width", s => s.Width, "Size along y.")
        .Length("trim", s => s.Trim, "Trim taken off every edge.")
        .Length("kerf", s => s.Kerf, "Width of the saw cut.")
        .Decimal("cost", s => s.Cost, "Its price when bought, 0 when on hand.")
        .Flag("bought", s => s.Bought, "Whether it has to be bought.")
        .Flag("sawn", s => s.Sawn, "Whether it is cut or begun already.")
        .OneOrNull("leftOver", s => s.LeftOver, LeftOver, "The panel of a sheet already cut that it is; null for a sheet of the stock.")
        .Many("cuts", s => s.Cuts, Cut, "Cuts in working order.")
        .Many("offcuts", s => s.Offcuts, Offcut, "Leftovers worth keeping.");

    public static ViewShape<BoardLayout> Board { get; } = new ViewShape<BoardLayout>("board", "One board and the crosscuts that turn it into pieces.")
        .Text("id", b => b.Id, "Stable id.")
        .Text("stock", b => b.Stock, "Id of the board stock in the job.")
        .Text("material", b => b.Material, "Id of the material.")
        .Length("length", b => b.Length, "Length of the board.")
        .Length("trim", b => b.Trim, "Trim taken off each end.")
        .Length("kerf", b => b.Kerf, "Width of the saw cut.")
        .Decimal("cost", b => b.Cost, "Its price when bought, 0 when on hand.")
        .Flag("bought", b => b.Bought, "Whether it has to be bought.")
        .Flag("sawn", b => b.Sawn, "Whether it is cut or begun already.")
        .OneOrNull("leftOver", b => b.LeftOver, LeftOver, "The length of a board already cut that it is; null for a board of the stock.")
        .Lengths("cuts", b => b.Cuts, "Low side of each saw cut from the raw end, ascending.")
        .Length("left", b => b.Left, "Length left over at the far end.");

    public static ViewShape<CutPlan> Bounds { get; } = Bound(new ViewShape<CutPlan>("bounds", "How good the cutting is proven to be."), c => c.Bounds)
        .Many("materials", c => c.Materials, MaterialBounds, "The same, material by material.");

    public static ViewShape<LayoutChoice> LayoutChoice { get; } = new ViewShape<LayoutChoice>("layoutChoice", "What one of several sets of layouts asks of the saw and leaves.")
        .Choice("aim", c => c.Aim, "What it is best at.")
        .Count("settings", c => c.Settings, "Fence and stop settings over all sheets still to be cut.")
        .Count("cuts", c => c.Cuts, "Cuts over all these sheets, edge trims not counted.")
        .LengthOrNull("largestLength", c => c.Largest?.Length, "Length of the largest offcut kept; null when none is.")
        .LengthOrNull("largestWidth", c => c.Largest?.Width, "Its width.")
        .Count("kept", c => c.Kept, "How many offcuts are kept.")
        .Decimal("keptArea", c => c.KeptArea, "Their area together, in square metres.")
        .Flag("chosen", c => c.Chosen, "Whether it is the one that this plan follows.");

    private static ViewShape<MaterialBounds> MaterialBounds =>
        Bound(
            new ViewShape<MaterialBounds>("materialBounds", "Bounds of one material; boards count as sheets.").Text("material", m => m.Material, "Id."),
            m => m.Bounds);

    private static ViewShape<Tenon> Tenon => new ViewShape<Tenon>("tenon", "A loose tenon across a joint.")
        .Length("offset", t => t.Offset, "From the reference edge to its centre.")
        .Length("depth", t => t.Depth, "From the reference face to its centre plane.")
        .Length("thickness", t => t.Thickness, "Thickness.")
        .Length("width", t => t.Width, "Width, along the joint.")
        .Length("length", t => t.Length, "Length, across the joint.")
        .Length("mortiseDepth", t => t.MortiseDepth, "Depth of the mortise in each piece.")
        .Length("play", t => t.Play, "How much wider than the tenon the mortise is.");

    private static ViewShape<DrawConnector> Connector => new ViewShape<DrawConnector>("connector", "A draw connector across a joint.")
        .Length("offset", c => c.Offset, "From the reference edge to its centre.");

    private static ViewShape<Splice> Marks => new ViewShape<Splice>("marks", "Marks on both pieces of a splice.")
        .Text("pair", s => s.PairLetter, "Letter that the two pieces share.")
        .Length("offset", s => s.MarkOffset, "From the reference edge to the centre of the match triangle.");

    private static ViewShape<Cut> Cut => new ViewShape<Cut>("cut", "One saw cut, edge to edge of the panel it divides, at the low side of the kerf.")
        .Count("order", c => c.Order, "Its turn on this sheet, from 1.")
        .Choice("kind", c => c.Kind, "Along the sheet's length (rip) or across it (crosscut).")
        .Count("stage", c => c.Stage, "Round of cuts: 0 for edge trim, then 1, 2, 3 ...")
        .Length("x0", c => c.X0, "Start along the sheet.")
        .Length("y0", c => c.Y0, "Start across the sheet.")
        .Length("x1", c => c.X1, "End along the sheet.")
        .Length("y1", c => c.Y1, "End across the sheet.")
        .Length("setting", c => c.Setting, "Fence or stop setting.");

    private static ViewShape<KeptOffcut> Offcut => new ViewShape<KeptOffcut>("offcut", "A rectangle left over and worth keeping.")
        .Length("x", o => o.X, "Nearest corner along the sheet.")
        .Length("y", o => o.Y, "Nearest corner across the sheet.")
        .Length("length", o => o.Length, "Size along the sheet.")
        .Length("width", o => o.Width, "Size across the sheet.");

    private static ViewShape<T> Bound<T>(ViewShape<T> shape, Func<T, CutBounds> get) => shape
        .Decimal("cost", r => get(r).Cost, "Cost of stock bought plus labour of splices.")
        .Decimal("lowerBound", r => get(r).LowerBound, "No plan under the same rules can cost less.")
        .Count("sheets", r => get(r).Sheets, "Sheets used, on hand and bought.")
        .Count("sheetsLowerBound", r => get(r).SheetsLowerBound, "No plan under the same rules can use fewer.")
        .NumberOrNull("gap", r => get(r).Gap, "Relative distance of cost and lower bound, 0 to 1.")
        .Flag("proven", r => get(r).Proven, "Whether cost and lower bound meet.");
}
