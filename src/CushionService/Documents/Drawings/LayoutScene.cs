using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Messages;

namespace CushionService.Documents.Drawings;

/// <summary>What a drawing of a layout shows.</summary>
internal sealed record LayoutScene
{
    /// <summary>The layout.</summary>
    public required LayoutAnswer Layout { get; init; }

    /// <summary>The answer's pieces, numbered.</summary>
    public required NumberedPieces Pieces { get; init; }

    /// <summary>The unit of every length.</summary>
    public required Units Units { get; init; }

    /// <summary>The language that it is written in.</summary>
    public Language Language { get; init; }

    /// <summary>What is bought of the fabric; null where the answer does not say.</summary>
    public YardageLine? Yardage { get; init; }

    /// <summary>The repeat of the fabric's motif; null where there is none.</summary>
    public MotifLattice? Lattice
    {
        get =>
            field
            ?? (Layout.Motif is { } motif ? new MotifLattice(motif.Length, motif.Width, motif.Drop, motif.X ?? 0, motif.Start) : null);
        init;
    }

    /// <summary>Prefix of every id in the drawing, unique within its document; the fabric's own when left out.</summary>
    public string IdPrefix
    {
        get => field ?? $"layout-{Layout.Fabric}";
        init;
    }
}
