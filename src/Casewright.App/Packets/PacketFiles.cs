using System.Globalization;
using System.Text;
using Casewright.Model.Collections;
using Casewright.Model.Files;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Schemes;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing.Rendering;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;
using Casewright.Papers.Model3D;
using Casewright.Papers.Spreadsheets;

namespace Casewright.App.Packets;

/// <summary>A file of a packet.</summary>
/// <param name="Name">Its name in the packet folder, with forward slashes.</param>
/// <param name="ContentType">Its media type.</param>
/// <param name="Write">Writes it.</param>
public sealed record PacketFile(string Name, string ContentType, Action<Stream> Write);

/// <summary>The files that a plan is written as.</summary>
public sealed class PacketFiles
{
    private const string Pdf = "application/pdf";

    private static readonly DocumentKind[] s_drawings =
        [DocumentKind.Elevation, DocumentKind.PlanAndSection, DocumentKind.SheetLayouts, DocumentKind.SpliceCards];

    private readonly Plan _plan;
    private readonly PaperSettings _settings;
    private readonly Lazy<Packet> _packet;
    private readonly Lazy<ClientPapers> _client;

    /// <summary>The files of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="paper">Size of paper.</param>
    /// <param name="today">Date of the papers when the job states none.</param>
    /// <param name="calculations">Whether the packet holds a calculation sheet for every stop and caution.</param>
    public PacketFiles(Plan plan, PaperSize paper, DateOnly today, bool calculations = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _plan = plan;
        Date = plan.Job.Date ?? today;
        _settings = new(paper, Date) { Calculations = calculations };
        _packet = new(() => Packet.Of(plan, _settings));
        _client = new(() => ClientPapers.Of(plan, _settings));
    }

    /// <summary>Date of the papers.</summary>
    public DateOnly Date { get; }

    /// <summary>The pages of the packet.</summary>
    public ValueList<Page> Pages => _packet.Value.Pages;

    /// <summary>The papers that go to the client; without pages when there is no price.</summary>
    public ClientPapers Client => _client.Value;

    /// <summary>The paper of a name, letter or a4; null names no size of paper. Without a name, the one that goes with the unit.</summary>
    public static PaperSize? PaperOf(string? name, UnitSystem units) => name switch
    {
        null => units == UnitSystem.Inches ? PaperSize.Letter : PaperSize.A4,
        "letter" => PaperSize.Letter,
        "a4" => PaperSize.A4,
        _ => null,
    };

    /// <summary>All files, the one to open first in front.</summary>
    public IEnumerable<PacketFile> All()
    {
        yield return new("packet.pdf", Pdf, _packet.Value.WritePdf);
        if (Client.Pages.Count > 0)
            yield return new("quote.pdf", Pdf, Client.WritePdf);
        yield return new("plan.json", "application/json", Text(() => PlanFile.Write(_plan)));
        yield return new("parts.csv", "text/csv", Text(() => CsvLists.ToText(PlanLists.Parts(_plan))));
        yield return new("pieces.csv", "text/csv", Text(() => CsvLists.ToText(PlanLists.Pieces(_plan))));
        yield return new("buying.csv", "text/csv", Text(() => CsvLists.ToText(PlanLists.Buying(_plan))));
        yield return new("lists.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", Bytes(() => Workbook.ToBytes(
            [PlanLists.Parts(_plan), PlanLists.Pieces(_plan), PlanLists.Buying(_plan)], _plan.Job.Name, Date.ToDateTime(TimeOnly.MinValue))));
        yield return new("span-tables.pdf", Pdf, stream => Packet.OfSpanTables(_plan, _settings).WritePdf(stream));
        if (TimetableChart.Drawing(_plan) is { } chart)
            yield return new("drawings/timetable.svg", "image/svg+xml", Text(() => SvgRenderer.ToText(chart, SvgOptions.File)));
        yield return new("model.glb", "model/gltf-binary", Bytes(() => GltfModel.ToBytes(_plan)));
        foreach (var (index, page) in Pages.Index().Where(p => s_drawings.Contains(p.Item.Document)))
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"drawings/{index + 1:000}-{Slug(Packet.TitleOf(page.Document))}.svg");
            yield return new(name, "image/svg+xml", Text(() => SvgRenderer.ToText(page.Scene, SvgOptions.File)));
        }

        foreach (var face in FontFace.Embedded.Select(face => FontFace.Of(face.Family, face.Weight)))
            yield return new($"drawings/fonts/{face.FileName}", "font/ttf", stream => stream.Write(face.File.Span));
        yield return new("drawings/fonts/OFL.txt", "text/plain", Text(() => FontFace.Licence));
    }

    /// <summary>The calculation sheets of one check; null when the plan has no finding of it.</summary>
    /// <param name="check">Id of the check, such as shelf-sag.</param>
    public PacketFile? Calculation(string check) => Packet.OfCalculations(_plan, _settings, check) is { } sheets
        ? new($"calculation-{check}.pdf", Pdf, sheets.WritePdf)
        : null;

    /// <summary>The page on which a client chooses among the ways to build the job; null when none was compared.</summary>
    public PacketFile? OfSchemes(ValueList<Scheme> schemes)
    {
        var papers = ClientPapers.OfSchemes(_plan with { Schemes = schemes }, _settings);
        return papers.Pages.Count == 0 ? null : new("schemes.pdf", Pdf, papers.WritePdf);
    }

    /// <summary>Some documents of the packet as one PDF; null when none of them has a page.</summary>
    public PacketFile? Of(IReadOnlySet<DocumentKind> documents)
    {
        ArgumentNullException.ThrowIfNull(documents);
        var chosen = _packet.Value with { Pages = [.. Pages.Where(p => documents.Contains(p.Document))] };
        return chosen.Pages.Count == 0 ? null : new("packet.pdf", "application/pdf", chosen.WritePdf);
    }

    private static string Slug(string title) => title.ToLowerInvariant().Replace(' ', '-');

    private static Action<Stream> Text(Func<string> text) => stream => stream.Write(Encoding.UTF8.GetBytes(text()));

    private static Action<Stream> Bytes(Func<byte[]> bytes) => stream => stream.Write(bytes());
}
