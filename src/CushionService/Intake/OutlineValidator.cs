using System.Collections.Immutable;
using System.Numerics;
using System.Reflection;
using CushionService.Engine.Specifications.Outlines;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Intake;

/// <summary>The rules of an outline: the fields that its kind takes, and sizes that make a shape.</summary>
internal sealed class OutlineValidator : RecordValidator<Outline>
{
    private static readonly PropertyInfo[] Fields =
    [
        .. typeof(Outline).GetProperties().Where(property => property.Name != nameof(Outline.Kind)),
    ];
    private static readonly ImmutableArray<string> Names = [.. Fields.Select(property => property.Name)];
    private static readonly Func<Outline, ulong> Given = Getters.Given<Outline>(Fields);

    public OutlineValidator()
        : base(
            AttributeRules.Of<Outline>(),
            Rules.Entries(nameof(Outline.Points), (Outline outline) => outline.Points, new CornerValidator()),
            (outline, findings) =>
            {
                if (outline.Kind is { } kind && Enum.IsDefined(kind))
                {
                    FieldsFit(outline, kind, findings);
                    SizesFit(outline, findings);
                }
            }
        ) { }

    private static void FieldsFit(Outline outline, OutlineKind kind, Findings findings)
    {
        ulong given = Given(outline);
        ImmutableArray<string> required = OutlineReading.Required(kind);
        foreach (string name in required)
        {
            if ((given & (1UL << Names.IndexOf(name))) == 0)
            {
                findings.Refuse(name, "required", $"{FieldNames.Words(name)} is required for outline {CushionValidator.Json(kind)}.");
            }
        }

        for (ulong rest = given; rest != 0; rest &= rest - 1)
        {
            string name = Names[BitOperations.TrailingZeroCount(rest)];
            if (!required.Contains(name) && OutlineReading.Optional(kind) != name)
            {
                findings.Refuse(
                    name,
                    "not-applicable",
                    $"{FieldNames.Words(name)} does not apply to outline {CushionValidator.Json(kind)}."
                );
            }
        }
    }

    private static void SizesFit(Outline outline, Findings findings)
    {
        OrderReading order = findings.Reading;
        if (
            outline is
            { Kind: OutlineKind.Ell, NotchSide: not null and not (Engine.Specifications.Side.Right or Engine.Specifications.Side.Left) }
        )
        {
            findings.Refuse(nameof(Outline.NotchSide), "not-combinable", "An ell lacks its right or its left back corner.");
        }

        foreach (OutlineFault fault in OutlineReading.Read(outline, order)?.Faults() ?? [])
        {
            if (fault.Below is { } limit)
            {
                findings.RefuseRange(
                    fault.Field,
                    "out-of-range",
                    $"{FieldNames.Words(fault.Field)} must be less than {fault.Reason}, {order.Text(limit)}.",
                    null,
                    limit
                );
            }
            else
            {
                findings.Refuse(fault.Field, "not-a-shape", fault.Reason);
            }
        }
    }
}
