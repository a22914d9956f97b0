using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Where the motif of a fabric must be across for a piece to be matched, from the left edge of the usable width, modulo the
/// repeat.</summary>
/// <param name="From">The first position, less than a repeat.</param>
/// <param name="To">The last one; less than a repeat further.</param>
/// <param name="IsEverywhere">Whether the piece is matched at every position, or at the known one.</param>
public readonly record struct MatchedAt(Length From, Length To, bool IsEverywhere)
{
    /// <summary>The positions; null where the piece need not match, or can at no position or not at the known one.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="piece">A piece of it.</param>
    public static MatchedAt? Of(FabricSpecification fabric, CutPiece piece)
    {
        if (fabric.LaidRepeat is not { } repeat || piece.Panel?.Match is null)
        {
            return null;
        }

        Length room = fabric.UsableWidth - piece.Across;
        if (room < Length.Zero)
        {
            return null;
        }

        if (!repeat.IsUnknownAcross)
        {
            var motif = new Point(repeat.MotifX ?? Length.Zero, Length.Zero);
            return MotifMatch.Corner(piece, fabric, motif) is { } corner && corner.X <= room
                ? new MatchedAt(motif.X, motif.X, IsEverywhere: true)
                : null;
        }

        // With the motif at the left edge its corner lies at a phase; it fits while that, moved, is within the room.
        Length from = MotifMatch.Modulo(-MotifMatch.Corner(piece, fabric, default)!.Value.X, repeat.Width!.Value);
        return new MatchedAt(from, from + room, IsEverywhere: room >= repeat.Width.Value);
    }
}
