using System.Collections.Concurrent;
using System.IO.Compression;
using System.Reflection;
using System.Security.Cryptography;

namespace Casewright.App.Web;

/// <summary>Serves files that are embedded in the program: compressed once, kept by browsers until they change.</summary>
public sealed class EmbeddedFiles
{
    private static readonly TimeSpan s_week = TimeSpan.FromDays(7);
    private readonly Assembly _assembly;
    private readonly string _prefix;
    private readonly string _type;
    private readonly ConcurrentDictionary<string, Lazy<Content?>> _contents = new(StringComparer.Ordinal);

    private EmbeddedFiles(Assembly assembly, string prefix, string type)
    {
        _assembly = assembly;
        _prefix = prefix;
        _type = type;
    }

    /// <summary>Changes with every build; addresses that hold it may be kept for ever.</summary>
    public static string Version { get; } = typeof(EmbeddedFiles).Module.ModuleVersionId.ToString("N")[..12];

    /// <summary>Adds the address of the files of an assembly whose names begin with <paramref name="prefix"/>.</summary>
    /// <param name="app">The server.</param>
    /// <param name="pattern">The address, with {name}; with {version} the files may be kept for ever.</param>
    /// <param name="assembly">Where they are.</param>
    /// <param name="prefix">What their names begin with.</param>
    /// <param name="type">Their media type.</param>
    public static void Map(WebApplication app, string pattern, Assembly assembly, string prefix, string type)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var files = new EmbeddedFiles(assembly, prefix, type);
        var cache = pattern.Contains("{version}", StringComparison.Ordinal) ? "public, max-age=31536000, immutable" : $"public, max-age={s_week.TotalSeconds}";
        app.MapGet(pattern, (string name, HttpContext context) => files.Serve(name, context, cache));
    }

    private IResult Serve(string name, HttpContext context, string cache)
    {
        if (_contents.GetOrAdd(name, key => new(() => Read(key))).Value is not { } content)
            return Results.NotFound();
        var headers = context.Response.Headers;
        headers.CacheControl = cache;
        headers.Vary = "Accept-Encoding";
        headers.ETag = content.Tag;
        if (context.Request.Headers.IfNoneMatch == content.Tag)
            return Results.StatusCode(StatusCodes.Status304NotModified);
        if (!context.Request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.OrdinalIgnoreCase))
            return Results.Bytes(content.Plain, _type);
        headers.ContentEncoding = "br";
        return Results.Bytes(content.Brotli, _type);
    }

    private Content? Read(string name)
    {
        using var stream = _assembly.GetManifestResourceStream(_prefix + name);
        if (stream is null)
            return null;
        var plain = new byte[stream.Length];
        stream.ReadExactly(plain);
        using var packed = new MemoryStream();
        using (var brotli = new BrotliStream(packed, CompressionLevel.Optimal))
            brotli.Write(plain);
        return new(plain, packed.ToArray(), $"\"{Convert.ToHexStringLower(SHA256.HashData(plain))[..16]}\"");
    }

    private sealed record Content(byte[] Plain, byte[] Brotli, string Tag);
}
