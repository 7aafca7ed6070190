using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Loose tenons: only in methods that have them, enough of them, of the shop's size, in order from the reference edge, away from the
/// edges and from each other, with wood left on both faces and depth for the glue, and in nobody's groove or hole.
/// </summary>
internal sealed class TenonsFit : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        evidence.Joints().SelectMany(joint => Splice(evidence, joint.Splice, joint.Part));

    private static IEnumerable<Problem> Splice(Evidence evidence, Splice splice, Part part)
    {
        var place = $"splices[{splice.Id}].tenons";
        if (!Practice.HasTenons(splice.Method))
            return splice.Tenons.Count == 0 ? [] : [new Problem(place, $"{splice.Method} has no tenons.", $"{splice.Tenons.Count}", "none")];

        var least = part.Width >= Practice.TwoTenonsFrom ? 2 : 1;
        if (splice.Tenons.Count < least)
            return [new Problem(place, "There are too few tenons for the width.", $"{splice.Tenons.Count}", $"at least {least}")];

        return splice.Tenons.SelectMany((tenon, i) => Tenon(evidence, splice, part, tenon, i)).Concat(Neighbours(splice));
    }

    private static IEnumerable<Problem> Tenon(Evidence evidence, Splice splice, Part part, Tenon tenon, int index)
    {
        var place = $"splices[{splice.Id}].tenons[{index + 1}]";
        return Size(evidence, place, tenon)
            .Concat(Depth(place, tenon))
            .Concat(Play(place, tenon, isFirst: index == 0))
            .Concat(Edges(place, tenon, part))
            .Concat(Faces(place, tenon, part))
            .Concat(Machining(place, splice, tenon, part));
    }

    private static IEnumerable<Problem> Size(Evidence evidence, string place, Tenon tenon)
    {
        var rules = evidence.Job.Shop.Splicing;
        if (tenon.Width != rules.TenonWidth)
            yield return new($"{place}.width", "The tenon is not the shop's.", $"{tenon.Width}", $"{rules.TenonWidth}");
        if (tenon.Length != 2 * rules.TenonEmbedment)
            yield return new($"{place}.length", "The tenon is not twice the shop's depth long.", $"{tenon.Length}", $"{2 * rules.TenonEmbedment}");
    }

    private static IEnumerable<Problem> Depth(string place, Tenon tenon)
    {
        var half = tenon.Length / 2;
        if (tenon.MortiseDepth <= half)
            yield return new($"{place}.mortiseDepth", "The mortise leaves no room for glue at its bottom.", $"{tenon.MortiseDepth}", $"more than {half}");
        else if (tenon.MortiseDepth > half + Practice.MostGlueRoom)
            yield return new($"{place}.mortiseDepth", "The mortise is deeper than it need be.", $"{tenon.MortiseDepth}", $"at most {half + Practice.MostGlueRoom}");
    }

    private static IEnumerable<Problem> Play(string place, Tenon tenon, bool isFirst)
    {
        if (isFirst && tenon.Play != Length.Zero)
            yield return new($"{place}.play", "The first tenon places the joint and must be tight.", $"{tenon.Play}", "0 mm");
        if (tenon.Play > Practice.MostPlay)
            yield return new($"{place}.play", "The mortise is too wide for its tenon.", $"{tenon.Play}", $"at most {Practice.MostPlay}");
    }

    private static IEnumerable<Problem> Edges(string place, Tenon tenon, Part part)
    {
        var least = part.Width >= Practice.TwoTenonsFrom
            ? Practice.TenonToEdge
            : ((tenon.Width + tenon.Play) / 2) + Practice.WoodBesideMortise;
        if (tenon.Offset < least || part.Width - tenon.Offset < least)
            yield return new($"{place}.offset", "The tenon comes too near an edge.", $"{tenon.Offset} in a width of {part.Width}", $"at least {least} from both edges");
    }

    private static IEnumerable<Problem> Faces(string place, Tenon tenon, Part part)
    {
        var half = tenon.Thickness / 2;
        var front = tenon.Depth - half;
        var rear = part.Thickness - tenon.Depth - half;
        if (front * 4 < part.Thickness || rear * 4 < part.Thickness)
            yield return new($"{place}.depth", "The mortise leaves too little wood to a face.", $"{front} and {rear}", $"a quarter of {part.Thickness} on each face");
    }

    private static IEnumerable<Problem> Machining(string place, Splice splice, Tenon tenon, Part part)
    {
        var mortise = Mortise.Of(splice, tenon);
        return from machining in part.Machining
               where mortise.Meets(machining, part)
               select new Problem(place, $"The mortise runs into other work on the part ({machining.For}).", $"{machining.GetType().Name}", "wood all round it");
    }

    private static IEnumerable<Problem> Neighbours(Splice splice)
    {
        for (var i = 1; i < splice.Tenons.Count; i++)
        {
            var (low, high) = (splice.Tenons[i - 1], splice.Tenons[i]);
            var wood = high.Offset - low.Offset - ((high.Width + high.Play + low.Width + low.Play) / 2);
            if (wood < Practice.WoodBesideMortise)
            {
                yield return new(
                    $"splices[{splice.Id}].tenons[{i + 1}].offset",
                    "Two tenons overlap, stand too close, or are not in order from the reference edge.",
                    $"{low.Offset} and {high.Offset}",
                    $"at least {Practice.WoodBesideMortise} of wood between their mortises");
            }
        }
    }
}
