using Casewright.Engine.Splicing.Keying;
using Casewright.Engine.Splicing.Methods;
using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Options;

/// <summary>Finds the methods and places in which an overlong part may be joined.</summary>
internal sealed class SpliceRoomFinder
{
    private readonly Job _job;
    private readonly Surroundings _surroundings;
    private readonly Func<Length, string> _words;
    private readonly Dictionary<string, (Run Run, int Index)> _runs;
    private readonly HashSet<(string Case, Length Height)> _bandJoints = [];

    public SpliceRoomFinder(Job job, Casework casework)
    {
        _job = job;
        _surroundings = new Surroundings(casework);
        _words = Words.In(job.Units);
        _runs = job.Runs.Index().ToDictionary(r => r.Item.Id, r => (r.Item, r.Index), StringComparer.Ordinal);
        foreach (var back in casework.Parts.Where(p => p.Role == PartRole.Back && p.IsUpright()))
        {
            foreach (var band in _surroundings.Bands(back))
                _bandJoints.Add((back.Case, back.ToRoom(band.Middle)));
        }
    }

    /// <summary>The run of a part, and its place in the job.</summary>
    public (Run Run, int Index) RunOf(Part part) => _runs[part.Run];

    /// <summary>What braces an upright or carries a level part.</summary>
    public IReadOnlyList<Support> Braces(Part part) => _surroundings.Braces(part);

    /// <summary>The part that carries or covers a joint of this part there; null when none does.</summary>
    public string? CarrierAt(Part part, Length joint) =>
        CarriedJoints.Of(part, _surroundings, _job.Shop.Splicing).Where(c => c.Place.Contains(joint)).Select(c => c.By).FirstOrDefault();

    /// <summary>The part with the rooms of its methods, or why there are none.</summary>
    /// <param name="part">A part longer than the usual stock.</param>
    /// <param name="longest">Lengths that its pieces can have; at least one.</param>
    /// <param name="failure">Why it cannot be spliced; null when it can.</param>
    public OverlongPart? Find(Part part, ValueList<Length> longest, out PartFailure? failure)
    {
        var (run, index) = RunOf(part);
        failure = Forbidden(part, run, index);
        if (failure is not null)
            return null;
        var objections = new List<string>();
        var shortest = Length.Max(_job.Shop.Splicing.ShortestPiece, DividedUp(part.Length, _job.Shop.Splicing.ShortestShare));
        var rooms = Rooms(part, run, shortest, objections);
        if (rooms.Count == 0)
        {
            failure = NoMethod(part, run, index, objections);
            return null;
        }

        return new OverlongPart { Part = part, Run = run, Rooms = rooms, Longest = longest, ShortestPiece = shortest, BestSpots = BestSpots(part) };
    }

    /// <summary>Every zone of a part for one method.</summary>
    public IEnumerable<ForbiddenZone> Zones(Part part, SpliceMethod method)
    {
        var technique = SpliceTechniques.Of(method);
        var zones = MachiningZones.Of(part, technique, _job.Shop.Splicing);
        if (method == SpliceMethod.CoveredButt || CarriedJoints.IsTrim(part))
            return zones;
        return zones.Concat(BracingZones.Of(part, _surroundings.Braces(part), technique, _job.Shop)).Concat(BackJoints(part));
    }

    private ValueList<JointRoom> Rooms(Part part, Run run, Length shortest, List<string> objections)
    {
        if (CarriedJoints.Suit(part))
        {
            var carried = CarriedRoom(part, shortest);
            if (carried.Allowed.Count > 0)
                return [carried];
            if (part.Role == PartRole.Back)
                objections.Add("no fixed shelf or trim band across the whole back can carry a joint at a place where both pieces are long enough");
            else
                objections.Add("no upright stands behind it where a butt joint could lie, and strips are otherwise joined by a scarf alone");
        }

        var rooms = new List<JointRoom>();
        foreach (var technique in Techniques(part, run))
        {
            if (WhyNot(part, technique) is { } why)
                objections.Add(why);
            else
                rooms.Add(Room(part, technique, shortest));
        }

        return rooms.ToValueList();
    }

    private IEnumerable<SpliceTechnique> Techniques(Part part, Run run)
    {
        if (CarriedJoints.IsTrim(part))
            return _job.Shop.Splicing.Methods.Where(m => m.Method == SpliceMethod.Scarf).Select(m => SpliceTechniques.Of(m.Method)).Take(1);
        var methods = run.Splices.Method is { } only ? [only] : _job.Shop.Splicing.Methods.Select(m => m.Method);
        return methods.Where(m => m != SpliceMethod.CoveredButt).Distinct().Select(SpliceTechniques.Of);
    }

    private string? WhyNot(Part part, SpliceTechnique technique)
    {
        var why = technique.WhyNot(part, _job.Stock.Material(part.Material).Nominal, _words);
        if (why is not null || technique.Method is not (SpliceMethod.LooseTenons or SpliceMethod.TenonsAndConnectors))
            return why;
        return KeyPatterns.Exist(TenonRoom.Along(part, _job.Shop.Splicing), technique.Method, _job.Units)
            ? null
            : $"{technique.Name} need more room across the part than {_words(part.Width)} leave beside its edges, grooves and rabbets";
    }

    private JointRoom Room(Part part, SpliceTechnique technique, Length shortest)
    {
        var whole = new Stretch(shortest, part.Length - shortest);
        var allowed = whole.From > whole.To ? [] : Stretches.Without(whole, Zones(part, technique.Method));
        return JointRoom.Of(technique, allowed, part.Thickness, _job.Shop.Splicing);
    }

    private JointRoom CarriedRoom(Part part, Length shortest)
    {
        var technique = SpliceTechniques.Of(SpliceMethod.CoveredButt);
        var places = Stretches.Merged(CarriedJoints.Of(part, _surroundings, _job.Shop.Splicing).Select(c => c.Place));
        return JointRoom.Of(technique, Stretches.Common(places, Room(part, technique, shortest).Allowed), part.Thickness, _job.Shop.Splicing);
    }

    /// <summary>A back joined under a band has nothing but the band behind its joint: the uprights of its case are not joined there too.</summary>
    private IEnumerable<ForbiddenZone> BackJoints(Part part)
    {
        if (part.Role is not (PartRole.Side or PartRole.Partition) || !part.IsUpright())
            yield break;
        var clear = _job.Shop.Splicing.ClearOfDado;
        foreach (var height in _bandJoints.Where(j => j.Case == part.Case).Select(j => j.Height).Order())
        {
            var x = part.FromRoom(height);
            yield return new ForbiddenZone(x - clear, x + clear, "the line of the back's joint under the trim band");
        }
    }

    private ValueList<Length> BestSpots(Part part) => !part.IsUpright() || CarriedJoints.Suit(part)
        ? []
        : [.. _surroundings.Braces(part).Where(b => b.Part.Role == PartRole.FixedShelf).Select(b => part.ToRoom(b.Covers).From - _job.Shop.Splicing.BelowShelf).Distinct()];

    private PartFailure? Forbidden(Part part, Run run, int index)
    {
        var outrun = $"{_words(part.Length)} long, longer than the stock takes";
        if (!run.Splices.Allowed)
        {
            return new PartFailure(part, $"runs[{index}].splices.allowed", $"{outrun}, and this run may not be spliced", "false",
                "true, longer stock of the material, or a part that fits its sheet");
        }

        return _job.Shop.Splicing.MostJoints > 0 ? null : new PartFailure(part, "shop.splicing.mostJoints", $"{outrun}, and the shop allows no joints", "0",
            "1 or more, longer stock of the material, or a part that fits its sheet");
    }

    private PartFailure NoMethod(Part part, Run run, int index, List<string> objections)
    {
        var reasons = objections.Count == 0 ? "the shop is set up for no method" : string.Join("; ", objections);
        var reason = $"{_words(part.Length)} long, longer than the stock takes, and no method can join it: {reasons}";
        if (part.Role == PartRole.Back)
            return new PartFailure(part, $"runs[{index}].back", reason, "", "a fixed shelf in every bay at one height, a trim band, or longer stock");
        return run.Splices.Method is { } only && !CarriedJoints.IsTrim(part)
            ? new PartFailure(part, $"runs[{index}].splices.method", reason, only.ToString(), "another method, none stated, or longer stock")
            : new PartFailure(part, "shop.splicing.methods", reason, string.Join(", ", _job.Shop.Splicing.Methods.Select(m => m.Method)),
                "a method that suits the part, or longer stock of its material");
    }

    private static Length DividedUp(Length length, int share) =>
        Length.FromNanometres((length.Nanometres + share - 1) / share);
}
