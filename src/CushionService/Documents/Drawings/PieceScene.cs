using CushionService.Contract;
using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>What a drawing of one piece shows.</summary>
internal sealed record PieceScene
{
    /// <summary>The piece.</summary>
    public required PieceAnswer Piece { get; init; }

    /// <summary>Its number in the answer's list.</summary>
    public required string Number { get; init; }

    /// <summary>The unit of every length.</summary>
    public required Units Units { get; init; }

    /// <summary>Whether the marks are also listed in words under the drawing.</summary>
    public bool ListsMarks { get; init; } = true;

    /// <summary>Prefix of every id in the drawing, unique within its document.</summary>
    public string IdPrefix { get; init; } = "piece";
}
