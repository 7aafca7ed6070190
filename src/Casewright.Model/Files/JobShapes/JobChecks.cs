using System.Globalization;
using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Splices;

namespace Casewright.Model.Files.JobShapes;

/// <summary>Checks of a job that need two parts of it together but no geometry.</summary>
internal static class JobChecks
{
    private const long MostShelves = 40_000;

    /// <summary>Checks a job whose records are all right by themselves.</summary>
    public static void Check(Job job, Spot spot)
    {
        for (var i = 0; i < job.Runs.Count; i++)
        {
            CheckMethod(job, job.Runs[i], spot["runs"][i]);
            CheckJoints(job, job.Runs[i], spot["runs"][i]);
        }

        CheckSize(job, spot["runs"]);
        if (job.FinishBy < job.StartOn)
            spot["finishBy"].Fail("The work is to be finished before it starts.", null, "a day not before \"startOn\"");
    }

    private static void CheckMethod(Job job, Run run, Spot spot)
    {
        if (run.Splices.Method is not { } method || method == SpliceMethod.CoveredButt || job.Shop.Splicing.Methods.Any(m => m.Method == method))
            return;
        var known = job.Shop.Splicing.Methods.Select(m => ChoiceShape.NameOf(m.Method));
        spot["splices"]["method"].Fail("The shop is not set up for this method.", null, $"{string.Join(", ", known)}; or add it to shop.splicing.methods");
    }

    private static void CheckJoints(Job job, Run run, Spot spot)
    {
        if (job.Stock.Materials.FirstOrDefault(m => m.Id == run.Material) is not { } material)
            return;
        var joinery = spot["joinery"];
        var accepted = $"at most a third of the thickness is usual; the run's material is {LengthFormat.Exact(material.Thickness, job.Units)} thick";
        if (run.Joinery.DadoDepth * 2 >= material.Thickness)
            joinery["dadoDepth"].Fail("Dados this deep would meet in the middle of a partition.", Shown(run.Joinery.DadoDepth, job), accepted);
        if (run.Back.Kind == BackKind.Captured && run.Joinery.GrooveDepth * 2 >= material.Thickness)
            joinery["grooveDepth"].Fail("Grooves this deep would meet in the middle of a partition.", Shown(run.Joinery.GrooveDepth, job), accepted);
        if (run.Back.Kind == BackKind.Rabbeted && run.Joinery.RabbetDepth is { } depth && depth >= material.Thickness)
            joinery["rabbetDepth"].Fail("A rabbet must leave wood standing.", Shown(depth, job), accepted);
        if (run.Joinery.PinDepth >= material.Thickness && run.Tiers.Any(t => t.Interior.Loose > 0))
            joinery["pinDepth"].Fail("Pin holes must not go through.", Shown(run.Joinery.PinDepth, job), accepted);
    }

    /// <summary>A job beyond these sizes is a slip of the keyboard; planning it would only waste the reader's time.</summary>
    private static void CheckSize(Job job, Spot spot)
    {
        var bays = job.Runs.Sum(BaysStated);
        if (bays > InteriorShapes.MostBays)
            spot.Fail(
                "There are too many bays in this job.",
                bays.ToString(CultureInfo.InvariantCulture),
                $"at most {InteriorShapes.MostBays} in all; split the job");
        var shelves = job.Runs.Sum(r => BaysStated(r) * r.Tiers.Sum(t => (long)t.Interior.Loose + t.Interior.Fixed + t.Interior.FixedAt.Count + 1));
        if (shelves > MostShelves)
            spot.Fail(
                "There are too many shelves in this job.",
                shelves.ToString(CultureInfo.InvariantCulture),
                $"at most {MostShelves} in all; split the job");
    }

    private static long BaysStated(Run run) => run.Columns.Count > 0 ? run.Columns.Sum(c => (long)c.Bays) : run.Division?.Bays ?? 1;

    private static string Shown(Length length, Job job) => LengthFormat.Exact(length, job.Units);
}
