using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>The parts that a base of foam is glued from, where it is larger than a sheet.</summary>
/// <param name="Sizes">Their sizes, each with how many there are; one of one where the base is whole.</param>
/// <param name="JointLength">Length of all joints between the parts, as far as there is foam on both sides.</param>
public sealed record FoamParts(ImmutableArray<FoamPart> Sizes, Length JointLength)
{
    // Sizes that differ by less than a saw could tell are one.
    private static readonly Length SawnSame = Length.FromMillimetres(0.01m);

    /// <summary>How many there are.</summary>
    public int Count { get; } = Sizes.Sum(part => part.Count);

    /// <summary>The parts of a block on the sheets of a stock: those that take the fewest sheets; of several such, the fewest parts, then
    /// the shortest joints (common practice, no source). A rectangle is divided into equal parts; what has inside corners, at them or into
    /// equal strips.</summary>
    /// <param name="block">The block. It is divided as if it had the sheets to itself.</param>
    /// <param name="stock">The stock; null, or one without a width and a length, for foam that is made to size.</param>
    /// <param name="kerf">Width of a cut.</param>
    public static FoamParts Of(FoamBlock block, StockSpecification? stock, Length kerf)
    {
        if (stock is not { Width: { } width, Length: { } length })
        {
            return Whole(block);
        }

        (Length narrow, Length wide) = (Length.Min(width, length), Length.Max(width, length));
        if (Length.Min(block.Width, block.Depth) <= narrow && Length.Max(block.Width, block.Depth) <= wide)
        {
            return Whole(block);
        }

        FoamParts[] ways =
        [
            .. (
                block.Template.IsEmpty
                    ? [Split(block, narrow, wide), Split(block, wide, narrow)]
                    : new FoamDivision(narrow, wide).Of(block.Template).Select(Of)
            )
                .OrderBy(way => way.Count)
                .ThenBy(way => way.JointLength.Nanometres),
        ];
        return ways.Length == 1 ? ways[0] : FoamSheets.FewestOf(ways, block, stock, kerf);
    }

    /// <summary>How many there are, of which sizes.</summary>
    internal Message Facts() =>
        Sizes.Length == 1
            ? FoamTexts.Parts(Count, Sizes[0].Width, Sizes[0].Depth)
            : FoamTexts.UnlikeParts(Count, Sizes.Select(part => FoamTexts.Part(part.Count, part.Width, part.Depth)));

    private static FoamParts Whole(FoamBlock block) => new([new FoamPart(block.Width, block.Depth, 1)], Length.Zero);

    // Equal parts, each up to a nanometre, so that together they are never smaller than the base.
    private static FoamParts Split(FoamBlock block, Length acrossSheet, Length alongSheet)
    {
        int across = FoamDivision.Strips(block.Width, acrossSheet),
            along = FoamDivision.Strips(block.Depth, alongSheet);
        Length width = FoamDivision.Strip(block.Width, across),
            depth = FoamDivision.Strip(block.Depth, along);
        return new FoamParts([new FoamPart(width, depth, across * along)], (across - 1) * (along * depth) + (along - 1) * (across * width));
    }

    // Like sizes are counted, the largest first.
    private static FoamParts Of((ImmutableArray<(Length Width, Length Depth)> Sizes, Length Joint) division)
    {
        List<FoamPart> counted = [];
        foreach ((Length width, Length depth) in division.Sizes.OrderByDescending(size => Area.Of(size.Width, size.Depth).SquareNanometres))
        {
            int like = counted.FindIndex(part => IsSame(part.Width, width) && IsSame(part.Depth, depth));
            if (like < 0)
            {
                counted.Add(new FoamPart(width, depth, 1));
                continue;
            }

            FoamPart known = counted[like];
            counted[like] = new FoamPart(Length.Max(known.Width, width), Length.Max(known.Depth, depth), known.Count + 1);
        }

        return new FoamParts([.. counted], division.Joint);
    }

    private static bool IsSame(Length one, Length other) => Length.Max(one, other) - Length.Min(one, other) < SawnSame;
}
