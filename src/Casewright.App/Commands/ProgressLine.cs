using Casewright.Engine;

namespace Casewright.App.Commands;

/// <summary>One line on the terminal that tells how far planning has come; silent when the output is piped.</summary>
public sealed class ProgressLine : IProgress<PlanningProgress>, IDisposable
{
    private readonly TextWriter _writer;
    private readonly bool _live;
    private int _width;

    /// <summary>A line on the error stream.</summary>
    public ProgressLine(TextWriter writer)
    {
        _writer = writer;
        _live = !Console.IsErrorRedirected && ReferenceEquals(writer, Console.Error);
    }

    /// <inheritdoc/>
    public void Report(PlanningProgress value)
    {
        ArgumentNullException.ThrowIfNull(value);
        if (!_live)
            return;
        var sheets = value switch
        {
            { Sheets: { } used, SheetsLowerBound: { } bound } => $" {used} sheets; none below {bound} possible",
            { Sheets: { } used } => $" {used} sheets",
            _ => "",
        };
        Say(value.Words + sheets);
    }

    /// <summary>Puts words on the line, in place of those before.</summary>
    public void Say(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        if (!_live)
            return;
        _writer.Write("\r" + words.PadRight(_width));
        _width = words.Length;
    }

    /// <summary>Empties the line.</summary>
    public void Clear()
    {
        if (_width > 0)
            _writer.Write("\r" + new string(' ', _width) + "\r");
        _width = 0;
    }

    /// <inheritdoc/>
    public void Dispose() => Clear();
}
