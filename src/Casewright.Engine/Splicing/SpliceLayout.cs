using System.Globalization;
using Casewright.Engine.Splicing.Keying;
using Casewright.Engine.Splicing.Methods;
using Casewright.Engine.Splicing.Options;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing;

/// <summary>
/// Lays out every splice of a job: tenons and connectors, keyed so that no wrong assembly closes, pair letters, marks and holding.
/// Of two pieces, the end at the head of one meets the end at the foot of the other; two like ends put head to head make a part of
/// the wrong length and are not kept apart.
/// </summary>
/// <param name="Splices">The splices, in the order of the parts and from the reference end.</param>
/// <param name="Findings">Joints that could not be keyed.</param>
public sealed record SpliceLayout(ValueList<Splice> Splices, ValueList<Finding> Findings)
{
    private static readonly Length s_markRoom = Length.FromMillimetres(25);

    /// <summary>Lays out the joints of all parts.</summary>
    /// <param name="job">The job.</param>
    /// <param name="casework">Its casework.</param>
    /// <param name="parts">Every part with its option, in the order of the casework.</param>
    public static SpliceLayout Of(Job job, Casework casework, IEnumerable<JointedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        ArgumentNullException.ThrowIfNull(parts);
        var book = new KeyBook(job.Shop.Splicing, job.Units);
        var finder = new SpliceRoomFinder(job, casework);
        var drafts = parts.SelectMany(jointed => jointed.Option.Joints.Index().Select(j => new Draft(jointed, j.Index, j.Item, KeyOf(book, jointed, j.Index)))).ToArray();
        ValueList<Splice> splices = [.. drafts.Index().Select(d => Splice(job.Shop.Splicing, finder, d.Item, PairLetters.Of(d.Index)))];
        return new(splices, [.. splices.Where(s => s.KeyMismatch < JointPractice.LeastMismatch).Select(s => NotKeyed(s, job.Units))]);
    }

    private static KeyBook.Key? KeyOf(KeyBook book, JointedPart jointed, int joint)
    {
        if (jointed.Option.Method is not (SpliceMethod.LooseTenons or SpliceMethod.TenonsAndConnectors))
            return null;
        var identity = KeyIdentity.Of(jointed.Part, jointed.Option.Joints, joint, jointed.Option.Method.Value);
        return book.For(identity, jointed.Part, jointed.Option.Joints[joint]);
    }

    private static Splice Splice(SpliceRules rules, SpliceRoomFinder finder, Draft draft, string letter)
    {
        var (part, option) = (draft.Jointed.Part, draft.Jointed.Option);
        var technique = SpliceTechniques.Of(option.Method!.Value);
        var connectors = draft.Key?.Pattern.Connectors ?? [];
        return new Splice
        {
            Id = string.Create(CultureInfo.InvariantCulture, $"{part.Id}/{draft.Number + 1}"),
            Part = part.Id,
            Position = draft.Position,
            Method = technique.Method,
            Consumes = option.Pieces[draft.Number].AllowanceEnd + option.Pieces[draft.Number + 1].AllowanceStart,
            AccessFace = technique.AccessFace(part),
            Tenons = draft.Key is { } key ? Tenons(key, rules) : [],
            Connectors = [.. connectors.Select(offset => new DrawConnector(offset))],
            Holding = technique.Holding(part),
            PairLetter = letter,
            KeyClass = draft.Key?.Name ?? "",
            KeyMismatch = draft.Key?.Mismatch,
            MarkOffset = Mark(part.Width, connectors, draft.Key?.Pattern.Tenons ?? []),
            SightLine = draft.Jointed.KeepsLine ? Zones.PartAxis.ToRoom(part, draft.Position) : null,
            CoveredBy = technique.Method == SpliceMethod.CoveredButt ? finder.CarrierAt(part, draft.Position) : null,
        };
    }

    private static ValueList<Tenon> Tenons(KeyBook.Key key, SpliceRules rules) =>
    [
        .. key.Pattern.Tenons.Index().Select(t => new Tenon(
            t.Item,
            key.Size.Depth,
            key.Size.Thickness,
            rules.TenonWidth,
            rules.TenonEmbedment * 2,
            rules.TenonEmbedment + JointPractice.MortiseBeyondTenon,
            t.Index == 0 ? Length.Zero : JointPractice.Play)),
    ];

    /// <summary>
    /// The middle of the widest stretch between edges, connectors and tenons, so that the triangle crosses no hardware on the card
    /// either; where that comes too near to a connector's hole, of the widest between edges and connectors. The first of equal ones.
    /// </summary>
    private static Length Mark(Length width, ValueList<Length> connectors, IEnumerable<Length> tenons)
    {
        var clear = MiddleOfWidest(width, connectors.Concat(tenons));
        var nearest = connectors.Select(offset => (offset - clear).Abs()).Append(width).Min();
        return nearest >= s_markRoom ? clear : MiddleOfWidest(width, connectors);
    }

    private static Length MiddleOfWidest(Length width, IEnumerable<Length> holes)
    {
        Length[] borders = [Length.Zero, .. holes.Order(), width];
        var widest = borders.Zip(borders.Skip(1)).OrderByDescending(gap => gap.Second - gap.First).First();
        var middle = (widest.First + widest.Second) / 2;
        return width > s_markRoom * 2 ? middle.RoundTo(Length.FromMillimetres(1)) : middle;
    }

    private static Finding NotKeyed(Splice splice, UnitSystem units) => new()
    {
        Check = "splice-key",
        Severity = Severity.Caution,
        Subject = splice.Id,
        Message = $"Joint {splice.Id} is too narrow for a key of its own: in some wrong assembly its mortises are off by only {Words.Of(splice.KeyMismatch!.Value, units)}.",
        Value = (double)splice.KeyMismatch!.Value.Millimetres,
        Limit = (double)JointPractice.LeastMismatch.Millimetres,
        Unit = "mm",
        Formula = "least over wrong assemblies of the largest distance between mortises",
        Source = "Geometry of the mortises; the limit is three times what their play lets pass",
        Standing = Standing.Judgement,
        Advice = "Go by pair letter and match triangle, and mark hand and foot on both pieces before mortising.",
    };

    private sealed record Draft(JointedPart Jointed, int Number, Length Position, KeyBook.Key? Key);
}
