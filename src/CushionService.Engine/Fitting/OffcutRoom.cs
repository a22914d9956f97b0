using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Fitting;

/// <summary>What an offcut gives to lay pieces on.</summary>
/// <remarks>It is cut by the same rules as cloth from the bolt (see <see cref="ClothSale"/>), read backwards: what is lost to squaring the ends and to the
/// start of the repeat, then to the wash. An offcut that is narrower than the cloth without its selvedges counts as free of them; where the cloth has a
/// repeat across, up to one repeat of a narrower offcut's width goes to bring a motif to its middle (common practice, no source).</remarks>
public sealed record OffcutRoom
{
    private OffcutRoom(FabricSpecification cloth, Length length) => (Cloth, Length) = (cloth, length);

    /// <summary>The cloth, as wide as the offcut.</summary>
    public FabricSpecification Cloth { get; }

    /// <summary>Across, for laying.</summary>
    public Length Width => Cloth.UsableWidth;

    /// <summary>Along, for laying.</summary>
    public Length Length { get; }

    /// <summary>Whether anything can be laid on it.</summary>
    public bool IsEmpty => Width <= Length.Zero || Length <= Length.Zero;

    /// <summary>Area for laying.</summary>
    public Area Area => IsEmpty ? default : Area.Of(Width, Length);

    /// <summary>The rooms of a cloth's offcuts, in their order.</summary>
    public static ImmutableArray<OffcutRoom> Of(FabricSpecification fabric) => [.. fabric.OnHand.Select(offcut => Of(fabric, offcut))];

    /// <summary>The cloth as wide as its widest offcut, by which long strips are joined.</summary>
    public static FabricSpecification Widest(FabricSpecification fabric) =>
        Of(fabric).Select(room => room.Cloth).MaxBy(cloth => cloth.Width) ?? fabric;

    private static OffcutRoom Of(FabricSpecification fabric, OffcutSpecification offcut)
    {
        Length clean = fabric.Width - 2 * fabric.Selvedge;
        Length width = Length.Min(offcut.Width, clean);
        if (width < clean && fabric.Repeat?.Width is { } across)
        {
            width = Length.Max(width - across, Length.Zero);
        }

        Length whole = offcut.Length - fabric.Squaring - (fabric.Repeat?.Length ?? Length.Zero);
        long kept = FabricSpecification.Kept(fabric.LengthShrinkage).FloorOf(Math.Max(whole.Nanometres, 0));
        return new OffcutRoom(fabric with { Width = width, Selvedge = Length.Zero, OnHand = [] }, Length.FromNanometres(kept));
    }
}
