using Casewright.Model.Files.Source;

namespace Casewright.Model.Files.Versions;

/// <summary>One step from a version of the job file to the next, made on the tree of the file before its fields are read.</summary>
/// <param name="From">Version it takes; it gives the next one.</param>
/// <param name="Change">What changed between the two, in words.</param>
/// <param name="Apply">Makes the step. It may meet a faulty file and must leave alone what it does not understand; the reader reports that afterwards.</param>
internal sealed record Migration(int From, string Change, Func<SourceObject, SourceObject> Apply);
