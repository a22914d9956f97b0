using System.Collections.Immutable;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Specifying;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Validation;

/// <summary>The rules of an outline: the fields that its kind takes, and sizes that make a shape.</summary>
internal sealed class OutlineValidator : RecordValidator<Outline>
{
    private static readonly ImmutableArray<(string Name, Func<Outline, object?> Get)> Fields =
    [
        .. typeof(Outline).GetProperties()
            .Where(property => property.Name != nameof(Outline.Kind))
            .Select(property => (property.Name, Getters.Of<Outline, object?>(property))),
    ];

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
            })
    {
    }

    private static void FieldsFit(Outline outline, OutlineKind kind, Findings findings)
    {
        ImmutableArray<string> required = OutlineReading.Required(kind);
        foreach ((string name, Func<Outline, object?> get) in Fields)
        {
            if (required.Contains(name))
            {
                if (get(outline) is null)
                {
                    findings.Refuse(name, "required", $"{FieldNames.Words(name)} is required for outline {CushionValidator.Json(kind)}.");
                }
            }
            else if (OutlineReading.Optional(kind) != name && get(outline) is not null)
            {
                findings.Refuse(name, "not-applicable", $"{FieldNames.Words(name)} does not apply to outline {CushionValidator.Json(kind)}.");
            }
        }
    }

    private static void SizesFit(Outline outline, Findings findings)
    {
        OrderReading order = findings.Reading;
        if (outline is { Kind: OutlineKind.Ell, NotchSide: not null and not (Engine.Specifications.Side.Right or Engine.Specifications.Side.Left) })
        {
            findings.Refuse(nameof(Outline.NotchSide), "not-combinable", "An ell lacks its right or its left back corner.");
        }

        foreach (OutlineFault fault in OutlineReading.Read(outline, order)?.Faults() ?? [])
        {
            if (fault.Below is { } limit)
            {
                findings.RefuseRange(fault.Field, "out-of-range", $"{FieldNames.Words(fault.Field)} must be less than {fault.Reason}, {order.Text(limit)}.", null, limit);
            }
            else
            {
                findings.Refuse(fault.Field, "not-a-shape", fault.Reason);
            }
        }
    }
}
