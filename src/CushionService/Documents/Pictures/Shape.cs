using CushionService.Documents.Drawings;

namespace CushionService.Documents.Pictures;

/// <summary>A shape of a picture.</summary>
/// <param name="Points">In millimetres of the scene, y downwards.</param>
/// <param name="IsClosed">Whether its last point joins its first.</param>
/// <param name="Ink">How it is drawn.</param>
internal sealed record Shape(IReadOnlyList<Spot> Points, bool IsClosed, Ink Ink)
{
    /// <summary>Text at its point instead of a line; null for none.</summary>
    public string? Text { get; init; }

    /// <summary>What is grouped under a name for programs: the id of a piece; null for none.</summary>
    public string? Piece { get; init; }
}
