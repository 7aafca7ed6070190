using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>The best place found for a piece.</summary>
internal struct Insertion
{
    public double Cost;
    public int Bin;
    public int Slot;
    public Placement Placement;

    public static Insertion None => new() { Cost = double.PositiveInfinity, Bin = -1 };
}

/// <summary>
/// Finds the free end where a piece leaves the most useful rests. The worth of a rest is the square of its area, so
/// one large rest is worth more than two of half the size, and a tight place costs least.
/// </summary>
internal sealed class InsertionFinder(ReducedProblem problem, CutLimits limits, SearchRandom random, double blink)
{
    private readonly uint _blink = (uint)(blink * uint.MaxValue);

    /// <summary>Free ends looked at so far.</summary>
    public long Looked { get; private set; }

    public void Look(Bin bin, int index, int kindIndex, ref Insertion best)
    {
        var kind = problem.Kinds[kindIndex];
        var slots = bin.Slots;
        Looked += slots.Length;
        for (var s = 0; s < slots.Length; s++)
        {
            ref readonly var slot = ref slots[s];
            if (kind.SizeX <= slot.SizeX && kind.SizeY <= slot.SizeY && !Blinks())
                Weigh(in slot, s, index, kindIndex, kind.SizeX, kind.SizeY, turned: false, ref best);
            if (kind.MayTurn && kind.SizeY <= slot.SizeX && kind.SizeX <= slot.SizeY && !Blinks())
                Weigh(in slot, s, index, kindIndex, kind.SizeY, kind.SizeX, turned: true, ref best);
        }
    }

    private bool Blinks() => _blink > 0 && (uint)(random.Next() >> 32) < _blink;

    private void Weigh(in FreeSlot slot, int slotIndex, int bin, int kind, long sizeX, long sizeY, bool turned, ref Insertion best)
    {
        var onX = slot.Axis == Axis.X;
        long free = onX ? slot.SizeX : slot.SizeY, cross = onX ? slot.SizeY : slot.SizeX;
        long along = onX ? sizeX : sizeY, across = onX ? sizeY : sizeX;
        var whole = (double)free * cross;
        var level = slot.Level;
        var other = (byte)(1 - slot.Axis);
        if (along == free && across == cross)
        {
            Offer(whole * whole, across: false, ref best);
            return;
        }

        if (across == cross || limits.MayCut(other, onX ? along : slot.SizeX))
        {
            var end = (double)(free - along) * cross;
            var side = limits.Usable(level + 1) ? (double)along * (cross - across) : 0;
            Offer((whole * whole) - (end * end) - (side * side), across: false, ref best);
        }

        if (along < free && across < cross && limits.Usable(level + 1) && limits.MayCut(other, slot.SizeX))
        {
            var side = (double)free * (cross - across);
            var end = limits.Usable(level + 2) ? (double)(free - along) * across : 0;
            Offer((whole * whole) - (end * end) - (side * side), across: true, ref best);
        }

        void Offer(double cost, bool across, ref Insertion best)
        {
            if (cost < best.Cost)
                best = new Insertion { Cost = cost, Bin = bin, Slot = slotIndex, Placement = new Placement(kind, turned, across) };
        }
    }
}
