using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Intake;

/// <summary>Checks the fabric on hand, which belongs to a fit, and specifies it.</summary>
internal static class OffcutIntake
{
    /// <summary>Offcuts of one fabric, each counted; more would keep a page waiting.</summary>
    private const int MostOffcuts = 50;

    // What the contract takes at most for a hide.
    private const int MostCorners = 200;

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
        LoosePieceIntake.SizesApply(offcut.Width, offcut.Length, offcut.Points is not null, findings);
        if (offcut.Points is { } points)
        {
            return LoosePieceIntake.Corners(points, MostCorners, findings) is { } drawn && fields.IsSound
                ? Hide(drawn, offcut.Lot, fabric, findings)
                : null;
        }

        // A width that is wrong by a digit would make every piece fit.
        if (fabric is { } whole && fields[Width] > whole)
        {
            findings.RefuseRange(Width.Name, "out-of-range", FabricTexts.OffcutTooWide(whole), null, whole);
        }

        return fields.IsSound && fields[Width] is { } width && fields[OffcutLength] is { } length
            ? new OffcutSpecification(width, length, offcut.Lot)
            : null;
    }

    // The box of the corners begins at zero, as a layout does; it is measured as a rectangle would be.
    private static OffcutSpecification? Hide(ImmutableArray<Point> corners, string? lot, Length? fabric, Findings findings)
    {
        var low = new Point(corners.Min(corner => corner.X), corners.Min(corner => corner.Y));
        ImmutableArray<Point> outline = [.. corners.Select(corner => corner.Moved(-low.X, -low.Y))];
        (Length width, Length length) = (outline.Max(corner => corner.X), outline.Max(corner => corner.Y));
        if (width > fabric)
        {
            findings.Refuse(nameof(Offcut.Points), "out-of-range", FabricTexts.OffcutTooWide(fabric.Value));
            return null;
        }

        return new OffcutSpecification(width, length, lot) { Outline = outline };
    }
}
