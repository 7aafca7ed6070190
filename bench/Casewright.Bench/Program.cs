using Casewright.Bench.Cutting;
using Casewright.Bench.Guide;
using Casewright.Bench.Jobs;
using Casewright.Bench.Pages;
using Casewright.Bench.Scheduling;

try
{
    switch (args)
    {
        case ["cutting", .. var rest]:
            var options = CuttingOptions.Parse(rest);
            return BoardBenchmark.Handles(options.Folder) ? new BoardBenchmark(options).Run() : new CuttingBenchmark(options).Run();
        case ["jobs", .. var rest]:
            return new JobBenchmark(JobOptions.Parse(rest)).Run();
        case ["schedule", .. var rest]:
            return ScheduleBench.Run(rest);
        case ["pictures", .. var rest]:
            return GuidePictures.Run(rest);
        case ["pages", .. var rest]:
            return PagesBench.Run(rest);
        default:
            break;
    }
}
catch (ArgumentException wrong)
{
    Console.Error.WriteLine(wrong.Message);
}

Console.Error.WriteLine("usage: " + CuttingOptions.Usage);
Console.Error.WriteLine("       " + JobOptions.Usage);
Console.Error.WriteLine("       " + ScheduleBench.Usage);
Console.Error.WriteLine("       " + GuidePictures.Usage);
Console.Error.WriteLine("       " + PagesBench.Usage);
return 2;
