namespace Casewright.App.Packets;

/// <summary>
/// Writes a packet into a folder so that the folder holds either the old packet or the new one, whole, even when the
/// program is stopped half-way.
/// </summary>
public sealed class PacketFolder : IDisposable
{
    /// <summary>Name of the file that marks a folder as a packet which may be replaced.</summary>
    public const string Marker = ".casewright-packet";

    private readonly string _target;
    private readonly List<string> _written = [];

    private PacketFolder(string target, string staging)
    {
        _target = target;
        Staging = staging;
    }

    /// <summary>The folder that files are written into until <see cref="Commit"/>.</summary>
    public string Staging { get; }

    /// <summary>Names of the files written, in order.</summary>
    public IReadOnlyList<string> Written => _written;

    /// <summary>Begins a packet beside <paramref name="target"/>.</summary>
    /// <exception cref="IOException">The target is a file, or a folder with files that no packet put there.</exception>
    public static PacketFolder Begin(string target)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(target));
        if (File.Exists(full))
            throw new IOException($"{target} is a file; give a folder that is new, empty or holds an earlier packet.");
        if (Directory.Exists(full) && Directory.EnumerateFileSystemEntries(full).Any() && !File.Exists(Path.Combine(full, Marker)))
            throw new IOException($"{target} holds files that are no packet of ours, and they are left alone; give a folder that is new or empty.");

        var parent = Path.GetDirectoryName(full) ?? throw new IOException($"{target} is a root folder; give a folder inside one.");
        Directory.CreateDirectory(parent);
        var staging = Path.Combine(parent, $".{Path.GetFileName(full)}.{Guid.NewGuid():N}.part");
        Directory.CreateDirectory(staging);
        return new(full, staging);
    }

    /// <summary>Writes one file of the packet.</summary>
    public void Write(string name, Action<Stream> content)
    {
        ArgumentNullException.ThrowIfNull(content);
        var path = Path.Combine(Staging, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var stream = File.Create(path);
        content(stream);
        _written.Add(name);
    }

    /// <summary>Writes one text file of the packet, UTF-8 without a byte order mark.</summary>
    public void Write(string name, string content) => Write(name, stream =>
    {
        using var writer = new StreamWriter(stream, leaveOpen: true);
        writer.Write(content);
    });

    /// <summary>Puts the new packet in place of the old one.</summary>
    public void Commit()
    {
        File.WriteAllLines(Path.Combine(Staging, Marker), _written);
        var old = Staging + ".old";
        var hadOld = Directory.Exists(_target);
        if (hadOld)
            Directory.Move(_target, old);
        try
        {
            Directory.Move(Staging, _target);
        }
        catch (IOException) when (hadOld)
        {
            Directory.Move(old, _target);
            throw;
        }

        if (hadOld)
            Directory.Delete(old, recursive: true);
    }

    /// <summary>Removes what was written and not committed.</summary>
    public void Dispose()
    {
        if (Directory.Exists(Staging))
            Directory.Delete(Staging, recursive: true);
    }
}
