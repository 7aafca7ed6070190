using Casewright.Engine;
using Casewright.Model.Files;
using Casewright.Model.Plans;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing.Rendering;
using Casewright.Papers.Kit;

namespace Casewright.Bench.Guide;

/// <summary>Makes the pictures of the guide: pages of the packets of examples, as the program prints them.</summary>
internal static class GuidePictures
{
    public const string Usage = "pictures EXAMPLES FOLDER";

    private const double DotsPerInch = 96;

    private static readonly Subject[] s_subjects =
    [
        new("display-wall", DocumentKind.Elevation, "elevation"),
        new("display-wall", DocumentKind.SheetLayouts, "sheet-layout"),
        new("display-wall", DocumentKind.SpliceCards, "splice-card"),
        new("alcove-pair", DocumentKind.StorySticks, "story-stick"),
        new("alcove-pair", DocumentKind.DrillingLayouts, "drilling-layout"),
        new("alcove-pair", DocumentKind.AssemblySheets, "assembly-sheet"),
        new("display-wall", DocumentKind.RipSchedule, "rip-schedule"),
    ];

    public static int Run(string[] arguments)
    {
        if (arguments is not [var examples, var folder])
            throw new ArgumentException("The folder of examples and the folder for the pictures are wanted.", nameof(arguments));
        Directory.CreateDirectory(folder);
        foreach (var subjects in s_subjects.GroupBy(subject => subject.Example, StringComparer.Ordinal))
        {
            var packet = Packet.Of(PlanOf(Path.Combine(examples, subjects.Key + ".json")), new(PaperSize.A4, new(2026, 1, 1)));
            foreach (var subject in subjects)
            {
                var page = packet.Pages.First(page => page.Document == subject.Document);
                var file = Path.Combine(folder, subject.Name + ".png");
                File.WriteAllBytes(file, PngRenderer.ToBytes(page.Scene, DotsPerInch));
                Console.WriteLine($"{file}  page {page.Number} of {subject.Example}");
            }
        }

        return 0;
    }

    private static Plan PlanOf(string file)
    {
        var job = JobFile.Read(File.ReadAllText(file));
        var plan = job.Succeeded ? Planner.Plan(job.Value).Plan : null;
        return plan ?? throw new ArgumentException($"{file} is no job that can be planned.");
    }

    private sealed record Subject(string Example, DocumentKind Document, string Name);
}
