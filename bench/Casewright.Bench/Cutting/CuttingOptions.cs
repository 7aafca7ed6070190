using System.Globalization;
using System.Text.RegularExpressions;
using Casewright.Engine.Cutting;

namespace Casewright.Bench.Cutting;

/// <summary>What the command line asks for.</summary>
internal sealed record CuttingOptions(string Folder)
{
    public IReadOnlyList<string>? Sets { get; private set; }

    public Regex? Pattern { get; private set; }

    public bool Rotation { get; private set; }

    public int? Stages { get; private set; }

    public FirstCut FirstCut { get; private set; } = FirstCut.Either;

    public double? Seconds { get; private set; }

    public long Work { get; private set; } = CuttingProblem.UsualWork;

    public string? Csv { get; private set; }

    public int Every { get; private set; } = 1;

    public int Offset { get; private set; }

    public static string Usage =>
        "cutting FOLDER [--sets A,B] [--instances PATTERN] [--rotation yes|no] [--stages N|any] [--first either|along|across]\n"
        + "    [--seconds S | --work N] [--every N [--offset K]] [--csv FILE]";

    /// <summary>Reads the arguments after the command's name.</summary>
    /// <exception cref="ArgumentException">An argument is unknown or has no value.</exception>
    public static CuttingOptions Parse(string[] args)
    {
        if (args.Length == 0)
            throw new ArgumentException("the folder of instances is missing");
        var options = new CuttingOptions(args[0]);
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
            case "--sets": Sets = value.Split(','); break;
            case "--instances": Pattern = new Regex(value.Replace("*", ".*", StringComparison.Ordinal), RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)); break;
            case "--rotation": Rotation = value is "yes"; break;
            case "--stages": Stages = value is "any" ? null : int.Parse(value, CultureInfo.InvariantCulture); break;
            case "--first": FirstCut = Enum.Parse<FirstCut>(value, ignoreCase: true); break;
            case "--seconds": Seconds = double.Parse(value, CultureInfo.InvariantCulture); break;
            case "--work": Work = long.Parse(value, CultureInfo.InvariantCulture); break;
            case "--every": Every = int.Parse(value, CultureInfo.InvariantCulture); break;
            case "--offset": Offset = int.Parse(value, CultureInfo.InvariantCulture); break;
            case "--csv": Csv = value; break;
            default: throw new ArgumentException($"{name} is not known");
        }
    }
}
