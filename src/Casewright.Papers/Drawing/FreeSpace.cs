namespace Casewright.Papers.Drawing;

/// <summary>Keeps account of what is taken on a drawing, so that labels find a place where they cover nothing.</summary>
public sealed class FreeSpace
{
    private readonly List<Box> _taken = [];

    /// <summary>Marks a box as taken.</summary>
    public void Take(Box box) => _taken.Add(box);

    /// <summary>Whether nothing taken reaches into the box.</summary>
    public bool IsFree(Box box) => !_taken.Any(taken => taken.Overlaps(box));

    /// <summary>Takes the first of some boxes that is free; null when none is.</summary>
    public Box? TakeFirst(IEnumerable<Box> candidates)
    {
        foreach (var box in candidates)
        {
            if (!IsFree(box))
                continue;
            Take(box);
            return box;
        }

        return null;
    }
}
