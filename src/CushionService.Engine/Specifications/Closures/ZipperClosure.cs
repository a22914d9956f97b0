using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>A zipper.</summary>
/// <param name="Side">Where it is.</param>
/// <param name="Return">How far its section runs round each corner.</param>
/// <param name="TurnUnder">Fabric turned under on each side of it.</param>
/// <param name="Lap">How far one edge lies over the other and hides it; zero where it is centred between them.</param>
public sealed record ZipperClosure(Side Side, Length Return, Length TurnUnder, Length Lap = default) : ClosureSpecification(Side)
{
    /// <summary>The sizes of chain that are offered: 3 for light pads, 5 for general work, 10 for heavy and outdoor covers (from memory,
    /// no source).</summary>
    public static ImmutableArray<int> Sizes { get; } = [3, 5, 10];

    /// <summary>Size of its chain, one of <see cref="Sizes"/>; null where the order does not say.</summary>
    public int? Size { get; init; }

    /// <summary>Whether it runs round both sides beside its own, to their ends; it has no returns then.</summary>
    public bool ThreeSides { get; init; }

    /// <summary>How many sliders it has, 1 or 2.</summary>
    public int Sliders { get; init; } = 1;

    /// <summary>Its colour, in words; null where the order does not say.</summary>
    public string? Colour { get; init; }

    /// <summary>What is asked of the zipper besides its length, as a shop names it: "#5 navy"; empty for nothing.</summary>
    public string Wanted => string.Join(' ', new[] { Size is { } size ? $"#{size}" : null, Colour }.OfType<string>());

    /// <summary>The side across from one of the four.</summary>
    public static Side Opposite(Side side) =>
        side switch
        {
            Side.Front => Side.Back,
            Side.Back => Side.Front,
            Side.Left => Side.Right,
            _ => Side.Left,
        };

    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.Zipper;
}
