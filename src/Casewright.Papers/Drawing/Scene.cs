using Casewright.Model.Collections;

namespace Casewright.Papers.Drawing;

/// <summary>A finished drawing or page: an area of paper and what is on it. Immutable; every renderer draws the same scene.</summary>
/// <param name="Width">Width in millimetres.</param>
/// <param name="Height">Height in millimetres.</param>
/// <param name="Title">What the drawing shows, in a few words.</param>
/// <param name="Description">The same in a sentence or two, for those who cannot see it.</param>
/// <param name="Items">What is drawn, from the back to the front.</param>
public sealed record Scene(double Width, double Height, string Title, string Description, ValueList<SceneItem> Items)
{
    /// <summary>The whole area.</summary>
    public Box Area => new(0, 0, Width, Height);

    /// <summary>Every text, in drawing order.</summary>
    public IEnumerable<TextItem> Texts => Flatten(Items).OfType<TextItem>();

    /// <summary>Every group, outer before inner.</summary>
    public IEnumerable<GroupItem> Groups => GroupsOf(Items);

    /// <summary>Every item that is not a group, in drawing order.</summary>
    public IEnumerable<SceneItem> Leaves => Flatten(Items);

    private static IEnumerable<SceneItem> Flatten(IEnumerable<SceneItem> items) =>
        items.SelectMany(item => item is GroupItem group ? Flatten(group.Items) : [item]);

    private static IEnumerable<GroupItem> GroupsOf(IEnumerable<SceneItem> items) =>
        items.OfType<GroupItem>().SelectMany(group => GroupsOf(group.Items).Prepend(group));
}
