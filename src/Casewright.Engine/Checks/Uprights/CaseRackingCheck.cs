using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Uprights;

/// <summary>Sideways stiffness of each case: by its back in shear, or by its uprights bending when there is none.</summary>
public sealed class CaseRackingCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "case-racking",
        "Sideways drift of each loaded case under a small push at the top, before it is fixed to the wall.",
        "P h/(G t w) with a back; P h³/(12 ΣEI) without one; P a share of the weight",
        "Statics; push and limit are our judgement",
        Standing.Judgement)
    {
        Limits =
        [
            new("push as a share of the weight", l => l.SwayShare, 0.025, "", "our judgement", Standing.Judgement),
            new("height over drift", l => l.DriftRatio, 300, "", "our judgement", Standing.Judgement),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.BuiltCases.Select(box => One(context, box));
    }

    private Finding One(CheckContext context, CaseBox box)
    {
        if (UprightLoads.Contents(context, box) is not { } contents)
            return NotChecked(context, box.Id, "nobody has said what the shelves carry.", ShelfLoads.LoadAdvice);
        var push = context.Limits.SwayShare * (contents + UprightLoads.OwnMass(context, box)) * Shelf.Gravity;
        var height = box.Height.Metres;
        var backs = context.PartsOf(box).Where(p => p.Role == PartRole.Back).ToList();
        var drift = backs.Count > 0
            ? Racking.BackDrift(push, height, box.Width.Metres, context.Figures(backs[0]).PanelShearModulus, backs.Min(b => b.Thickness.Metres))
            : Racking.FrameDrift(push, height, UprightStiffness(context, box));
        var limit = height / context.Limits.DriftRatio;
        var say = context.Say;
        return Report(
            context,
            drift > limit ? Severity.Caution : Severity.Pass,
            box.Id,
            $"Case {box.Id} drifts {say.Fine(drift)} sideways under a push of {say.Force(push)}; {say.Fine(limit)} is allowed.",
            new(drift * 1000, limit * 1000, "mm", [new("held square by", backs.Count > 0 ? "its back" : "its uprights bending", ""), new("push", Say.Number(push, 0), "N")]),
            drift > limit ? Advice(context, box, backs.FirstOrDefault(), drift / limit, push) : "");
    }

    private static string Advice(CheckContext context, CaseBox box, Part? back, double over, double push)
    {
        const string Brace = "or brace it with a diagonal until it is screwed to the wall through two nailers.";
        var say = context.Say;
        if (back is not null)
            return $"Use a back {say.AtLeast(back.Thickness.Metres * over)} thick or more, {Brace}";
        var plywood = MaterialTable.For(new() { Id = "back", Name = "back", Kind = MaterialKind.BirchPlywood, Nominal = UsualBack });
        var drift = Racking.BackDrift(push, box.Height.Metres, box.Width.Metres, plywood.PanelShearModulus, UsualBack.Metres);
        return $"Glue and fix in a back, {Brace} With {say.Size(UsualBack)} of plywood it drifts {say.Fine(drift)}.";
    }

    // What most backs are made of: 6 mm.
    private static readonly Length UsualBack = Length.FromMillimetres(6);

    private static double UprightStiffness(CheckContext context, CaseBox box) => context.PartsOf(box)
        .Where(p => p.Role is PartRole.Side or PartRole.Partition)
        .Sum(p => context.Figures(p).Elasticity(alongGrain: true) * new RectangularSection(p.Width.Metres, p.Thickness.Metres).SecondMoment);
}
