using Casewright.Model.Files.Shapes;
using Casewright.Model.Site;

namespace Casewright.Model.Files.JobShapes;

/// <summary>A wall in a job file.</summary>
internal static class WallShape
{
    public static RecordShape<Wall> Shape { get; } = new("wall", "A wall that a run stands against.", f => new()
    {
        Id = f.Required("id", w => w.Id, TextShape.Id, "Short id; every wall has its own."),
        Name = f.Required("name", w => w.Name, TextShape.Words, "Name as people say it."),
        Width = f.Required(
            "width", w => w.Width, LengthShape.Between(100, 30_000), "Tightest width between its ends."),
        Height = f.Required(
            "height",
            w => w.Height,
            LengthShape.Between(300, 15_000),
            "Lowest ceiling above the highest floor point."),
    })
    {
        Declares = _ => (Ids.Walls, "wall"),
    };
}
