using System.Globalization;
using Casewright.Engine.Cutting.Planning;

namespace Casewright.Bench.Jobs;

/// <summary>What the command line asks of the job benchmark.</summary>
internal sealed record JobOptions(string Path)
{
    /// <summary>Numbers of bays to bring the first run of the job to; empty to plan jobs as they are.</summary>
    public IReadOnlyList<int> Bays { get; private set; } = [];

    public PlanningEffort Effort { get; private set; } = PlanningEffort.Usual;

    /// <summary>Milliseconds after which planning is cancelled, to measure how long that takes; null to let it end.</summary>
    public int? Cancel { get; private set; }

    public string? Csv { get; private set; }

    public string? Svg { get; private set; }

    public static string Usage => "jobs FILE-OR-FOLDER [--bays 10,20,40] [--effort quick|usual|thorough] [--cancel MS] [--csv FILE] [--svg FILE]";

    /// <summary>Reads the arguments after the command's name.</summary>
    /// <exception cref="ArgumentException">An argument is unknown or has no value.</exception>
    public static JobOptions Parse(string[] args)
    {
        if (args.Length == 0)
            throw new ArgumentException("the job file, or a folder of them, is missing");
        var options = new JobOptions(args[0]);
        for (var i = 1; i < args.Length; i += 2)
        {
            if (i + 1 == args.Length)
                throw new ArgumentException($"{args[i]} has no value");
            options.Set(args[i], args[i + 1]);
        }

        return options;
    }

    private void Set(string name, string value)
    {
        switch (name)
        {
            case "--bays": Bays = [.. value.Split(',').Select(n => int.Parse(n, CultureInfo.InvariantCulture))]; break;
            case "--effort": Effort = Enum.Parse<PlanningEffort>(value, ignoreCase: true); break;
            case "--cancel": Cancel = int.Parse(value, CultureInfo.InvariantCulture); break;
            case "--csv": Csv = value; break;
            case "--svg": Svg = value; break;
            default: throw new ArgumentException($"{name} is not known");
        }
    }
}
