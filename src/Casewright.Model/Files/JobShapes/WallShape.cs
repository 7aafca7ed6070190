using Casewright.Model.Files.Shapes;
using Casewright.Model.Site;

namespace Casewright.Model.Files.JobShapes;

/// <summary>A wall in a job file.</summary>
internal static class WallShape
{
    public static RecordShape<Wall> Shape { get; } = new("wall", "A wall that a run stands against: stated, surveyed or both.", f => new()
    {
        Id = f.Required("id", w => w.Id, TextShape.Id, "Short id; every wall has its own."),
        Name = f.Required("name", w => w.Name, TextShape.Words, "Name as people say it."),
        StatedWidth = f.OptionalValue(
            "width", w => w.StatedWidth, LengthShape.Between(100, 30_000), "Tightest width between its ends; left out, the survey's."),
        StatedHeight = f.OptionalValue(
            "height",
            w => w.StatedHeight,
            LengthShape.Between(300, 15_000),
            "Lowest ceiling above the highest floor point; left out, the survey's."),
        Survey = f.Optional("survey", w => w.Survey, SurveyShapes.Survey, "The readings of the wall, as tape and laser gave them."),
    })
    {
        Declares = _ => (Ids.Walls, "wall"),
        Rules = [PresenceRule.AtLeastOne("width", "survey"), PresenceRule.AtLeastOne("height", "survey")],
    };
}
