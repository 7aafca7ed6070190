using System.CommandLine;
using Casewright.Model.Files;

namespace Casewright.App.Commands;

/// <summary><c>schema</c>: prints the JSON Schema of the job file or of plan.json.</summary>
public static class SchemaCommand
{
    /// <summary>The command.</summary>
    public static Command Build()
    {
        var what = new Argument<string>("WHICH") { Description = "job (the job file) or plan (plan.json).", DefaultValueFactory = _ => "job" };
        what.AcceptOnlyFromAmong("job", "plan");
        var command = new Command("schema", "Print the JSON Schema that an editor completes and checks a file with.") { what };
        command.SetAction(result =>
        {
            result.InvocationConfiguration.Output.Write(string.Equals(result.GetValue(what), "plan", StringComparison.Ordinal) ? PlanSchema.Text : JobSchema.Text);
            return ExitCode.Done;
        });
        return command;
    }
}
