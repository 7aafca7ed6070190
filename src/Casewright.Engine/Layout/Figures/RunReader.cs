using System.Globalization;
using Casewright.Engine.Layout.Corners;
using Casewright.Engine.Layout.Counters;
using Casewright.Engine.Layout.Runs;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Figures;

/// <summary>Resolves a run's materials and checks that its dimensions are possible, before any part is derived.</summary>
internal sealed class RunReader(Job job, int index, ProblemList problems)
{
    private readonly Run _run = job.Runs[index];
    private readonly string _path = string.Create(CultureInfo.InvariantCulture, $"runs[{index}]");

    /// <summary>The figures of the run; null when there are problems, which the list then holds.</summary>
    public RunFigures? Read()
    {
        var before = problems.All.Count;
        var wall = FindWall();
        var panel = Sheet(_run.Material, "material");
        if (wall is null || panel is null)
            return null;
        var figures = Resolve(wall, panel);
        if (problems.All.Count > before)
            return null;
        CheckAlongWall(figures);
        CheckBlind(figures);
        CheckHead(figures);
        CheckBase(figures);
        LippingReader.Check(figures, problems);
        BaseMouldReader.Check(figures, problems);
        Bridges.Check(figures, problems);
        if (problems.All.Count > before)
            return null;
        new JoineryReader(figures, problems).Check();
        return problems.All.Count == before ? figures : null;
    }

    private RunFigures Resolve(Wall wall, Material panel) => new()
    {
        Job = job,
        Run = _run,
        Path = _path,
        DepthPath = _path + ".depth",
        Letters = PartIds.RunLetters(index),
        Wall = wall,
        Panel = panel,
        Back = ResolveBack(),
        Base = _run.Base.Material is { } material ? Sheet(material, "base.material") ?? panel : panel,
        Nailer = _run.Nailers is { } nailers ? Sheet(nailers.Material ?? _run.Material, "nailers.material") : null,
        ShelfNosing = Nosing(_run.Nosing?.Shelves, "nosing.shelves", panel.Thickness),
        UprightNosing = Nosing(_run.Nosing?.Uprights, "nosing.uprights", panel.Thickness),
        Frame = ResolveFrame(panel),
        Band = _run.TrimBand is { } band ? Board(band.Material, "trimBand.material") : null,
        Crown = _run.Head.Crown is { } crown ? Board(crown, "head.crown") : null,
        SlopeFiller = _run.Head.SlopeFiller is { } filler ? Sheet(filler, "head.slopeFiller") : null,
        BaseMould = _run.Base.Mould is { } mould ? Board(mould, "base.mould") : null,
        LightRail = _run.Base.LightRail is { } rail ? Board(rail, "base.lightRail") : null,
        Left = Lipped(Surveyed(ResolveEnd(_run.Left, "left", panel), wall, isLeft: true), _run.Left, "left"),
        Right = Lipped(Surveyed(ResolveEnd(_run.Right, "right", panel), wall, isLeft: false), _run.Right, "right"),
        FloorFall = EndSurvey.FloorFall(_run, wall),
        X = _run.Offset,
        Width = _run.Width ?? (wall.Width - _run.Offset),
        Blind = [.. new CornerReader(job, index, problems).Blind(wall.Width)],
        Top = _run.Head.Height ?? (wall.Height - (_run.Head.Gap ?? Length.Zero)),
    };

    private Wall? FindWall()
    {
        var wall = job.Walls.FirstOrDefault(w => w.Id == _run.Wall);
        if (wall is null)
            problems.Add($"{_path}.wall", "There is no such wall.", $"'{_run.Wall}'", "one of " + string.Join(", ", job.Walls.Select(w => w.Id)));
        return wall;
    }

    private Material? Find(string id, string field, bool board)
    {
        var material = job.Stock.Materials.FirstOrDefault(m => m.Id == id);
        if (material is not null && material.IsBoard == board)
            return material;
        var fitting = job.Stock.Materials.Where(m => m.IsBoard == board).Select(m => m.Id);
        problems.Add(
            $"{_path}.{field}",
            material is null ? "There is no such material." : board ? "This material comes as sheets; a board with its width is needed." : "This material comes as boards; a sheet is needed.",
            $"'{id}'",
            "one of " + string.Join(", ", fitting));
        return null;
    }

    private Material? Sheet(string id, string field) => Find(id, field, board: false);

    private Material? Board(string id, string field) => Find(id, field, board: true);

    private Material? ResolveBack()
    {
        if (_run.Back.Kind == BackKind.None)
            return null;
        if (_run.Back.Material is { } id)
            return Sheet(id, "back.material");
        problems.Add($"{_path}.back.material", "A back needs a material.", "nothing", "the id of a sheet material, or back kind none");
        return null;
    }

    private Material? Nosing(string? id, string field, Length covers)
    {
        if (id is null || Board(id, field) is not { } board)
            return null;
        problems.Least($"{_path}.{field}", "board width of the nosing, which must cover the panel's edge,", board.BoardWidth!.Value, covers);
        return board;
    }

    private EndFigures ResolveEnd(RunEnd end, string field, Material panel)
    {
        problems.Least($"{_path}.{field}.filler", "filler", end.Filler, Length.Zero);
        if (end.Kind is not (EndKind.Wall or EndKind.Corner) && end.Filler > Length.Zero)
            problems.Add($"{_path}.{field}.filler", "A filler belongs to an end at a wall.", end.Filler, "no filler, or kind wall or corner");
        if (end.Kind != EndKind.Finished && end.Panel is not null)
            problems.Add($"{_path}.{field}.panel", "An end panel belongs to a finished end.", $"'{end.Panel}'", "no panel, or kind finished");
        var filler = end.FillerMaterial is { } id ? Sheet(id, $"{field}.fillerMaterial") ?? panel : panel;
        var corner = new CornerReader(job, index, problems).At(field == "left");
        return new(end.Kind, corner?.Visible ?? end.Filler, filler, end.Panel is { } panelId ? Sheet(panelId, $"{field}.panel") : null, corner);
    }

    private EndFigures Surveyed(EndFigures end, Wall wall, bool isLeft) => end with
    {
        FallsAway = EndSurvey.FallsAway(_run, wall, isLeft),
        Behind = EndSurvey.Behind(_run, wall, isLeft),
    };

    private EndFigures Lipped(EndFigures figures, RunEnd end, string field)
    {
        Material? Lip(string? id, string edge) => id is null ? null : Any(id, $"{field}.lipping.{edge}");
        return end.Lipping is not { } lipping ? figures : figures with { FrontLip = Lip(lipping.Front, "front"), RearLip = Lip(lipping.Rear, "rear") };
    }

    private Material? Any(string id, string field)
    {
        var material = job.Stock.Materials.FirstOrDefault(m => m.Id == id);
        if (material is null)
            problems.Add($"{_path}.{field}", "There is no such material.", $"'{id}'", "one of " + string.Join(", ", job.Stock.Materials.Select(m => m.Id)));
        return material;
    }

    private FrameMaterials? ResolveFrame(Material panel)
    {
        if (_run.Construction == Construction.Frameless)
        {
            if (_run.FaceFrame is not null)
                problems.Add($"{_path}.faceFrame", "A frameless run has no face frame.", "a face frame", "none, or construction faceFrame");
            return null;
        }

        if (_run.FaceFrame is not { } design)
        {
            problems.Add($"{_path}.faceFrame", "This construction needs a face frame.", "nothing", "its stiles and rails, or construction frameless");
            return null;
        }

        if (_run.Nosing?.Uprights is not null)
            problems.Add($"{_path}.nosing.uprights", "The face frame covers the fronts of the uprights already.", $"'{_run.Nosing.Uprights}'", "no nosing on uprights");
        problems.Least($"{_path}.faceFrame.finishedOverlap", "overlap", design.FinishedOverlap, Length.Zero);
        var end = Board(design.EndStile, "faceFrame.endStile");
        var mid = design.MidStile is { } id ? Board(id, "faceFrame.midStile") : null;
        var top = Board(design.TopRail, "faceFrame.topRail");
        var bottom = Board(design.BottomRail, "faceFrame.bottomRail");
        var midRail = design.MidRail is { } midId ? Board(midId, "faceFrame.midRail") : null;
        var joint = design.JointStile is { } jointId ? Board(jointId, "faceFrame.jointStile") : null;
        var packer = design.SlidePacker is { } packerId ? Board(packerId, "faceFrame.slidePacker") : null;
        if (end is null || top is null || bottom is null)
            return null;
        if (joint is not null)
        {
            CheckMember(joint, "jointStile", end, panel.Thickness * 2);
            if (_run.Columns.Any(c => c.Open))
                problems.Add($"{_path}.faceFrame.jointStile", "A knee space interrupts the frame.", $"'{design.JointStile}'", "a frame for each case, without jointStile");
        }

        if (midRail is not null)
            CheckMember(midRail, "midRail", end, panel.Thickness);
        CheckMember(end, "endStile", end, panel.Thickness + design.FinishedOverlap);
        CheckMember(top, "topRail", end, panel.Thickness);
        CheckMember(bottom, "bottomRail", end, panel.Thickness);
        if (mid is not null)
            CheckMember(mid, "midStile", end, panel.Thickness);
        return new(end, mid, top, bottom, midRail) { JointStile = joint, SlidePacker = packer };
    }

    private void CheckMember(Material member, string field, Material end, Length least)
    {
        problems.Least($"{_path}.faceFrame.{field}", "width of this frame member, which must cover the panel behind it,", member.BoardWidth!.Value, least);
        if (member.Thickness != end.Thickness)
            problems.Add($"{_path}.faceFrame.{field}", "All members of a frame are of one thickness.", member.Thickness, $"{problems.Say(end.Thickness)} as the end stiles");
    }

    private void CheckAlongWall(RunFigures run)
    {
        problems.Least($"{_path}.offset", "offset", run.X, Length.Zero);
        problems.Positive($"{_path}.width", "width of the run", run.Width);
        if (run.XEnd > run.Wall.Width)
            problems.Add($"{_path}.width", "The run reaches past the end of its wall.", run.Width, $"at most {problems.Say(run.Wall.Width - run.X)} from this offset");
    }

    private void CheckBlind(RunFigures run)
    {
        foreach (var blind in run.Blind)
        {
            var field = blind.AtRight ? "right" : "left";
            if (blind.AtRight ? run.XEnd != run.Wall.Width : run.X != Length.Zero)
                problems.Add($"{_path}.{field}", $"Run {blind.Run.Name} meets this run in a blind corner, into which it must go through.", blind.AtRight ? run.XEnd : run.X, "a run to the end of its wall");
            if (run.Frame is not null)
                problems.Add($"{_path}.construction", "A blind corner is laid out frameless.", "faceFrame", "frameless, or a dead corner");
        }
    }

    private void CheckHead(RunFigures run)
    {
        var head = _run.Head;
        if (head.Height is null == head.Gap is null)
        {
            problems.Add($"{_path}.head", "The head needs either a height or a gap under the ceiling.", head.Height is null ? "neither" : "both", "exactly one of height and gap");
            return;
        }

        if (head.Gap is { } gap)
            problems.Least($"{_path}.head.gap", "gap", gap, Length.Zero);
        var field = head.Height is null ? "gap" : "height";
        if (run.Top > run.Wall.Height)
            problems.Add($"{_path}.head.height", "The cases are higher than the ceiling.", run.Top, $"at most {problems.Say(run.Wall.Height)}");
        if (run.Top <= run.BaseHeight)
            problems.Add($"{_path}.head.{field}", "Nothing is left above the base.", run.Top, $"the top of the cases above {problems.Say(run.BaseHeight)}");
        problems.Least($"{_path}.head.crownLap", "crown's lap", head.CrownLap, Length.Zero);
        if (run.Crown is not { } crown)
            return;
        var reach = run.Top - head.CrownLap + crown.BoardWidth!.Value;
        var most = run.Wall.Height + CrownParts.ScribeRoom(run);
        if (reach > most)
            problems.Add($"{_path}.head.crown", "The crown is higher than the lowest ceiling.", reach, $"at most {problems.Say(most)}: lower cases, more lap or a narrower crown");
        if (head.CrownLap > crown.BoardWidth!.Value)
            problems.Add($"{_path}.head.crownLap", "The lap is more than the crown.", head.CrownLap, $"at most {problems.Say(crown.BoardWidth!.Value)}");
    }

    private void CheckBase(RunFigures run)
    {
        var design = _run.Base;
        problems.Least($"{_path}.base.height", "height of the base", design.Height, Length.Zero);
        problems.Least($"{_path}.base.setback", "setback", design.Setback, Length.Zero);
        problems.Least($"{_path}.base.shimRoom", "room for shims", design.ShimRoom, Length.Zero);
        switch (design.Kind)
        {
            case BaseKind.None when design.Height != Length.Zero:
                problems.Add($"{_path}.base.height", "A run without a base stands on the floor.", design.Height, "0, or another kind of base");
                break;
            case BaseKind.Hung:
                problems.Positive($"{_path}.base.height", "height at which the run hangs", design.Height);
                break;
            case BaseKind.Plinth:
                problems.Positive($"{_path}.base.longestSection", "longest section", design.LongestSection);
                if (design.Height <= design.ShimRoom)
                    problems.Add($"{_path}.base.height", "The base is no higher than its room for shims.", design.Height, $"more than {problems.Say(design.ShimRoom)}");
                if (_run.Depth - design.Setback - run.SkirtingRoom <= run.Base.Thickness * 4)
                    problems.Add($"{_path}.base.setback", "No depth is left for the base.", design.Setback, $"less than {problems.Say(_run.Depth - run.SkirtingRoom - (run.Base.Thickness * 4))}");
                break;
            case BaseKind.SidesToFloor:
                problems.Positive($"{_path}.base.height", "height of the base", design.Height);
                if (_run.Depth - design.Setback <= run.Base.Thickness * 2)
                    problems.Add($"{_path}.base.setback", "No depth is left behind the toe face.", design.Setback, $"less than {problems.Say(_run.Depth - (run.Base.Thickness * 2))}");
                break;
        }
    }
}
