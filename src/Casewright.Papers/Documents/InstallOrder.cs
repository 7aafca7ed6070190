using Casewright.Model.Design;

namespace Casewright.Papers.Documents;

/// <summary>The order in which a run is set and fitted (common practice, no source).</summary>
internal static class InstallOrder
{
    /// <summary>The steps for a run with these cases, the lowest tier first.</summary>
    public static IEnumerable<string> Of(Run run, IReadOnlyList<string> cases)
    {
        yield return "Clear the room. Take off or cut back skirting and cornice where the run stands; mark the level line, the studs, wires and pipes.";
        if (run.Base.Kind == BaseKind.Plinth)
            yield return "Set the base: full height at the highest floor point, shims under every rung, level along and across, then fix it.";
        else
            yield return "Mark the level of the case bottoms on the wall; lay out shims for every upright, none at the highest floor point.";
        yield return cases.Count == 1
            ? $"Stand {cases[0]} up and set it plumb. Do not let go of it before it is fixed."
            : $"Stand up the tightest case first, then outward: {string.Join(", ", cases)}. Do not let go of a case before it is fixed.";
        if (cases.Count > 1)
            yield return "Clamp the fronts flush, join neighbours with screws above and below each splice.";
        yield return "Pack out behind the nailers, then screw through them into the studs: at least two fixings at the top of every tall case.";
        if (run.FaceFrame?.JointStile is not null)
            yield return "Glue the face frame, made up and square, over all the cases; flush it when the glue holds.";
        if (run.Left.Lipping?.Rear is not null || run.Right.Lipping?.Rear is not null)
            yield return "Before a lipped side goes back for good, plane its rear lipping to the wall, from the table or template.";
        if (run.Left.Kind == EndKind.Wall || run.Right.Kind == EndKind.Wall || run.Left.Panel is not null || run.Right.Panel is not null)
            yield return "Scribe fillers and end panels: mark from table or template, cut proud, plane to fit, fix.";
        if (run.Base.Kind is BaseKind.Plinth or BaseKind.SidesToFloor)
            yield return "Scribe and fix the toe face.";
        if (run.Base.Mould is not null)
            yield return "Scribe the base mould to the floor; mitre it round finished ends, long and short points as on the part list, and fix it to the base only.";
        if (run.Base.LightRail is not null)
            yield return "Fit the light rail under the front, its mitres tight, screwed up through the bottoms.";
        if (run.Head.Crown is not null)
            yield return "Fit the crown last, coped or mitred to what is there.";
        yield return "Put in the shelves, touch up, clean. Hand over: what each shelf carries, and that the fixings must stay.";
    }
}
