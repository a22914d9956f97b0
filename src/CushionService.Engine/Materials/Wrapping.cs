using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Materials;

/// <summary>The batting that wraps a block of foam.</summary>
public static class Wrapping
{
    /// <summary>The pieces of one layer round one block W × D × T. A wrap that goes round is W + T wide and 2D + T long, or 2(D + T) with
    /// the back; the whole skin is two pieces W × D, two W × T and two D × T, 2(WD + WT + DT) in all (follow from the block).</summary>
    /// <param name="width">W.</param>
    /// <param name="depth">D.</param>
    /// <param name="thickness">T.</param>
    /// <param name="sides">What is covered.</param>
    public static ImmutableArray<(Length Width, Length Length, int Count)> Pieces(
        Length width,
        Length depth,
        Length thickness,
        WrapSides sides
    ) =>
        sides switch
        {
            WrapSides.ThreeSides => [(width + thickness, 2 * depth + thickness, 1)],
            WrapSides.FourSides => [(width + thickness, 2 * (depth + thickness), 1)],
            _ => [(width, depth, 2), (width, thickness, 2), (depth, thickness, 2)],
        };

    /// <summary>The pieces round one cushion's foam; a bolster's goes once round the roll, its ends left bare or with a square over
    /// each.</summary>
    /// <param name="cushion">A cushion that is filled with foam; oversize of the foam enlarges the wrap.</param>
    /// <param name="wrap">What is covered; its number of layers is the caller's to count.</param>
    public static ImmutableArray<(Length Width, Length Length, int Count)> Pieces(CushionSpecification cushion, WrapSpecification wrap)
    {
        Length over = cushion.Fill!.Oversize;
        if (cushion.Construction != Construction.Bolster)
        {
            ImmutableArray<(Length Width, Length Length, int Count)> box = Pieces(
                cushion.Width + over,
                cushion.Depth + over,
                cushion.Thickness,
                wrap.Sides
            );
            // Round any other outline than a rectangle the sides are one strip. Oversize foam is at most four times as much longer round.
            if (cushion.Construction == Construction.Wedge)
            {
                return wrap.Sides == WrapSides.WholeSkin
                    ? SkinOfWedge(cushion, over)
                    : [box[0] with { Length = RoundWedge(cushion, over, wrap.Sides) }];
            }

            return wrap.Sides == WrapSides.WholeSkin && cushion.Outline.Kind != OutlineKind.Rectangle
                ? [box[0], (cushion.Outline.Perimeter + 4 * over, cushion.Thickness, 1)]
                : box;
        }

        (Length Width, Length Length, int Count) round = (cushion.Outline.Perimeter, cushion.Length + over, 1);
        return wrap.Sides == WrapSides.WholeSkin ? [round, (cushion.Width + over, cushion.Depth + over, 2)] : [round];
    }

    // Down the slope, over the front, back along the underside, and up the back where that is covered too: √(D² + (Tr − Tf)²) + Tf + D, and
    // Tr (follows from the block).
    private static Length RoundWedge(CushionSpecification cushion, Length over, WrapSides sides) =>
        Slope(cushion, over)
        + cushion.FrontThickness
        + cushion.Depth
        + over
        + (sides == WrapSides.FourSides ? cushion.Thickness : Length.Zero);

    // Slope, underside, front where it has a height, and back; the two sides are one piece of D × (Tr + Tf), parted on the slant (follows
    // from the block).
    private static ImmutableArray<(Length Width, Length Length, int Count)> SkinOfWedge(CushionSpecification cushion, Length over)
    {
        (Length width, Length depth, Length front, Length back) = (
            cushion.Width + over,
            cushion.Depth + over,
            cushion.FrontThickness,
            cushion.Thickness
        );
        return
        [
            (width, Slope(cushion, over), 1),
            (width, depth, 1),
            .. front > Length.Zero ? [(width, front, 1)] : ImmutableArray<(Length, Length, int)>.Empty,
            (width, back, 1),
            (depth, back + front, 1),
        ];
    }

    private static Length Slope(CushionSpecification cushion, Length over) =>
        Length.FromNanometres(
            (long)
                Math.Ceiling(
                    Math.Sqrt(
                        Math.Pow((cushion.Depth + over).Nanometres, 2)
                            + Math.Pow((cushion.Thickness - cushion.FrontThickness).Nanometres, 2)
                    )
                )
        );

    /// <summary>Area of pieces, in square millimetres.</summary>
    public static decimal Area(IEnumerable<(Length Width, Length Length, int Count)> pieces) =>
        pieces.Sum(piece => piece.Count * piece.Width.In(LengthUnit.Millimetre) * piece.Length.In(LengthUnit.Millimetre));
}
