namespace Casewright.Papers.Kit;

/// <summary>The documents of a packet, in the order in which they lie in it.</summary>
public enum DocumentKind
{
    /// <summary>What the job comes to, contents, what to look out for.</summary>
    Cover,

    /// <summary>The wall from the front.</summary>
    Elevation,

    /// <summary>The wall from above and from the side.</summary>
    PlanAndSection,

    /// <summary>What to buy.</summary>
    BuyingList,

    /// <summary>The timetable as a chart, and its tasks by number.</summary>
    Timetable,

    /// <summary>All rips by fence setting.</summary>
    RipSchedule,

    /// <summary>One page for each distinct sheet layout.</summary>
    SheetLayouts,

    /// <summary>Cuts of solid lengths.</summary>
    BoardCuts,

    /// <summary>One card for each splice.</summary>
    SpliceCards,

    /// <summary>Glue-ups by station and clock.</summary>
    GlueUps,

    /// <summary>Marks of the uprights at full size.</summary>
    StorySticks,

    /// <summary>Dados, holes and grooves of the uprights.</summary>
    DrillingLayouts,

    /// <summary>Parts that are cut on a slant or bored, with their figures.</summary>
    PartDrawings,

    /// <summary>How each case goes together.</summary>
    AssemblySheets,

    /// <summary>Every part.</summary>
    PartList,

    /// <summary>Surfaces, coats, drying, masking.</summary>
    FinishSchedule,

    /// <summary>A sheet for every working day.</summary>
    DaySheets,
    /// <summary>Getting cases in and up.</summary>
    AccessSheet,

    /// <summary>Setting out and fitting on site.</summary>
    InstallSheet,

    /// <summary>Scribe edges at full size.</summary>
    ScribeTemplates,

    /// <summary>What the checks found, with numbers and sources.</summary>
    Findings,

    /// <summary>Calculation sheets: formula, figures, result, limit and source of a check.</summary>
    Calculations,

    /// <summary>Longest clear spans of shelves.</summary>
    SpanTables,

    /// <summary>A label for each piece.</summary>
    Labels,

    /// <summary>What is offered to the client.</summary>
    Quote,

    /// <summary>Ways to build the job, for the client to choose from.</summary>
    Schemes,

    /// <summary>What is changed of an order, why, and what it costs.</summary>
    ChangeOrder,
}
