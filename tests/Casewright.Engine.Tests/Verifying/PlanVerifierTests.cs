using Casewright.Engine.Verifying;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;
using static Casewright.Engine.Tests.Verifying.GoodPlan;

namespace Casewright.Engine.Tests.Verifying;

/// <summary>
/// The plan drawn by hand passes; each of its corruptions is caught by the rule that is meant to, in the place where it was made.
/// </summary>
public sealed class PlanVerifierTests
{
    private static readonly Length s_least = Length.FromNanometres(1);

    /// <summary>What is done to the plan, the place that must be named, and words of the rule that must speak.</summary>
    public static TheoryData<string, string, string> Corruptions
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (var (name, corruption) in s_corruptions)
                data.Add(name, corruption.Place, corruption.Words);
            return data;
        }
    }

    private static readonly Dictionary<string, Corruption> s_corruptions = new(StringComparer.Ordinal)
    {
        // Pieces and parts.
        ["a piece dropped"] = OnPieces("parts[C1-S3]", "No piece is cut", pieces => pieces.Where(piece => piece.Id != "C1-S3/a")),
        ["the upper piece of a side dropped"] = OnPieces("pieces[C1-L/a].to", "do not end where the part ends", pieces => pieces.Where(piece => piece.Id != "C1-L/b")),
        ["a piece twice, under another id"] = OnPieces("pieces[again].from", "do not meet here", pieces => pieces.Append(pieces.First(piece => piece.Id == "C1-L/b") with { Id = "again" })),
        ["a piece twice, under its own id"] = OnPieces("pieces[C1-B/a]", "share one id", pieces => pieces.Append(pieces.First(piece => piece.Id == "C1-B/a"))),
        ["a piece 1 nm to the right"] = OnPiece("C1-F1/a", "pieces[C1-F1/a]", "do not leave a panel", piece => piece with { X = piece.X + s_least }),
        ["a piece 1 nm lower"] = OnPiece("C1-L/a", "pieces[C1-L/a]", "outside the usable part", piece => piece with { Y = piece.Y - s_least }),
        ["a piece 1 nm short"] = OnPiece("C1-T/a", "pieces[C1-T/a].length", "is not the stretch and its allowances", piece => piece with { Length = piece.Length - s_least }),
        ["a piece 1 nm narrow"] = OnPiece("C1-T/a", "pieces[C1-T/a].width", "not as wide as its part", piece => piece with { Width = piece.Width - s_least }),
        ["a piece turned across the grain"] = OnPiece("C1-B/a", "pieces[C1-B/a].rotated", "grain would run the wrong way", piece => piece with { Rotated = true }),
        ["a turned piece where no grain binds"] = OnPiece("C1-K/b", "pieces[C1-K/b]", "do not leave a panel", piece => piece with { Rotated = true }),
        ["a stretch moved by 1 nm"] = OnPiece("C1-L/b", "pieces[C1-L/b].from", "do not meet here", piece => piece with { From = piece.From + s_least, Length = piece.Length - s_least }),
        ["the squaring on one side only"] = OnPieces("pieces[C1-R/b].allowanceStart", "not in the middle", pieces => pieces
            .Select(piece => piece.Id switch
            {
                "C1-R/a" => piece with { AllowanceEnd = Mm(6), Length = piece.Length + Mm(3) },
                "C1-R/b" => piece with { AllowanceStart = Mm(0), Length = piece.Length - Mm(3) },
                _ => piece,
            })),
        ["the head not left long"] = OnPiece("C1-P/b", "pieces[C1-P/b].allowanceEnd", "outer end is not left", piece => piece with { AllowanceEnd = Mm(0), Length = piece.Length - Mm(10) }),
        ["the foot left long"] = OnPiece("C1-P/a", "pieces[C1-P/a].allowanceStart", "sawn true", piece => piece with { AllowanceStart = Mm(1), Length = piece.Length + Mm(1) }),
        ["two pieces swapped on their sheets"] = OnPieces("pieces[C1-B/a]", "do not leave a panel", pieces => Swap([.. pieces], "C1-B/a", "C1-S3/a")),
        ["a piece sent to another material"] = OnPiece("C1-B/a", "pieces[C1-B/a].stock", "another material", piece => piece with { Stock = "S3" }),
        ["a piece of a sheet that is not there"] = OnPiece("C1-B/a", "pieces[C1-B/a].stock", "no sheet layout", piece => piece with { Stock = "S9" }),
        ["a piece of a part that is not there"] = OnPiece("C1-B/a", "pieces[C1-B/a].part", "no part", piece => piece with { Part = "C9-B" }),
        ["a strip out of nothing"] = OnPiece("C1-B/a", "parts[C1-B]", "Strips are missing", piece => piece with { Strip = 1 }),
        ["a part in two strips"] = OnPieces("parts[C1-B]", "its run does not allow", pieces => pieces.Append(pieces.First(piece => piece.Id == "C1-B/a") with { Id = "more", Strip = 1 })),

        // Sheets and stock.
        ["a sheet of unknown stock"] = OnSheet("S1", "sheets[S1].stock", "no such sheet", sheet => sheet with { Stock = "ply18-9" }),
        ["a sheet a little longer"] = OnSheet("S1", "sheets[S1]", "another size", sheet => sheet with { Length = sheet.Length + s_least }),
        ["a cheaper sheet"] = OnSheet("S1", "sheets[S1].cost", "not the price", sheet => sheet with { Cost = 59 }),
        ["a sheet on hand that costs"] = OnSheet("S4", "sheets[S4].cost", "on hand costs nothing", sheet => sheet with { Cost = 25 }),
        ["a bought sheet called on hand"] = OnSheet("S1", "stock[ply18-8]", "More are taken from the rack", sheet => sheet with { Bought = false, Cost = 0 }),
        ["a sheet bought while one lies in the rack"] = OnSheet("S4", "stock[ply6-8]", "lie unused", sheet => sheet with { Bought = true, Cost = 25 }),
        ["a thinner saw"] = OnSheet("S1", "sheets[S1].kerf", "not the saw's", sheet => sheet with { Kerf = Mm(2.8m) }),
        ["no edge trim"] = OnSheet("S1", "sheets[S1].trim", "not the shop's", sheet => sheet with { Trim = Mm(0) }),
        ["more boards than can be had"] = OnJob("stock[nosing-24]", "More are bought", job => job with
        {
            Stock = job.Stock with { Boards = [job.Stock.Boards[0] with { Limit = 1 }] },
        }),
        ["an empty sheet"] = OnPlan("sheets[S5]", "Nothing is cut", plan => plan with { Sheets = plan.Sheets.Add(plan.Sheets[0] with { Id = "S5" }) }),
        ["two sheets of one id"] = OnPlan("sheets[S1]", "share one id", plan => plan with { Sheets = plan.Sheets.Add(plan.Sheets[0]) }),

        // Cuts. S1: cuts 1 to 4 are trims, 5 to 8 rips, 9 crosscuts the first strip at 1953.
        ["a cut shifted by 1 nm"] = OnCut("S1", 9, "pieces[C1-L/a]", "do not leave a panel", cut => cut with { X0 = cut.X0 + s_least, X1 = cut.X1 + s_least }),
        ["a cut that stops short"] = OnCut("S1", 9, "sheets[S1].cuts[9]", "edge to edge", cut => cut with { Y1 = cut.Y1 - s_least }),
        ["a cut that runs on"] = OnCut("S1", 9, "sheets[S1].cuts[9]", "edge to edge", cut => cut with { Y1 = cut.Y1 + Mm(100) }),
        ["a slanting cut"] = OnCut("S1", 5, "sheets[S1].cuts[5]", "edge to edge", cut => cut with { Y1 = cut.Y1 + s_least }),
        ["a cut left out"] = OnCuts("S1", "pieces[C1-L/a]", "do not leave a panel", cuts => Renumber(cuts.Where(cut => cut.Order != 9))),
        ["a cut made twice"] = OnCuts("S1", "sheets[S1].cuts[10]", "edge to edge", cuts => Renumber(cuts.Take(9).Append(cuts[8]).Concat(cuts.Skip(9)))),
        ["a crosscut before its rip"] = OnCuts("S1", "sheets[S1].cuts[5]", "edge to edge", cuts => Renumber(cuts.Take(4).Append(cuts[8]).Concat(cuts.Skip(4).Where(cut => cut.Order != 9)))),
        ["two numbers exchanged"] = OnCut("S1", 9, "sheets[S1].cuts[9].order", "not numbered", cut => cut with { Order = 10 }),
        ["a false setting"] = OnCut("S1", 5, "sheets[S1].cuts[5].setting", "size of neither side", cut => cut with { Setting = cut.Setting + s_least }),
        ["a rip called a later round"] = OnCut("S1", 5, "sheets[S1].cuts[5].stage", "does not follow", cut => cut with { Stage = 3 }),
        ["a rip called a round of crosscuts"] = OnCut("S1", 5, "sheets[S1].cuts[5]", "do not alternate", cut => cut with { Stage = 2 }),
        ["a crosscut called edge trim"] = OnCut("S1", 9, "sheets[S1].cuts[9].stage", "does not run along the trim", cut => cut with { Stage = 0 }),
        ["crosscuts wanted first"] = OnSaw("sheets[S1].cuts[5]", "do not alternate", saw => saw with { FirstCut = FirstCut.Crosscut }),
        ["one round only"] = OnSaw("sheets[S1].cuts[9].stage", "turned more often", saw => saw with { Stages = 1 }),
        ["a short saw bench"] = OnSaw("sheets[S1].cuts[5]", "longer than the saw takes", saw => saw with { LongestRip = Mm(2400) }),
        ["no narrow rips"] = OnSaw("sheets[S1].cuts[5]", "narrower than is safe", saw => saw with { NarrowestStrip = Mm(301) }),
        ["an offcut out of a piece"] = OnOffcuts("S3", "sheets[S3].offcuts[3]", "not one of the panels", offcuts => offcuts.Append(new(Mm(5), Mm(5), Mm(400), Mm(200)))),
        ["an offcut with the edge trim in it"] = OnOffcuts("S3", "sheets[S3].offcuts[1]", "not one of the panels", offcuts => offcuts.Select((offcut, i) => i == 0 ? offcut with { Width = offcut.Width + s_least } : offcut)),
        ["an offcut twice"] = OnOffcuts("S3", "sheets[S3].offcuts[3]", "not one of the panels", offcuts => offcuts.Append(offcuts[0])),
        ["an offcut forgotten"] = OnOffcuts("S2", "sheets[S2].offcuts", "not listed", offcuts => offcuts.Skip(1)),
        ["offcuts too small for this shop"] = OnSaw("sheets[S3].offcuts[2]", "too small to keep", saw => saw with { KeepLength = Mm(500) }),

        // Boards. B1: cuts at 7, 433, 859, 1283, 1707, 2131.
        ["a board piece 1 nm along"] = OnPiece("C1-N2/a", "pieces[C1-N2/a]", "do not leave this length", piece => piece with { X = piece.X + s_least }),
        ["a board piece off the line"] = OnPiece("C1-N2/a", "pieces[C1-N2/a].y", "no place across", piece => piece with { Y = Mm(1) }),
        ["a board cut moved"] = OnBoard("B1", "pieces[C1-N1/a]", "do not leave this length", board => board with { Cuts = board.Cuts.Select((cut, i) => i == 1 ? cut + s_least : cut).ToValueList() }),
        ["a board cut twice"] = OnBoard("B1", "boards[B1].cuts[7]", "do not follow each other", board => board with { Cuts = board.Cuts.Add(board.Cuts[^1]) }),
        ["a board cut in the air"] = OnBoard("B1", "boards[B1].cuts[7]", "misses the board", board => board with { Cuts = board.Cuts.Add(Mm(2400)) }),
        ["more left of a board"] = OnBoard("B2", "boards[B2].left", "stated wrongly", board => board with { Left = board.Left + s_least }),
        ["a longer board"] = OnBoard("B2", "boards[B2].length", "another length", board => board with { Length = board.Length + Mm(100) }),
        ["board pieces exchanged"] = OnPieces("pieces[C1-N2/a]", "do not leave this length", pieces => Swap([.. pieces], "C1-N2/a", "C1-N3/a")),

        // Splices.
        ["a splice dropped"] = OnSplices("parts[C1-P].splices", "no joint is listed", splices => splices.Where(splice => splice.Part != "C1-P")),
        ["a splice out of nothing"] = OnSplices("splices[more].position", "No two pieces meet", splices => splices.Append(splices.First() with { Id = "more", Position = Mm(1000) })),
        ["a splice 1 nm off its pieces"] = OnSplice("C1-L/1", "splices[C1-L/1].position", "No two pieces meet", splice => splice with { Position = splice.Position + s_least }),
        ["a joint that consumes less"] = OnSplice("C1-L/1", "splices[C1-L/1].consumes", "does not consume what its method does", splice => splice with { Consumes = Mm(5) }),
        ["a joint in the fixed shelf's dado"] = Moved(1990, "splices[C1-P/1].position", "too near a dado"),
        ["a joint 1 nm too near the dado"] = Moved(1950.000001m, "splices[C1-P/1].position", "too near a dado"),
        ["a joint beside a pin hole"] = Moved(1820, "splices[C1-P/1].position", "too near a pin hole"),
        ["a joint in a hardware zone"] = OnMachining(new HardwareZone("bracket", Face.Opposite, Mm(1880), Mm(1900)), "splices[C1-P/1].position", "too near a hardware"),
        ["a joint through a cut-out"] = OnMachining(new CutOut("outlet", Mm(1900), Mm(100), Mm(80), Mm(120)), "splices[C1-P/1].position", "too near a cut-out"),
        ["a joint at a notch"] = OnMachining(new Notch("skirting", Mm(1960), Mm(280), Mm(10), Mm(20)), "splices[C1-P/1].position", "too near a notch"),
        ["a tenon in a groove"] = OnMachining(new Groove("back", Face.Reference, Mm(240), Mm(6), Mm(7), Mm(0), Mm(2700)), "splices[C1-P/1].tenons[3]", "other work on the part"),
        ["a tenon in a rabbet"] = OnMachining(new Rabbet("back", Face.Opposite, PartEdge.Opposite, Mm(62), Mm(9)), "splices[C1-P/1].tenons[3]", "other work on the part"),
        ["a stub"] = Moved(2450, "pieces[C1-P/b]", "shorter than the shop splices"),
        ["a stub by its share"] = OnRules("pieces[C1-L/b]", "too small a share", rules => rules with { ShortestShare = 3 }),
        ["no joint allowed in the shop"] = OnRules("parts[C1-L].splices", "more joints than the shop makes", rules => rules with { MostJoints = 0 }),
        ["no joint allowed in the run"] = OnWish("parts[C1-L].splices", "its run does not allow", new() { Allowed = false }),
        ["another height wished"] = OnWish("parts[C1-L].splices", "not joined at the height", new() { Height = Mm(1900) }),
        ["another method wished"] = OnWish("splices[C1-L/1].method", "wishes another method", new() { Method = SpliceMethod.LooseTenons }),
        ["a method the shop does not make"] = OnRules("splices[C1-L/1].method", "not set up", rules => rules with { Methods = rules.Methods.Where(entry => entry.Method == SpliceMethod.LooseTenons).ToValueList() }),
        ["a method too thick for the panel"] = OnMaterial("splices[C1-P/1].method", "not made in this thickness", "ply18", Mm(12)),
        ["a covered butt in a side"] = OnSplice("C1-L/1", "splices[C1-L/1].method", "Only backs and trim", splice => splice with { Method = SpliceMethod.CoveredButt }),
        ["an access face that shows"] = OnSplice("C1-L/1", "splices[C1-L/1].accessFace", "on a face that shows", splice => splice with { AccessFace = Face.Reference }),
        ["no access face"] = OnSplice("C1-L/1", "splices[C1-L/1].accessFace", "needs a face", splice => splice with { AccessFace = null }),
        ["holes where the method has none"] = OnSplice("C1-P/1", "splices[C1-P/1].accessFace", "touches neither face", splice => splice with { AccessFace = Face.Opposite }),
        ["connectors in a partition"] = OnSplice("C1-P/1", "splices[C1-P/1].accessFace", "on a face that shows", splice => splice with { Method = SpliceMethod.TenonsAndConnectors, AccessFace = Face.Opposite }),
        ["a holding that does not hold"] = OnSplice("C1-P/1", "splices[C1-P/1].holding", "not held so", splice => splice with { Holding = HoldingMethod.DrawConnectors }),
        ["connectors where the method has none"] = OnSplice("C1-P/1", "splices[C1-P/1].connectors", "do not agree", splice => splice with { Connectors = [new(Mm(80))] }),
        ["no connectors where the method wants them"] = OnSplice("C1-L/1", "splices[C1-L/1].connectors", "do not agree", splice => splice with { Connectors = [] }),
        ["a tenon at the edge"] = OnTenon("C1-L/1", 0, "splices[C1-L/1].tenons[1].offset", "too near an edge", tenon => tenon with { Offset = Mm(15) }),
        ["a tenon beyond the far edge"] = OnTenon("C1-L/1", 2, "splices[C1-L/1].tenons[3].offset", "too near an edge", tenon => tenon with { Offset = Mm(305) }),
        ["tenons that overlap"] = OnTenon("C1-P/1", 1, "splices[C1-P/1].tenons[2].offset", "too close", tenon => tenon with { Offset = Mm(60) }),
        ["one tenon only"] = OnSplice("C1-P/1", "splices[C1-P/1].tenons", "too few tenons", splice => splice with { Tenons = [splice.Tenons[0]] }),
        ["a tenon near a face"] = OnTenon("C1-P/1", 0, "splices[C1-P/1].tenons[1].depth", "too little wood", tenon => tenon with { Depth = Mm(5) }),
        ["a thick tenon"] = OnTenon("C1-P/1", 0, "splices[C1-P/1].tenons[1].depth", "too little wood", tenon => tenon with { Thickness = Mm(10) }),
        ["a mortise no deeper than its tenon"] = OnTenon("C1-P/1", 0, "splices[C1-P/1].tenons[1].mortiseDepth", "no room for glue", tenon => tenon with { MortiseDepth = Mm(22) }),
        ["a mortise far too deep"] = OnTenon("C1-P/1", 0, "splices[C1-P/1].tenons[1].mortiseDepth", "deeper than it need be", tenon => tenon with { MortiseDepth = Mm(32) }),
        ["a loose first tenon"] = OnTenon("C1-P/1", 0, "splices[C1-P/1].tenons[1].play", "must be tight", tenon => tenon with { Play = Mm(1) }),
        ["a sloppy mortise"] = OnTenon("C1-P/1", 1, "splices[C1-P/1].tenons[2].play", "too wide", tenon => tenon with { Play = Mm(4) }),
        ["a wide tenon"] = OnTenon("C1-P/1", 1, "splices[C1-P/1].tenons[2].width", "not the shop's", tenon => tenon with { Width = Mm(30) }),
        ["a long tenon"] = OnTenon("C1-P/1", 1, "splices[C1-P/1].tenons[2].length", "twice the shop's depth", tenon => tenon with { Length = Mm(45) }),
        ["a connector at the edge"] = OnSplice("C1-L/1", "splices[C1-L/1].connectors[2].offset", "too near an edge", splice => splice with { Connectors = [new(Mm(88)), new(Mm(280))] }),
        ["a connector in a tenon"] = OnSplice("C1-L/1", "splices[C1-L/1].connectors[2].offset", "runs into a tenon", splice => splice with { Connectors = [new(Mm(88)), new(Mm(135))] }),
        ["a mark over a hole"] = OnSplice("C1-L/1", "splices[C1-L/1].markOffset", "over a connector's hole", splice => splice with { MarkOffset = Mm(192) }),
        ["a mark off the part"] = OnSplice("C1-L/1", "splices[C1-L/1].markOffset", "off the part", splice => splice with { MarkOffset = Mm(301) }),
        ["tenons the same from both edges"] = OnSplice("C1-P/1", "splices[C1-P/1].tenons", "turned over", splice => splice with { Tenons = At(splice, 45, 150, 255) }),
        ["tenons like those of the other hand"] = OnSplice("C1-R/1", "splices[C1-R/1].tenons", "another key", splice => splice with { Tenons = At(splice, 45, 130, 252) }),
        ["tenons that mirror those of the other hand"] = OnSplice("C1-R/1", "splices[C1-R/1].tenons", "another key", splice => splice with { Tenons = At(splice, 48, 170, 255) }),
        ["a key too many"] = OnSplice("C1-R/1", "splices[C1-R/1].keyClass", "not interchangeable", splice => splice with { KeyClass = "KA" }),
        ["a key boasted of"] = OnSplice("C1-R/1", "splices[C1-R/1].keyMismatch", "further off", splice => splice with { KeyMismatch = Mm(100) }),
        ["no key"] = OnSplice("C1-R/1", "splices[C1-R/1].keyClass", "have a key", splice => splice with { KeyClass = "" }),
        ["letters swapped so that two agree"] = OnSplice("C1-R/1", "splices[C1-R/1].pairLetter", "not interchangeable", splice => splice with { PairLetter = "A" }),
        ["no letter"] = OnSplice("C1-R/1", "splices[C1-R/1].pairLetter", "no pair letter", splice => splice with { PairLetter = "" }),
        ["a false sight line"] = OnSplice("C1-R/1", "splices[C1-R/1].sightLine", "does not lie at its sight line", splice => splice with { SightLine = Mm(1944) }),
        ["no sight line"] = OnSplice("C1-R/1", "splices[C1-R/1].sightLine", "keeps no sight line", splice => splice with { SightLine = null }),
        ["a joint off the run's line"] = Moved(1940, "splices[C1-P/1].position", "leaves the sight line"),
        ["a back's joint carried by nothing"] = OnSplice("C1-K/1", "splices[C1-K/1].coveredBy", "Nothing carries", splice => splice with { CoveredBy = null }),
        ["a back's joint carried by a loose shelf"] = OnSplice("C1-K/1", "splices[C1-K/1].coveredBy", "does not carry or cover", splice => splice with { CoveredBy = "C1-S1" }),
        ["a back's joint without bearing"] = OnRules("splices[C1-K/1].coveredBy", "does not carry or cover", rules => rules with { BackBearing = Mm(9.000001m) }),
        ["a back's joint open behind one bay"] = OnParts("splices[C1-K/1].coveredBy", "neither carried nor covered", parts => parts.Select(part => part.Id == "C1-F2" ? part with { Place = part.Place with { Origin = part.Place.Origin with { Y = Mm(1950) } } } : part)),
        ["a cover where none is needed"] = OnSplice("C1-L/1", "splices[C1-L/1].coveredBy", "needs no cover", splice => splice with { CoveredBy = "C1-F1" }),

        // Bounds.
        ["a lower cost"] = OnBounds("bounds.cost", "not the sum", bounds => bounds with { Cost = bounds.Cost - 1 }),
        ["a bound above the cost"] = OnBounds("bounds.lowerBound", "above the cost", bounds => bounds with { LowerBound = bounds.Cost + 1 }),
        ["proof that is none"] = OnBounds("bounds.proven", "exactly when cost and lower bound meet", bounds => bounds with { Proven = true }),
        ["a sheet fewer"] = OnBounds("bounds.sheets", "not that of the plan", bounds => bounds with { Sheets = 3, SheetsLowerBound = 3 }),
        ["a better bound of sheets"] = OnBounds("bounds.sheetsLowerBound", "does not agree", bounds => bounds with { SheetsLowerBound = 5 }),
        ["labour forgotten"] = OnPlan("materials[ply18].cost", "stock bought and the joints made", plan => plan with
        {
            Materials = [new("ply18", plan.Materials[0].Bounds with { Cost = 120, LowerBound = 120 }), .. plan.Materials.Skip(1)],
        }),
        ["a material not counted"] = OnPlan("materials[ply6]", "not listed", plan => plan with { Materials = plan.Materials.Where(entry => entry.Material != "ply6").ToValueList() }),
        ["a negative price"] = OnSheet("S1", "sheets[S1].cost", "not possible", sheet => sheet with { Cost = -60 }),
        ["a length beyond all measure"] = OnPiece("C1-B/a", "pieces[C1-B/a].x", "not possible", piece => piece with { X = Length.FromNanometres(long.MaxValue) }),
    };

    [Fact]
    public void The_plan_drawn_by_hand_passes() => Assert.Empty(PlanVerifier.Verify(GoodJob, GoodCasework, GoodCut));

    [Fact]
    public void The_plan_passes_under_every_rule_that_it_keeps()
    {
        Passes(saw => saw with { FirstCut = FirstCut.Either }, rules => rules);
        Passes(saw => saw with { Stages = null }, rules => rules);
        Passes(saw => saw with { LongestRip = Mm(2430), NarrowestStrip = Mm(295) }, rules => rules);
        Passes(saw => saw, rules => rules with { ClearOfDado = Mm(35), ClearOfPinHole = Mm(145) });
        Passes(saw => saw, rules => rules with { ShortestPiece = Mm(710), ShortestShare = 4 });
        Passes(saw => saw, rules => rules with { MostJoints = 1, BackBearing = Mm(9) });
    }

    /// <summary>In two rounds, strips and crosscuts; the shelves' last rip trims single pieces, which is one round more and allowed.</summary>
    [Fact]
    public void One_round_more_may_trim_single_pieces() => Passes(saw => saw with { Stages = 2 }, rules => rules);

    /// <summary>Large birch sheets are often stated across the grain: 1220 × 2440 with the grain along the 2440.</summary>
    [Fact]
    public void A_sheet_stated_across_the_grain_lies_with_its_grain_along_x()
    {
        var sheets = GoodJob.Stock.Sheets.Select(sheet => sheet with { Length = sheet.Width, Width = sheet.Length, GrainAcross = true });
        var job = GoodJob with { Stock = GoodJob.Stock with { Sheets = sheets.ToValueList() } };
        Assert.Empty(PlanVerifier.Verify(job, GoodCasework, GoodCut));
    }

    /// <summary>The edges of an offcut are clean: the same layout with its four trims is refused, since they would not be cut.</summary>
    [Fact]
    public void An_offcut_takes_no_trim()
    {
        var sheets = GoodJob.Stock.Sheets.Select(sheet => sheet with { IsOffcut = true });
        var job = GoodJob with { Stock = GoodJob.Stock with { Sheets = sheets.ToValueList() } };
        Assert.Equal(4, PlanVerifier.Verify(job, GoodCasework, GoodCut).Count(problem => problem.Path.EndsWith(".trim", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Corruptions))]
    public void A_corrupted_plan_is_caught(string corruption, string place, string words)
    {
        var (job, casework, plan) = s_corruptions[corruption].Apply();
        var problems = PlanVerifier.Verify(job, casework, plan);
        Assert.True(
            problems.Any(problem => problem.Path == place && problem.Message.Contains(words, StringComparison.Ordinal)),
            $"{corruption}: nobody said '{words}' of {place}. Said:\n{string.Join('\n', problems)}");
    }

    [Fact]
    public void Every_problem_names_its_place_and_says_what_is_accepted()
    {
        foreach (var (name, corruption) in s_corruptions)
        {
            var (job, casework, plan) = corruption.Apply();
            Assert.All(PlanVerifier.Verify(job, casework, plan), problem =>
            {
                Assert.NotEqual("", problem.Path);
                Assert.EndsWith(".", problem.Message, StringComparison.Ordinal);
                Assert.True(problem.Accepted.Length > 0, $"{name}: {problem}");
            });
        }
    }

    private static void Passes(Func<SawRules, SawRules> saw, Func<SpliceRules, SpliceRules> rules)
    {
        var shop = GoodJob.Shop with { Saw = saw(GoodJob.Shop.Saw), Splicing = rules(GoodJob.Shop.Splicing) };
        Assert.Empty(PlanVerifier.Verify(GoodJob with { Shop = shop }, GoodCasework, GoodCut));
    }

    private static Corruption OnPlan(string place, string words, Func<CutPlan, CutPlan> change) =>
        new(place, words, () => (GoodJob, GoodCasework, change(GoodCut)));

    private static Corruption OnJob(string place, string words, Func<Job, Job> change) =>
        new(place, words, () => (change(GoodJob), GoodCasework, GoodCut));

    private static Corruption OnParts(string place, string words, Func<IEnumerable<Part>, IEnumerable<Part>> change) =>
        new(place, words, () => (GoodJob, GoodCasework with { Parts = change(GoodCasework.Parts).ToValueList() }, GoodCut));

    private static Corruption OnSaw(string place, string words, Func<SawRules, SawRules> change) =>
        OnJob(place, words, job => job with { Shop = job.Shop with { Saw = change(job.Shop.Saw) } });

    private static Corruption OnRules(string place, string words, Func<SpliceRules, SpliceRules> change) =>
        OnJob(place, words, job => job with { Shop = job.Shop with { Splicing = change(job.Shop.Splicing) } });

    private static Corruption OnWish(string place, string words, Casewright.Model.Design.SpliceWish wish) =>
        OnJob(place, words, job => job with { Runs = [job.Runs[0] with { Splices = wish }] });

    private static Corruption OnPieces(string place, string words, Func<IEnumerable<Piece>, IEnumerable<Piece>> change) =>
        OnPlan(place, words, plan => plan with { Pieces = change(plan.Pieces).ToValueList() });

    private static Corruption OnPiece(string id, string place, string words, Func<Piece, Piece> change) =>
        OnPieces(place, words, pieces => pieces.Select(piece => piece.Id == id ? change(piece) : piece));

    private static Corruption OnSheet(string id, string place, string words, Func<SheetLayout, SheetLayout> change) =>
        OnPlan(place, words, plan => plan with { Sheets = plan.Sheets.Select(sheet => sheet.Id == id ? change(sheet) : sheet).ToValueList() });

    private static Corruption OnCuts(string id, string place, string words, Func<ValueList<Cut>, IEnumerable<Cut>> change) =>
        OnSheet(id, place, words, sheet => sheet with { Cuts = change(sheet.Cuts).ToValueList() });

    private static Corruption OnCut(string id, int order, string place, string words, Func<Cut, Cut> change) =>
        OnCuts(id, place, words, cuts => cuts.Select(cut => cut.Order == order ? change(cut) : cut));

    private static Corruption OnOffcuts(string id, string place, string words, Func<ValueList<KeptOffcut>, IEnumerable<KeptOffcut>> change) =>
        OnSheet(id, place, words, sheet => sheet with { Offcuts = change(sheet.Offcuts).ToValueList() });

    private static Corruption OnBoard(string id, string place, string words, Func<BoardLayout, BoardLayout> change) =>
        OnPlan(place, words, plan => plan with { Boards = plan.Boards.Select(board => board.Id == id ? change(board) : board).ToValueList() });

    private static Corruption OnSplices(string place, string words, Func<IEnumerable<Splice>, IEnumerable<Splice>> change) =>
        OnPlan(place, words, plan => plan with { Splices = change(plan.Splices).ToValueList() });

    private static Corruption OnSplice(string id, string place, string words, Func<Splice, Splice> change) =>
        OnSplices(place, words, splices => splices.Select(splice => splice.Id == id ? change(splice) : splice));

    private static Corruption OnTenon(string id, int index, string place, string words, Func<Tenon, Tenon> change) =>
        OnSplice(id, place, words, splice => splice with { Tenons = splice.Tenons.Select((tenon, i) => i == index ? change(tenon) : tenon).ToValueList() });

    private static Corruption OnBounds(string place, string words, Func<CutBounds, CutBounds> change) =>
        OnPlan(place, words, plan => plan with { Bounds = change(plan.Bounds) });

    /// <summary>Moves the partition's joint, pieces and all, to another height.</summary>
    private static Corruption Moved(decimal height, string place, string words) => OnPlan(place, words, plan => plan with
    {
        Splices = plan.Splices.Select(splice => splice.Part == "C1-P" ? splice with { Position = Mm(height), SightLine = Mm(height) } : splice).ToValueList(),
        Pieces = plan.Pieces.Select(piece => piece.Id switch
        {
            "C1-P/a" => piece with { To = Mm(height), Length = Mm(height + 3) },
            "C1-P/b" => piece with { From = Mm(height), Length = Mm(2700 - height + 13) },
            _ => piece,
        }).ToValueList(),
    });

    private static Corruption OnMachining(Machining more, string place, string words) =>
        OnParts(place, words, parts => parts.Select(part => part.Id == "C1-P" ? part with { Machining = part.Machining.Add(more) } : part));

    private static Corruption OnMaterial(string place, string words, string id, Length thickness) => new(place, words, () => (
        GoodJob with { Stock = GoodJob.Stock with { Materials = GoodJob.Stock.Materials.Select(material => material.Id == id ? material with { Nominal = thickness, Measured = null } : material).ToValueList() } },
        GoodCasework with { Parts = GoodCasework.Parts.Select(part => part.Material == id ? part with { Thickness = thickness } : part).ToValueList() },
        GoodCut));

    private static ValueList<Tenon> At(Splice splice, params decimal[] offsets) =>
        splice.Tenons.Select((tenon, i) => tenon with { Offset = Mm(offsets[i]) }).ToValueList();

    private static IEnumerable<Cut> Renumber(IEnumerable<Cut> cuts) => cuts.Select((cut, i) => cut with { Order = i + 1 });

    private static IEnumerable<Piece> Swap(List<Piece> pieces, string one, string other)
    {
        var (i, j) = (pieces.FindIndex(piece => piece.Id == one), pieces.FindIndex(piece => piece.Id == other));
        (pieces[i], pieces[j]) = (
            pieces[i] with { Stock = pieces[j].Stock, X = pieces[j].X, Y = pieces[j].Y },
            pieces[j] with { Stock = pieces[i].Stock, X = pieces[i].X, Y = pieces[i].Y });
        return pieces;
    }

    private sealed record Corruption(string Place, string Words, Func<(Job Job, Casework Casework, CutPlan Plan)> Apply);
}
