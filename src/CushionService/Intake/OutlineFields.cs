using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Numerics;
using System.Reflection;
using CushionService.Contract;
using CushionService.Engine.Specifications.Outlines;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Intake;

/// <summary>Which fields each kind of outline takes.</summary>
/// <remarks>The catalogue lists the same, so that a form can show the right fields for each kind.</remarks>
internal static class OutlineFields
{
    private static readonly FrozenDictionary<OutlineKind, ImmutableArray<string>> RequiredByKind = new Dictionary<
        OutlineKind,
        ImmutableArray<string>
    >
    {
        [OutlineKind.Rectangle] = [nameof(Outline.Width), nameof(Outline.Depth)],
        [OutlineKind.RoundedRectangle] = [nameof(Outline.Width), nameof(Outline.Depth), nameof(Outline.CornerRadius)],
        [OutlineKind.Circle] = [nameof(Outline.Diameter)],
        [OutlineKind.Oval] = [nameof(Outline.Width), nameof(Outline.Depth)],
        [OutlineKind.HalfRound] = [nameof(Outline.Width)],
        [OutlineKind.DShape] = [nameof(Outline.Width), nameof(Outline.Depth)],
        [OutlineKind.RoundEnded] = [nameof(Outline.Width), nameof(Outline.Depth)],
        [OutlineKind.Trapezoid] = [nameof(Outline.FrontWidth), nameof(Outline.BackWidth), nameof(Outline.Depth)],
        [OutlineKind.Tee] = [nameof(Outline.Width), nameof(Outline.Depth), nameof(Outline.EarWidth), nameof(Outline.EarDepth)],
        [OutlineKind.Ell] = [nameof(Outline.Width), nameof(Outline.Depth), nameof(Outline.NotchWidth), nameof(Outline.NotchDepth)],
        [OutlineKind.U] = [nameof(Outline.Width), nameof(Outline.Depth), nameof(Outline.NotchWidth), nameof(Outline.NotchDepth)],
        [OutlineKind.RegularPolygon] = [nameof(Outline.SideCount), nameof(Outline.SideLength)],
        [OutlineKind.Polygon] = [nameof(Outline.Points)],
    }.ToFrozenDictionary();

    // With its usual value: a trapezoid is centred, an ell's notch at the right, corners are sharp and sides straight.
    private static readonly FrozenDictionary<OutlineKind, ImmutableArray<string>> OptionalByKind = new Dictionary<
        OutlineKind,
        ImmutableArray<string>
    >
    {
        [OutlineKind.Rectangle] = [nameof(Outline.Corners)],
        [OutlineKind.Trapezoid] = [nameof(Outline.BackOffset)],
        [OutlineKind.Ell] = [nameof(Outline.NotchSide)],
        [OutlineKind.Polygon] = [nameof(Outline.CornerRadius), nameof(Outline.Corners), nameof(Outline.Arcs)],
    }.ToFrozenDictionary();

    // Every field but the kind, in the order of its bit in Given.
    private static readonly PropertyInfo[] Fields =
    [
        .. typeof(Outline).GetProperties().Where(property => property.Name != nameof(Outline.Kind)),
    ];
    private static readonly ImmutableArray<string> Names = [.. Fields.Select(property => property.Name)];
    private static readonly Func<Outline, ulong> Given = Getters.Given<Outline>(Fields);

    /// <summary>The fields that a kind must have.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Names of properties of the contract's outline.</returns>
    public static ImmutableArray<string> Required(OutlineKind kind) => RequiredByKind[kind];

    /// <summary>The fields that a kind may have besides.</summary>
    public static ImmutableArray<string> Optional(OutlineKind kind) => OptionalByKind.GetValueOrDefault(kind, []);

    /// <summary>Reports each field that the kind needs and is not there, and each that means nothing to it.</summary>
    /// <param name="outline">The outline as written.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="findings">Takes what is wrong with the outline.</param>
    public static void Check(Outline outline, OutlineKind kind, Findings findings)
    {
        // One bit for each field that is there: most are not, and are passed over together.
        ulong given = Given(outline);
        ImmutableArray<string> required = Required(kind);
        foreach (string name in required)
        {
            if ((given & (1UL << Names.IndexOf(name))) == 0)
            {
                findings.Refuse(name, "required", FieldTexts.RequiredForOutline(FieldNames.Words(name), kind));
            }
        }

        for (ulong rest = given; rest != 0; rest &= rest - 1)
        {
            string name = Names[BitOperations.TrailingZeroCount(rest)];
            if (!required.Contains(name) && !Optional(kind).Contains(name))
            {
                findings.NotApplicable(name, FieldTexts.NotForOutline(FieldNames.Words(name), kind));
            }
        }
    }
}
