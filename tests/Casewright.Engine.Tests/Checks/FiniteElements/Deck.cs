using System.Globalization;
using System.Text;

namespace Casewright.Engine.Tests.Checks.FiniteElements;

/// <summary>Nine constants of an orthotropic material, N/mm².</summary>
internal sealed record Orthotropic(double E1, double E2, double E3, double Nu12, double Nu13, double Nu23, double G12, double G13, double G23);

/// <summary>An input deck for one linear static step.</summary>
internal sealed class Deck
{
    private readonly StringBuilder _model = new();
    private readonly StringBuilder _fixed = new();
    private readonly StringBuilder _loads = new();
    private readonly StringBuilder _prints = new();

    public Deck(BrickMesh mesh)
    {
        _model.AppendLine("*NODE, NSET=NALL");
        for (var n = 0; n < mesh.Nodes.Count; n++)
            _model.AppendLine(Text($"{n + 1}, {mesh.Nodes[n].X:0.000000}, {mesh.Nodes[n].Y:0.000000}, {mesh.Nodes[n].Z:0.000000}"));
        foreach (var set in mesh.Elements.GroupBy(e => e.Set))
        {
            _model.AppendLine($"*ELEMENT, TYPE=C3D20R, ELSET={set.Key}");
            foreach (var element in set)
            {
                _model.AppendLine($"{element.Id}, {string.Join(", ", element.Nodes[..10])},");
                _model.AppendLine(string.Join(", ", element.Nodes[10..]));
            }
        }
    }

    public Deck Material(string set, Orthotropic m)
    {
        _model.AppendLine($"*MATERIAL, NAME=M{set}").AppendLine("*ELASTIC, TYPE=ENGINEERING CONSTANTS");
        _model.AppendLine(Text($"{m.E1}, {m.E2}, {m.E3}, {m.Nu12}, {m.Nu13}, {m.Nu23}, {m.G12}, {m.G13},"));
        _model.AppendLine(Text($"{m.G23}, 293."));
        _model.AppendLine($"*SOLID SECTION, ELSET={set}, MATERIAL=M{set}");
        return this;
    }

    public Deck Nodes(string set, IReadOnlyList<int> ids)
    {
        _model.AppendLine($"*NSET, NSET={set}");
        foreach (var chunk in ids.Chunk(12))
            _model.AppendLine(string.Join(", ", chunk) + ",");
        return this;
    }

    /// <summary>Holds a direction (1 x, 2 y, 3 z) of a set of nodes.</summary>
    public Deck Hold(string set, int direction)
    {
        _fixed.AppendLine($"{set}, {direction}, {direction}");
        return this;
    }

    /// <summary>Pressure on a face of an element: 2 its top, 4 its far x side.</summary>
    public Deck Pressure(int element, int face, double pressure)
    {
        _loads.AppendLine(Text($"{element}, P{face}, {pressure:R}"));
        return this;
    }

    public Deck Print(string set, string what)
    {
        _prints.AppendLine($"*NODE PRINT, NSET={set}").AppendLine(what);
        return this;
    }

    public override string ToString() =>
        "*HEADING\nshelf\n" + _model + "*BOUNDARY\n" + _fixed + "*STEP\n*STATIC\n*DLOAD\n" + _loads + _prints + "*END STEP\n";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
