using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Casewright.Model.Plans;

namespace Casewright.Model.Files.Source;

/// <summary>
/// Reads JSON text (RFC 8259) with comments and trailing commas into a tree that knows lines and columns.
/// Faulty text gives a problem, whatever the bytes are.
/// </summary>
internal static class SourceReader
{
    /// <summary>Deepest nesting of lists and objects; a job needs about eight.</summary>
    public const int DeepestNesting = 64;

    private static ReadOnlySpan<byte> Utf8Mark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads the tree; on a fault <paramref name="problem"/> says what and where.</summary>
    /// <returns>The tree, or null with a problem.</returns>
    public static SourceNode? Read(ReadOnlySpan<byte> bytes, out Problem? problem)
    {
        problem = Unreadable(bytes);
        if (problem is not null)
            return null;
        var json = bytes.StartsWith(Utf8Mark) ? bytes[Utf8Mark.Length..] : bytes;
        try
        {
            return new Cursor(json).ReadAll();
        }
        catch (JsonException fault)
        {
            problem = SyntaxProblem(json, fault);
            return null;
        }
        catch (FileFaultException fault)
        {
            problem = fault.Problem;
            return null;
        }
    }

    private static Problem? Unreadable(ReadOnlySpan<byte> bytes)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
            return new("", "The file is saved as UTF-16.", "", "text saved as UTF-8");
        if (!Utf8.IsValid(bytes))
            return new("", "The file is no text in UTF-8.", "", "text saved as UTF-8");
        var text = bytes.StartsWith(Utf8Mark) ? bytes[Utf8Mark.Length..] : bytes;
        return text.IndexOfAnyExcept(" \t\r\n"u8) < 0 ? new("", "The file is empty.", "", "a job file, as 'casewright new' writes it") : null;
    }

    private static Problem SyntaxProblem(ReadOnlySpan<byte> json, JsonException fault)
    {
        var start = 0;
        for (var line = fault.LineNumber ?? 0; line > 0; line--)
            start += json[start..].IndexOf((byte)'\n') + 1;
        var rest = json[start..];
        var end = rest.IndexOf((byte)'\n');
        var wholeLine = end < 0 ? rest : rest[..end];
        var offset = (int)Math.Min(fault.BytePositionInLine ?? 0, wholeLine.Length);
        var shown = Encoding.UTF8.GetString(wholeLine[offset..Math.Min(offset + 40, wholeLine.Length)]).Trim('\uFFFD', '\r', ' ', '\t');
        return new(
            "",
            "The text stops being JSON here.",
            shown.Length == 0 ? "the end of the line" : $"'{shown}'",
            "names and texts in double quotes, a comma between fields, every bracket closed, an inch mark inside a text written in or \\\"")
        {
            Line = (int)(fault.LineNumber ?? 0) + 1,
            Column = Encoding.UTF8.GetCharCount(wholeLine[..offset]) + 1,
        };
    }

    /// <summary>A fault that JSON itself does not forbid.</summary>
    private sealed class FileFaultException(Problem problem) : Exception(problem.Message)
    {
        public Problem Problem { get; } = problem;
    }

    private ref struct Cursor
    {
        private readonly ReadOnlySpan<byte> _json;
        private Utf8JsonReader _reader;
        private int _counted;
        private int _line = 1;
        private int _column = 1;

        public Cursor(ReadOnlySpan<byte> json)
        {
            _json = json;
            _reader = new(json, new JsonReaderOptions
            {
                AllowTrailingCommas = true,
                CommentHandling = JsonCommentHandling.Skip,
                MaxDepth = DeepestNesting + 2,
            });
        }

        public SourceNode ReadAll()
        {
            _reader.Read();
            var root = ReadValue();
            _reader.Read();
            return root;
        }

        private SourceNode ReadValue()
        {
            var position = Here();
            return _reader.TokenType switch
            {
                JsonTokenType.StartObject => ReadObject(position),
                JsonTokenType.StartArray => ReadList(position),
                JsonTokenType.String => new SourceText(position, ReadText(position)),
                JsonTokenType.Number => new SourceNumber(position, Encoding.UTF8.GetString(_reader.ValueSpan)),
                JsonTokenType.True or JsonTokenType.False => new SourceFlag(position, _reader.GetBoolean()),
                _ => new SourceNull(position),
            };
        }

        private SourceObject ReadObject(SourcePosition position)
        {
            RefuseTooDeep(position);
            var members = new List<SourceMember>();
            while (_reader.Read() && _reader.TokenType != JsonTokenType.EndObject)
            {
                var at = Here();
                var name = ReadText(at);
                _reader.Read();
                members.Add(new(name, at, ReadValue()));
            }

            return new(position, members);
        }

        private SourceList ReadList(SourcePosition position)
        {
            RefuseTooDeep(position);
            var items = new List<SourceNode>();
            while (_reader.Read() && _reader.TokenType != JsonTokenType.EndArray)
                items.Add(ReadValue());
            return new(position, items);
        }

        private readonly void RefuseTooDeep(SourcePosition position)
        {
            if (_reader.CurrentDepth >= DeepestNesting)
            {
                throw new FileFaultException(new("", "Brackets are nested too deep.", $"more than {DeepestNesting} levels", "the levels of a job file")
                {
                    Line = position.Line,
                    Column = position.Column,
                });
            }
        }

        private readonly string ReadText(SourcePosition position)
        {
            try
            {
                return _reader.GetString() ?? "";
            }
            catch (InvalidOperationException)
            {
                throw new FileFaultException(new("", "The text holds half of a character.", "a lone surrogate escape", "whole characters")
                {
                    Line = position.Line,
                    Column = position.Column,
                });
            }
        }

        /// <summary>Line and column of the present token. Tokens only move on, so every byte is counted once.</summary>
        private SourcePosition Here()
        {
            var target = (int)_reader.TokenStartIndex;
            foreach (var unit in _json[_counted..target])
            {
                if (unit == (byte)'\n')
                {
                    _line++;
                    _column = 1;
                }
                else if ((unit & 0xC0) != 0x80)
                {
                    _column++;
                }
            }

            _counted = target;
            return new(_line, _column);
        }
    }
}
