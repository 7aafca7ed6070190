namespace Casewright.Engine.Cutting.Search;

/// <summary>Random numbers that are the same on every machine and in every version (xorshift64*).</summary>
internal sealed class SearchRandom(int seed)
{
    private ulong _state = Mix((ulong)(uint)seed + 0x9E3779B97F4A7C15UL);

    public ulong Next()
    {
        _state ^= _state >> 12;
        _state ^= _state << 25;
        _state ^= _state >> 27;
        return _state * 0x2545F4914F6CDD1DUL;
    }

    /// <summary>A number from 0 to below <paramref name="limit"/>.</summary>
    public int Next(int limit) => (int)(((Next() >> 32) * (ulong)limit) >> 32);

    public bool Chance(double probability) => (Next() >> 11) * (1.0 / (1UL << 53)) < probability;

    // A seed of few bits must not start near the zero state, which the generator cannot leave.
    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return (z ^ (z >> 31)) | 1UL;
    }
}
