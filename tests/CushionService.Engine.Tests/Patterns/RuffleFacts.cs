using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Patterns;

public sealed class RuffleFacts
{
    [Theory]
    [InlineData(1.5, 96, 2, Sources.Practice)]
    [InlineData(2, 128, 3, Sources.NewDressmaker)]
    [InlineData(2.5, 160, 4, Sources.Practice)]
    [InlineData(3, 192, 4, Sources.NewDressmaker)]
    public void A_ruffle_is_as_long_as_its_fullness_times_the_seam_line(double fullness, int length, int strips, string source)
    {
        Drafting drafting = Ruffled((decimal)fullness, RuffleLining.Folded);
        CutPiece[] ruffle = [.. drafting.Pieces.Where(piece => piece.Part.ToString().StartsWith("ruffle", StringComparison.Ordinal))];

        Assert.Equal(strips, ruffle.Length);
        Assert.Equal(In(length), ruffle.Aggregate(Length.Zero, (sum, piece) => sum + piece.Panel!.Width));
        Assert.All(ruffle, piece => Assert.Equal(In(7), piece.Length));
        Assert.All(ruffle, piece => Assert.True(piece.Width <= In(54)));
    }

    [Fact]
    public void Medium_fullness_takes_21_inches_of_54_inch_fabric()
    {
        // Sources.Derived: 3 strips of 2 × 3 + 2 × 1/2 = 7 in.
        Assert.Equal(
            In(21),
            Ruffled(2, RuffleLining.Folded)
                .Pieces.Where(piece => piece.Part.ToString().StartsWith("ruffle", StringComparison.Ordinal))
                .Aggregate(Length.Zero, (sum, piece) => sum + piece.Length)
        );
    }

    [Fact]
    public void A_single_ruffle_is_cut_its_depth_a_seam_and_a_double_hem_wide() =>
        // Sources.Derived: 3 + 1/2 + 2 × 1/4.
        Assert.All(
            Ruffled(2, RuffleLining.Single).Pieces.Where(piece => piece.Part.ToString().StartsWith("ruffle", StringComparison.Ordinal)),
            piece => Assert.Equal(In(4), piece.Length)
        );

    [Fact]
    public void Its_derivation_names_fullness_layers_and_seams()
    {
        CutPiece piece = Ruffled(2, RuffleLining.Folded).Pieces.First(piece => piece.Part.ToString() == "ruffle-1");

        Assert.Equal(
            "fullness 2 × 64 in of seam = 128 in; "
                + "about 42 11/16 in + 2 × 1/2 in seam, up to 43 3/4 in by 2 layers of 3 in + 2 × 1/2 in seam",
            Derivation.Of(piece).ToString()
        );
    }

    [Fact]
    public void A_gathered_seam_that_is_a_nanometre_off_its_fullness_is_refused()
    {
        Pattern pattern = Ruffled(2, RuffleLining.Folded).Patterns[0];
        Seam gathered = pattern.Seams.First(seam => seam.Kind == SeamKind.Gathered);
        Seam fuller = gathered with { Fullness = Fraction.Of(2_000_000_001, 1_000_000_000) };

        Assert.Contains(
            "is not as long as",
            Assert.Throws<InvalidPatternException>((pattern with { Seams = pattern.Seams.Replace(gathered, fuller) }).Closed).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_face_whose_edge_is_only_gathered_to_is_not_closed()
    {
        Pattern pattern = Ruffled(2, RuffleLining.Folded).Patterns[0];

        Assert.Throws<InvalidPatternException>(
            (pattern with { Seams = [.. pattern.Seams.Where(seam => seam.Kind != SeamKind.Plain)] }).Closed
        );
    }

    // Sources.Practice: the seam of 64, the ruffle of 128 gathered in two rows and basted to the face, and its end, 6 and 3 deep with the
    // seams it is joined through; a single one is hemmed along its 128 besides.
    [Theory]
    [InlineData(RuffleLining.Folded, 64 + (2 * 128) + 64 + 6 + 1)]
    [InlineData(RuffleLining.Single, 64 + (2 * 128) + 64 + 3 + 1 + 128)]
    public void A_ruffle_is_gathered_in_two_rows_and_basted_once(RuffleLining lining, int inches)
    {
        CushionSpecification cushion = Trimmed(KnifeEdge(16, 16, HandSewn), 2, lining);

        Assert.Equal(In(inches), Threading.Stitching(cushion, Drafting.Of(Order(cushion, Fabric with { Width = In(160) })).Patterns[0]));
    }

    [Fact]
    public void A_round_ruffle_is_rounded_up_to_the_nanometre()
    {
        CushionSpecification round = KnifeEdge(16, 16, HandSewn) with
        {
            Outline = new Engine.Specifications.Outlines.CircleOutline(In(16)),
        };
        Pattern pattern = Drafting.Of(Order(Trimmed(round, 1.75m, RuffleLining.Folded))).Patterns[0];
        Length need = pattern.Seams.First(seam => seam.Kind == SeamKind.Gathered) is var seam
            ? seam.OtherFor(pattern.LengthOf(seam))
            : default;

        Assert.InRange(need.Nanometres - (1.75m * EdgingLoop.Of(pattern, EdgingPlace.Top).Length.Nanometres), 0, 1);
    }

    private static Drafting Ruffled(decimal fullness, RuffleLining lining) =>
        Drafting.Of(Order(Trimmed(KnifeEdge(16, 16, HandSewn), fullness, lining)));

    private static CushionSpecification Trimmed(CushionSpecification cushion, decimal fullness, RuffleLining lining) =>
        cushion with
        {
            Trim = new TrimSpecification { Edging = new RuffleSpecification([EdgingPlace.Top], Fraction.Of(fullness), In(3), lining) },
        };
}
