using Casewright.Model.Cutting;
using Casewright.Model.Parts;

namespace Casewright.App.Web.Components;

/// <summary>What is chosen in one window: a run, case, part, piece, splice or sheet. Every step shows the same choice.</summary>
public sealed class Selection
{
    /// <summary>Raised after the choice has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>Id of what is chosen; null for nothing.</summary>
    public string? Id { get; private set; }

    /// <summary>Chooses something; null lets go.</summary>
    public void Set(string? id)
    {
        if (id == Id)
            return;
        Id = id;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Chooses the part after or before the one chosen, in the order of the part list: within its case, or all through the job when no case is chosen.</summary>
    /// <param name="casework">The layout.</param>
    /// <param name="by">1 for the next part, −1 for the one before.</param>
    public void Step(Casework? casework, int by)
    {
        if (casework is null)
            return;
        var (part, box) = (PartOf(casework), CaseOf(casework));
        var among = casework.Parts.Where(p => box is null ? part is null || p.Case == part.Case : p.Case == box.Id).ToList();
        if (among.Count == 0)
            return;
        var at = part is null ? -1 : among.FindIndex(p => p.Id == part.Id);
        Set(among[at < 0 ? (by > 0 ? 0 : among.Count - 1) : (at + by + among.Count) % among.Count].Id);
    }

    /// <summary>The part chosen, itself or through one of its pieces or splices; null when none is.</summary>
    public Part? PartOf(Casework? casework) => Id is { } id ? casework?.Parts.FirstOrDefault(p => IsOrHolds(p.Id, id)) : null;

    /// <summary>The case chosen, itself or through a part; null when none is.</summary>
    public CaseBox? CaseOf(Casework? casework) => Id is { } id ? casework?.Cases.FirstOrDefault(c => c.Id == (PartOf(casework)?.Case ?? id)) : null;

    /// <summary>Whether a piece is chosen, itself, through its part or through its case.</summary>
    public bool Holds(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return Id is { } id && (id == piece.Id || id == piece.Part || IsOrHolds(piece.Part, id) && !IsPieceId(id));
    }

    /// <summary>Whether an id is <paramref name="owner"/> or something in it, such as C3-L/a in C3-L.</summary>
    public static bool IsOrHolds(string owner, string id) => id == owner || (id.Length > owner.Length && id[owner.Length] == '/' && id.StartsWith(owner, StringComparison.Ordinal));

    private static bool IsPieceId(string id) => id.LastIndexOf('/') is >= 0 and var at && at + 1 < id.Length && char.IsLetter(id[at + 1]);
}
