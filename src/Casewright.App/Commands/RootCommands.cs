using System.CommandLine;

namespace Casewright.App.Commands;

/// <summary>The command line.</summary>
public static class RootCommands
{
    /// <summary>All commands of the program; without one, the pages are served.</summary>
    public static RootCommand Build()
    {
        var root = new RootCommand(
            "Casewright plans built-in casework whose parts outrun the sheet, from the tape measure to the finished wall. Without a command it serves its pages and names their address.")
        {
            PlanCommand.Build(),
            CheckCommand.Build(),
            CompareCommand.Build(),
            NudgeCommand.Build(),
            CutCommand.Build(),
            ChangeCommand.Build(),
            SchemaCommand.Build(),
            NewCommand.Build(),
            ServeCommand.Build(),
        };
        root.SetAction((result, cancellation) => ServeCommand.RunAsUsual(result.InvocationConfiguration, cancellation));
        return root;
    }
}
