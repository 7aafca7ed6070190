using Casewright.Engine.Schemes;
using Casewright.Model.Schemes;

namespace Casewright.App.Commands;

/// <summary>Tells on the progress line which way to build the job is being planned, and how far it has come.</summary>
internal sealed class SchemeLine(ProgressLine line) : IProgress<SchemeProgress>
{
    public void Report(SchemeProgress value) => line.Say($"The way '{SchemeNames.Of(value.Kind)}': {value.Planning.Words}");
}
