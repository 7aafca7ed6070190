using Casewright.Bench.Cutting;
using Casewright.Bench.Scheduling;

try
{
    switch (args)
    {
        case ["cutting", .. var rest]:
            return new CuttingBenchmark(CuttingOptions.Parse(rest)).Run();
        case ["schedule", .. var rest]:
            return ScheduleBench.Run(rest);
        default:
            break;
    }
}
catch (ArgumentException wrong)
{
    Console.Error.WriteLine(wrong.Message);
}

Console.Error.WriteLine("usage: " + CuttingOptions.Usage);
Console.Error.WriteLine("       " + ScheduleBench.Usage);
return 2;
