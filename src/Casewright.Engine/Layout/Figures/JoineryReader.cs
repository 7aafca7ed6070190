using Casewright.Model.Design;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Figures;

/// <summary>Checks depths and joints of a run against the thickness they are cut into.</summary>
internal sealed class JoineryReader(RunFigures run, ProblemList problems)
{
    private readonly Joinery _joinery = run.Joinery;
    private readonly string _path = run.Path + ".joinery";

    /// <summary>Notes every impossible figure.</summary>
    public void Check()
    {
        CheckSteps();
        CheckDepth();
        CheckDado();
        CheckBack();
        CheckNailers();
        CheckBand();
    }

    private void CheckSteps()
    {
        problems.Positive(_path + ".roundingStep", "rounding step", _joinery.RoundingStep);
        problems.Least(_path + ".shelfPlay", "play of loose shelves", _joinery.ShelfPlay, Length.Zero);
        problems.Least(_path + ".shelfSetback", "setback of loose shelves", _joinery.ShelfSetback, Length.Zero);
        problems.Least(_path + ".shelfRearPlay", "play behind loose shelves", _joinery.ShelfRearPlay, Length.Zero);
        problems.Least(_path + ".scribeAllowance", "scribe allowance", _joinery.ScribeAllowance, Length.Zero);
    }

    private void CheckDepth()
    {
        var panel = run.UprightFront - run.BackFront;
        var shelf = run.ShelfFront - run.BackFront;
        if (panel <= Length.Zero || shelf <= Length.Zero)
        {
            var taken = run.Run.Depth - Length.Min(panel, shelf);
            problems.Add(run.Path + ".depth", "Nosing, frame and back leave no depth for the panels.", run.Run.Depth, $"more than {problems.Say(taken)}");
        }
    }

    private void CheckDado()
    {
        problems.Least(_path + ".dadoDepth", "dado", _joinery.DadoDepth, Length.Zero);
        if (_joinery.DadoDepth * 2 > run.T)
            problems.Add(_path + ".dadoDepth", "The dado is deeper than half the panel.", _joinery.DadoDepth, $"at most a third of the panel, {problems.Say(run.T / 3)}; 0 for butt joints");
    }

    private void CheckBack()
    {
        var back = run.Run.Back;
        problems.Least(run.Path + ".back.inset", "inset", back.Inset, Length.Zero);
        problems.Least(_path + ".backPlay", "play of backs", _joinery.BackPlay, Length.Zero);
        problems.Least(_path + ".backFit", "fit of backs", _joinery.BackFit, Length.Zero);
        switch (back.Kind)
        {
            case BackKind.Captured:
                CheckHold(_path + ".grooveDepth", "groove", _joinery.GrooveDepth, run.T / 2);
                if (back.Inset <= _joinery.BackFit)
                    problems.Add(run.Path + ".back.inset", "The groove of a captured back needs wood behind it.", back.Inset, $"more than {problems.Say(_joinery.BackFit)}; usually 10 mm (3/8 in) or more");
                break;
            case BackKind.Rabbeted:
                CheckHold(_path + ".rabbetDepth", "rabbet", run.RabbetDepth, run.T * 2 / 3);
                break;
            case BackKind.Overlaid:
                problems.Least(_path + ".backReveal", "reveal of an overlaid back", _joinery.BackReveal, Length.Zero);
                if (_joinery.BackReveal >= run.T)
                    problems.Add(_path + ".backReveal", "The back does not reach the panels.", _joinery.BackReveal, $"less than {problems.Say(run.T)}");
                break;
        }
    }

    private void CheckHold(string path, string what, Length depth, Length most)
    {
        if (depth > most)
            problems.Add(path, $"The {what} for the back is too deep for the panel.", depth, $"at most {problems.Say(most)}");
        if (depth * 2 <= _joinery.BackPlay)
            problems.Add(path, $"The {what} does not hold the back with this play.", depth, $"more than {problems.Say(_joinery.BackPlay / 2)}");
    }

    private void CheckNailers()
    {
        if (run.Run.Nailers is not { } nailers || run.Nailer is not { } material)
            return;
        problems.Positive(run.Path + ".nailers.height", "height of a nailer", nailers.Height);
        if (!run.NailersBehind && run.ShelfFront - run.BackFront <= material.Thickness)
            problems.Add(run.Path + ".nailers.material", "The nailer is thicker than the case is deep.", material.Thickness, $"less than {problems.Say(run.ShelfFront - run.BackFront)}");
    }

    private void CheckBand()
    {
        if (run.Band is not { } band)
            return;
        if (run.Back is null)
            problems.Add(run.Path + ".trimBand", "A trim band covers a joint of the backs, and this run has no backs.", "a trim band", "none, or a back");
        var least = run.Job.Shop.Splicing.BandOverlap * 2;
        problems.Least(run.Path + ".trimBand.material", "board width of the trim band, which overlaps the joint of the backs on both sides,", band.BoardWidth!.Value, least);
    }
}
