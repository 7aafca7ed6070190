using System.Collections;
using System.Reflection;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;

namespace Casewright.Engine.Tests.Verifying;

/// <summary>One field of a plan, or one item of a list in it, and the ways to falsify it.</summary>
/// <param name="Path">Where it stands.</param>
/// <param name="Field">Record and field, such as Piece.X; a list's item as Sheets[].</param>
/// <param name="Plans">The plan with just this one thing made wrong, in several ways.</param>
internal sealed record Spot(string Path, string Field, IReadOnlyList<Func<CutPlan>> Plans)
{
    private static readonly Length[] s_shifts =
    [
        .. new[] { 0.000001m, 1, 10, 250, 5000 }.SelectMany(size => new[] { Length.FromMillimetres(size), Length.FromMillimetres(-size) }),
    ];

    /// <summary>Every spot of a plan.</summary>
    public static IReadOnlyList<Spot> Of(CutPlan plan)
    {
        var names = Names(plan).Distinct(StringComparer.Ordinal).Append("nothing of this name").ToList();
        return [.. Record(plan, "plan", item => (CutPlan)item, names)];
    }

    private static IEnumerable<Spot> Record(object node, string path, Func<object, CutPlan> rebuild, List<string> names)
    {
        foreach (var property in Fields(node))
        {
            var value = property.GetValue(node);
            var here = $"{path}.{property.Name}";
            CutPlan Set(object? other) => rebuild(With(node, property, other));
            if (value is IEnumerable list and not string)
            {
                foreach (var spot in Items(list, here, property, Set, names))
                    yield return spot;
            }
            else if (value is not null && value.GetType().Namespace!.StartsWith("Casewright.Model", StringComparison.Ordinal) && value.GetType().IsClass)
            {
                foreach (var spot in Record(value, here, Set, names))
                    yield return spot;
            }
            else
            {
                var falsities = Falsify(value, property.PropertyType, names);
                if (falsities.Count > 0)
                    yield return new(here, $"{node.GetType().Name}.{property.Name}", [.. falsities.Select(other => (Func<CutPlan>)(() => Set(other)))]);
            }
        }
    }

    private static IEnumerable<Spot> Items(IEnumerable list, string path, PropertyInfo property, Func<object?, CutPlan> set, List<string> names)
    {
        var items = list.Cast<object>().ToList();
        var element = property.PropertyType.GetGenericArguments()[0];
        for (var i = 0; i < items.Count; i++)
        {
            var at = i;
            object Replaced(object item) => List(element, [.. items.Take(at), item, .. items.Skip(at + 1)]);
            yield return new($"{path}[{i}]", $"{property.Name}[]",
            [
                () => set(List(element, [.. items.Take(at), .. items.Skip(at + 1)])),
                () => set(List(element, [.. items.Take(at + 1), .. items.Skip(at)])),
            ]);
            if (items[i] is Length length)
            {
                yield return new($"{path}[{i}]", $"{property.Name}[] value", [.. s_shifts.Select(shift => (Func<CutPlan>)(() => set(Replaced(length + shift))))]);
                continue;
            }

            foreach (var spot in Record(items[i], $"{path}[{i}]", item => set(Replaced(item)), names))
                yield return spot;
        }
    }

    private static List<object?> Falsify(object? value, Type type, List<string> names) => value switch
    {
        Length length => [.. s_shifts.Select(shift => (object?)(length + shift)), .. Nothing(type)],
        decimal amount => [amount + 0.01m, amount - 0.01m, amount + 10, amount - 10],
        int number => [number + 1, number - 1, number + 7],
        bool flag => [!flag],
        string text => [.. names.Where(name => name != text)],
        Enum choice => [.. Enum.GetValues(choice.GetType()).Cast<object?>().Where(other => !choice.Equals(other)), .. Nothing(type)],
        null when Nullable.GetUnderlyingType(type) == typeof(Length) => [Length.FromMillimetres(1000)],
        null when Nullable.GetUnderlyingType(type) is { IsEnum: true } choices => [.. Enum.GetValues(choices).Cast<object?>()],
        null when type == typeof(string) => [.. names],
        _ => [],
    };

    private static IEnumerable<object?> Nothing(Type type) => Nullable.GetUnderlyingType(type) is null ? [] : [null];

    private static IEnumerable<string> Names(CutPlan plan) =>
        plan.Pieces.Select(piece => piece.Id).Concat(plan.Pieces.Select(piece => piece.Part)).Concat(plan.Splices.Select(splice => splice.Id))
            .Concat(plan.Splices.Select(splice => splice.PairLetter)).Concat(plan.Splices.Select(splice => splice.KeyClass))
            .Concat(plan.Sheets.Select(sheet => sheet.Id)).Concat(plan.Sheets.Select(sheet => sheet.Stock))
            .Concat(plan.Boards.Select(board => board.Id)).Concat(plan.Materials.Select(entry => entry.Material));

    private static IEnumerable<PropertyInfo> Fields(object node) =>
        node.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.CanWrite && property.GetIndexParameters().Length == 0);

    private static object With(object record, PropertyInfo property, object? value)
    {
        var copy = record.GetType().GetMethod("<Clone>$")!.Invoke(record, null)!;
        property.SetValue(copy, value);
        return copy;
    }

    private static object List(Type element, object[] items)
    {
        var array = Array.CreateInstance(element, items.Length);
        items.CopyTo(array, 0);
        return typeof(ValueList).GetMethod(nameof(ValueList.ToValueList))!.MakeGenericMethod(element).Invoke(null, [array])!;
    }
}
