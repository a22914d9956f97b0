using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Intake;

/// <summary>Checks a piece of the maker's own, and specifies it.</summary>
/// <remarks>A piece is cut as it is given: no allowance is added. It is a rectangle, or a polygon whose points are moved so that its box
/// begins at zero.</remarks>
internal static class LoosePieceIntake
{
    // What the contract takes at most.
    private const int MostCorners = 500;

    private static readonly LengthField<LoosePiece> Width = RecordForm<LoosePiece>.Length(nameof(LoosePiece.Width)),
        PieceLength = RecordForm<LoosePiece>.Length(nameof(LoosePiece.Length));

    /// <summary>The piece; null where anything that it cannot do without was refused.</summary>
    /// <param name="piece">The piece as written.</param>
    /// <param name="index">Its index in the order, for pointers of later findings.</param>
    /// <param name="order">The order, with its only fabric.</param>
    /// <param name="findings">Takes what is wrong with the piece.</param>
    public static LoosePieceSpecification? Read(LoosePiece piece, int index, OrderContext order, Findings findings)
    {
        Fields<LoosePiece> fields = RecordForm<LoosePiece>.Read(piece, findings);
        SizesApply(piece.Width, piece.Length, piece.Points is not null, findings);
        ImmutableArray<Point>? corners = piece.Points is { } points ? Corners(points, MostCorners, findings) : [];
        // Which fabric is missing or unknown is reported with all names of fabrics.
        string? fabric = piece.Fabric ?? order.OnlyFabric;
        // The fields, the corners and the fabric must all have passed.
        if (!fields.IsSound || corners is not { } drawn || fabric is null)
        {
            return null;
        }

        // The box of the corners begins at zero, as the layout expects.
        Point low = drawn.IsEmpty ? default : new Point(drawn.Min(corner => corner.X), drawn.Min(corner => corner.Y));
        Length? width = drawn.IsEmpty ? fields[Width] : drawn.Max(corner => corner.X) - low.X,
            length = drawn.IsEmpty ? fields[PieceLength] : drawn.Max(corner => corner.Y) - low.Y;
        return width is { } across && length is { } along
            ? new LoosePieceSpecification(
                piece.Id!,
                $"/pieces/{index}",
                fabric,
                piece.Quantity ?? 1,
                across,
                along,
                piece.Rotation,
                [.. drawn.Select(corner => corner.Moved(-low.X, -low.Y))]
            )
            : null;
    }

    /// <summary>A rectangle has a width and a length, a polygon has neither.</summary>
    public static void SizesApply(Measure? width, Measure? length, bool polygon, Findings findings)
    {
        Size(width is not null, nameof(LoosePiece.Width));
        Size(length is not null, nameof(LoosePiece.Length));

        void Size(bool given, string field)
        {
            if (given && polygon)
            {
                findings.NotApplicable(field, FieldTexts.NotWithPoints(FieldNames.Words(field)));
            }
            else if (!given && !polygon)
            {
                findings.Refuse(field, "required", FieldTexts.RequiredWithoutPoints(FieldNames.Words(field)));
            }
        }
    }

    /// <summary>The corners of a polygon whose sides do not cross; null where they were refused.</summary>
    public static ImmutableArray<Point>? Corners(IReadOnlyList<Corner> points, int most, Findings findings)
    {
        ImmutableArray<Point>? corners = CornerIntake.Read(points, nameof(LoosePiece.Points), findings);
        // Crossing is looked for pair by pair, which takes the square of the number of corners.
        // A list beyond its limits is not drawn: its form has been refused.
        if (corners is not { } drawn || drawn.Length > most)
        {
            return null;
        }

        bool sound = true;
        foreach (OutlineFault fault in new PolygonOutline(drawn, Length.Zero).Faults())
        {
            findings.Refuse(fault.Field, "not-a-shape", fault.Detail);
            sound = false;
        }

        return sound ? drawn : null;
    }
}
