using Casewright.Model.Collections;

namespace Casewright.Model.Timeline;

/// <summary>Kinds of work that not everybody in a shop may do.</summary>
public enum Skill
{
    /// <summary>Sawing, routing, boring.</summary>
    Machining,

    /// <summary>Glue-ups and assembly.</summary>
    Assembling,

    /// <summary>Sanding and finishing.</summary>
    Finishing,

    /// <summary>Setting and fitting on site.</summary>
    Installing,
}

/// <summary>Somebody who works in the shop and on site. Everybody lends a second pair of hands to anything.</summary>
public sealed record Person
{
    /// <summary>Id, unique among the people.</summary>
    public required string Id { get; init; }

    /// <summary>Name as people say it.</summary>
    public required string Name { get; init; }

    /// <summary>Work that this person may lead; empty for all.</summary>
    public ValueList<Skill> Skills { get; init; } = [];

    /// <summary>Days on which this person is away, beside the shop's own days off.</summary>
    public ValueList<DateOnly> DaysOff { get; init; } = [];

    /// <summary>Whether this person may lead work of a kind.</summary>
    public bool Can(Skill skill) => Skills.Count == 0 || Skills.Contains(skill);
}
