using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Messages;

namespace CushionService.Documents.Drawings;

/// <summary>What a drawing of one piece shows.</summary>
internal sealed record PieceScene
{
    /// <summary>The piece.</summary>
    public required PieceAnswer Piece { get; init; }

    /// <summary>Its number in the answer's list.</summary>
    public required string Number { get; init; }

    /// <summary>Whether it shows several pieces of one shape, whose numbers it has.</summary>
    public bool IsOfSeveral { get; init; }

    /// <summary>The unit of every length.</summary>
    public required Units Units { get; init; }

    /// <summary>Whether the marks are also listed in words under the drawing.</summary>
    public bool ListsMarks { get; init; } = true;

    /// <summary>How many marks, from the first, have a letter beside them.</summary>
    public int Lettered { get; init; } = int.MaxValue;

    /// <summary>How wide the drawing is, in millimetres.</summary>
    public double Width { get; init; } = LayoutScale.PageWidth;

    /// <summary>The language that it is written in.</summary>
    public Language Language { get; init; }

    /// <summary>Prefix of every id in the drawing, unique within its document.</summary>
    public string IdPrefix { get; init; } = "piece";
}
