using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Intake;

/// <summary>The rules of a piece of the maker's own.</summary>
internal sealed class LoosePieceValidator : RecordValidator<LoosePiece>
{
    public LoosePieceValidator()
        : base(
            AttributeRules.Of<LoosePiece>(),
            Rules.Entries(nameof(LoosePiece.Points), (LoosePiece piece) => piece.Points, new CornerValidator()),
            (piece, findings) =>
            {
                bool polygon = piece.Points is not null;
                Size(piece.Width is not null, nameof(LoosePiece.Width));
                Size(piece.Length is not null, nameof(LoosePiece.Length));
                if (piece.Points is { Count: >= 3 and <= 500 } points && OutlineReading.Corners(points, findings.Reading) is { } corners)
                {
                    IsPolygon(corners, findings);
                }

                void Size(bool given, string field)
                {
                    if (given == polygon)
                    {
                        findings.Refuse(
                            field,
                            polygon ? "not-applicable" : "required",
                            polygon
                                ? $"{FieldNames.Words(field)} does not apply to a piece with points."
                                : $"{FieldNames.Words(field)} is required, unless the piece has points."
                        );
                    }
                }
            }
        ) { }

    private static void IsPolygon(ImmutableArray<Point> corners, Findings findings)
    {
        foreach (OutlineFault fault in new PolygonOutline(corners, Length.Zero).Faults())
        {
            findings.Refuse(fault.Field, "not-a-shape", fault.Reason);
        }
    }
}
