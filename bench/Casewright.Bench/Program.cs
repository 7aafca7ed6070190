using Casewright.Bench.Cutting;

try
{
    if (args is ["cutting", .. var rest])
        return new CuttingBenchmark(CuttingOptions.Parse(rest)).Run();
}
catch (ArgumentException wrong)
{
    Console.Error.WriteLine(wrong.Message);
}

Console.Error.WriteLine("usage: " + CuttingOptions.Usage);
return 2;
