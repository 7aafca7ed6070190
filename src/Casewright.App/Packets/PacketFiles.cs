using Casewright.Model.Files;
using Casewright.Model.Plans;

namespace Casewright.App.Packets;

/// <summary>A file that a plan can be written as.</summary>
/// <param name="Name">Its name in the packet folder.</param>
/// <param name="ContentType">Its media type.</param>
/// <param name="Write">Writes it.</param>
public sealed record PacketFile(string Name, string ContentType, Action<Plan, Stream> Write);

/// <summary>The files of a packet.</summary>
public static class PacketFiles
{
    /// <summary>The file of that name on that paper; null when there is none.</summary>
    public static PacketFile? Find(string name, string paper) => All(paper).FirstOrDefault(f => f.Name == name);

    /// <summary>All files, the one to open first in front.</summary>
    public static IEnumerable<PacketFile> All(string paper)
    {
        _ = paper;
        yield return new("plan.json", "application/json", (plan, stream) =>
        {
            using var writer = new StreamWriter(stream, leaveOpen: true);
            writer.Write(PlanFile.Write(plan));
        });
    }
}
