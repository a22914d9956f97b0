using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Intake;

/// <summary>Checks the fabric on hand, which belongs to a fit, and specifies it.</summary>
internal static class OffcutIntake
{
    /// <summary>Offcuts of one fabric, each counted; more would keep a page waiting.</summary>
    private const int MostOffcuts = 50;

    private static readonly LengthField<Offcut> Width = RecordForm<Offcut>.Length(nameof(Offcut.Width)),
        OffcutLength = RecordForm<Offcut>.Length(nameof(Offcut.Length));

    /// <summary>The offcuts; those that were refused are left out.</summary>
    /// <param name="offcuts">The offcuts as written; null for none.</param>
    /// <param name="fabric">Width of their fabric; null where that was refused.</param>
    /// <param name="purpose">What the order is sent for.</param>
    /// <param name="findings">Takes what is wrong with the fabric.</param>
    public static ImmutableArray<OffcutSpecification> Read(
        IReadOnlyList<Offcut?>? offcuts,
        Length? fabric,
        Purpose purpose,
        Findings findings
    )
    {
        if (offcuts is null)
        {
            return [];
        }

        // Any other call plans from the bolt, and would pass over what is on hand.
        if (purpose != Purpose.Fitting)
        {
            findings.Refuse(nameof(Fabric.OnHand), "not-applicable", OrderTexts.OnHandElsewhere);
            return [];
        }

        if (offcuts.Sum(offcut => (long)(offcut?.Quantity ?? 1)) > MostOffcuts)
        {
            findings.Refuse(
                nameof(Fabric.OnHand),
                "out-of-range",
                FabricTexts.TooManyOffcuts(MostOffcuts),
                new FindingRange(null, MostOffcuts)
            );
        }

        // Each piece on hand is laid out by itself, so that a quantity of three is three pieces.
        var specified = ImmutableArray.CreateBuilder<OffcutSpecification>();
        for (int i = 0; i < offcuts.Count; i++)
        {
            if (offcuts[i] is { } offcut && One(offcut, fabric, findings.Within(nameof(Fabric.OnHand), i)) is { } one)
            {
                specified.AddRange(Enumerable.Repeat(one, offcut.Quantity ?? 1));
            }
        }

        return specified.ToImmutable();
    }

    // One offcut: it may be narrower than its fabric, never wider.
    private static OffcutSpecification? One(Offcut offcut, Length? fabric, Findings findings)
    {
        Fields<Offcut> fields = RecordForm<Offcut>.Read(offcut, findings);
        // A width that is wrong by a digit would make every piece fit.
        if (fabric is { } whole && fields[Width] > whole)
        {
            findings.RefuseRange(Width.Name, "out-of-range", FabricTexts.OffcutTooWide(whole), null, whole);
        }

        return fields.IsSound && fields[Width] is { } width && fields[OffcutLength] is { } length
            ? new OffcutSpecification(width, length, offcut.Lot)
            : null;
    }
}
