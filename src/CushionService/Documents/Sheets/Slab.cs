using CushionService.Documents.Drawings;

namespace CushionService.Documents.Sheets;

/// <summary>What is set on one page as a whole: a line, a row, a drawing.</summary>
/// <param name="Height">In millimetres.</param>
/// <param name="Draw">Draws it from its upper left corner.</param>
internal sealed record Slab(double Height, Action<Canvas, Spot> Draw)
{
    /// <summary>Space above it, but not at the top of a page, in millimetres.</summary>
    public double Above { get; init; }

    /// <summary>Whether what follows must begin on the same page.</summary>
    public bool KeepsNext { get; init; }

    /// <summary>What is repeated above it at the top of a page; null for nothing.</summary>
    public Slab? Head { get; init; }
}
