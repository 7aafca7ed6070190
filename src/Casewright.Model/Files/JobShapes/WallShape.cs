using Casewright.Model.Files.Shapes;
using Casewright.Model.Site;

namespace Casewright.Model.Files.JobShapes;

/// <summary>A wall in a job file.</summary>
internal static class WallShape
{
    private static readonly RecordShape<CeilingSlope> s_slope = new("ceilingSlope", "A ceiling that slopes along a wall, as two points on its line.", f => new()
    {
        FromX = f.Required("fromX", s => s.FromX, LengthShape.ZeroOrMore(60_000), "First point: along the wall from its left end."),
        FromHeight = f.Required("fromHeight", s => s.FromHeight, LengthShape.ZeroOrMore(15_000), "First point: above the highest floor point."),
        ToX = f.Required("toX", s => s.ToX, LengthShape.ZeroOrMore(60_000), "Second point: along the wall from its left end."),
        ToHeight = f.Required("toHeight", s => s.ToHeight, LengthShape.ZeroOrMore(15_000), "Second point: above the highest floor point."),
    });

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
            "Lowest ceiling above the highest floor point, where it does not slope; left out, the survey's."),
        CeilingSlopes = f.Items(
            "ceilingSlopes",
            w => w.CeilingSlopes,
            s_slope,
            0,
            8,
            "Where the ceiling slopes along the wall and comes lower than \"height\"; left out, it is level."),
        Survey = f.Optional("survey", w => w.Survey, SurveyShapes.Survey, "The readings of the wall, as tape and laser gave them."),
    })
    {
        Declares = _ => (Ids.Walls, "wall"),
        Rules = [PresenceRule.AtLeastOne("width", "survey"), PresenceRule.AtLeastOne("height", "survey"), PresenceRule.OnlyWith("ceilingSlopes", "height")],
    };
}
