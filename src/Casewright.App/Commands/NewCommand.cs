using System.CommandLine;
using Casewright.Model.Files;
using Casewright.Model.Measure;

namespace Casewright.App.Commands;

/// <summary><c>new</c>: writes a commented job file to start from.</summary>
public static class NewCommand
{
    /// <summary>The command.</summary>
    public static Command Build()
    {
        var file = new Argument<FileInfo>("FILE") { Description = "The file to write; it must not exist yet.", DefaultValueFactory = _ => new FileInfo("job.json") };
        var units = new Option<string>("--units") { Description = "mm or in: the unit of bare numbers and of the papers.", DefaultValueFactory = _ => "mm" };
        units.AcceptOnlyFromAmong("mm", "in");
        var command = new Command("new", "Write a commented job file to start from.") { file, units };
        command.SetAction(result =>
        {
            var target = result.GetValue(file)!;
            var system = string.Equals(result.GetValue(units), "in", StringComparison.Ordinal) ? UnitSystem.Inches : UnitSystem.Millimetres;
            try
            {
                using var stream = new FileStream(target.FullName, FileMode.CreateNew, FileAccess.Write);
                using var writer = new StreamWriter(stream);
                writer.Write(StarterJob.Text(system));
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
            {
                result.InvocationConfiguration.Error.WriteLine($"{target}: cannot be written, and nothing was changed. {exception.Message}");
                return ExitCode.Files;
            }

            result.InvocationConfiguration.Output.WriteLine($"Wrote {target}. Edit it, then run: casewright plan {target}");
            return ExitCode.Done;
        });
        return command;
    }
}
