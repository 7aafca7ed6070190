using System.CommandLine;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;

namespace Casewright.App.Commands;

/// <summary>The job file that a command works on.</summary>
public static class JobArgument
{
    /// <summary>The argument.</summary>
    public static Argument<FileInfo> Build() => new("JOB") { Description = "The job file (JSON); 'casewright new' writes one to start from." };

    /// <summary>Reads the job file and reports what is wrong with it.</summary>
    /// <returns>The job; null when it could not be read, with <paramref name="exitCode"/> saying why.</returns>
    public static Job? Read(FileInfo file, TextWriter errors, out int exitCode)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(errors);
        exitCode = ExitCode.Done;
        Outcome<Job> outcome;
        try
        {
            using var stream = file.OpenRead();
            outcome = JobFile.Read(stream);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{file}: cannot be read. {exception.Message}");
            exitCode = ExitCode.Files;
            return null;
        }

        if (outcome.Succeeded)
            return outcome.Value;
        ProblemText.Write(errors, $"{file} cannot be planned:", outcome.Problems);
        exitCode = ExitCode.JobWrong;
        return null;
    }
}
