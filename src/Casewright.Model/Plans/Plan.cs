using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Pricing;
using Casewright.Model.Schemes;
using Casewright.Model.Timeline;

namespace Casewright.Model.Plans;

/// <summary>A job planned: everything the papers are made of.</summary>
public sealed record Plan
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>Cases, by run, column and tier.</summary>
    public required ValueList<CaseBox> Cases { get; init; }

    /// <summary>Parts; ids unique.</summary>
    public required ValueList<Part> Parts { get; init; }

    /// <summary>What is cut from what.</summary>
    public required CutPlan Cutting { get; init; }

    /// <summary>What the checks found, stops first.</summary>
    public required ValueList<Finding> Findings { get; init; }

    /// <summary>When everything is done; null when no timetable could be made, and the findings then say why.</summary>
    public Schedule? Schedule { get; init; }

    /// <summary>What it costs and what is asked; null when it could not be priced, and the findings then say why.</summary>
    public Estimate? Estimate { get; init; }

    /// <summary>Sheet layouts of equal cost but of another character, the plan's own first; empty when nobody looked for them.</summary>
    public ValueList<LayoutChoice> Layouts { get; init; } = [];

    /// <summary>Ways to build the job, side by side; empty when nobody compared.</summary>
    public ValueList<Scheme> Schemes { get; init; } = [];
}
