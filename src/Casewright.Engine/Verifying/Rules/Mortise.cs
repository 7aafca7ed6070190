using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>The room that a tenon's two mortises take out of a part, in part coordinates.</summary>
internal readonly record struct Mortise(Length X0, Length X1, Length Y0, Length Y1, Length Z0, Length Z1)
{
    public static Mortise Of(Splice splice, Tenon tenon)
    {
        var width = tenon.Width + tenon.Play;
        var y = tenon.Offset - (width / 2);
        var z = tenon.Depth - (tenon.Thickness / 2);
        return new(splice.Position - tenon.MortiseDepth, splice.Position + tenon.MortiseDepth, y, y + width, z, z + tenon.Thickness);
    }

    /// <summary>Whether work on the part takes wood out of the same place.</summary>
    public bool Meets(Machining machining, Part part) => machining switch
    {
        Dado dado => Along(dado.X, dado.X + dado.Width) && Across(dado.FromY, dado.ToY) && Into(dado.Face, dado.Depth, part),
        Groove groove => Along(groove.FromX, groove.ToX) && Across(groove.Y, groove.Y + groove.Width) && Into(groove.Face, groove.Depth, part),
        Rabbet rabbet => Meets(rabbet, part),
        PinRow row => Across(row.Y - (row.Diameter / 2), row.Y + (row.Diameter / 2)) && Into(row.Face, row.Depth, part) && MeetsHole(row),
        Notch notch => Along(notch.X, notch.X + notch.LengthX) && Across(notch.Y, notch.Y + notch.LengthY),
        CutOut cutOut => Along(cutOut.X, cutOut.X + cutOut.LengthX) && Across(cutOut.Y, cutOut.Y + cutOut.LengthY),
        _ => false,
    };

    private bool Meets(Rabbet rabbet, Part part) => Into(rabbet.Face, rabbet.Depth, part) && rabbet.Edge switch
    {
        PartEdge.Reference => Across(Length.Zero, rabbet.Width),
        PartEdge.Opposite => Across(part.Width - rabbet.Width, part.Width),
        PartEdge.Start => Along(Length.Zero, rabbet.Width),
        _ => Along(part.Length - rabbet.Width, part.Length),
    };

    private bool MeetsHole(PinRow row)
    {
        for (var i = 0; i < row.Count; i++)
        {
            var x = row.FirstX + (row.Pitch * i);
            if (Along(x - (row.Diameter / 2), x + (row.Diameter / 2)))
                return true;
        }

        return false;
    }

    private bool Along(Length from, Length to) => X0 < to && from < X1;

    private bool Across(Length from, Length to) => Y0 < to && from < Y1;

    private bool Into(Face face, Length depth, Part part) => face == Face.Reference ? Z0 < depth : Z1 > part.Thickness - depth;
}
