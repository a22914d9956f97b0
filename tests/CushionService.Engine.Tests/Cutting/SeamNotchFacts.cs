using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Tests.Patterns;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>What is sewn together has the same notches at the same places, single or double (common practice, no source).</summary>
public sealed class SeamNotchFacts
{
    [Fact]
    public void Both_sides_of_every_seam_have_the_same_notches()
    {
        var seams = 0;
        for (var number = 0; number < 2 * OfferedCushions.Combinations.Count; number++)
        {
            Pattern pattern = Drafting.Of(Order(OfferedCushions.Cushion(number), OfferedCushionFacts.Wide)).Patterns[0];
            foreach (Seam seam in pattern.Seams.Where(seam => seam.Kind is SeamKind.Plain or SeamKind.Gap))
            {
                Edge[] one = Edges(pattern, seam.One),
                    other = Edges(pattern, seam.Other);
                if (one.Concat(other).All(edge => edge.Stretch.Whole == one[0].Stretch.Whole))
                {
                    seams++;
                    string where = $"{number}: {string.Join(' ', seam.One)} and {string.Join(' ', seam.Other)}";
                    Assert.True(AreMet(one, other) && AreMet(other, one), where);
                }
            }
        }

        Assert.True(seams > 1000, $"{seams} seams");
    }

    private static Edge[] Edges(Pattern pattern, ImmutableArray<EdgeRef> edges) => [.. edges.Select(edge => pattern[edge.Part][edge.Edge])];

    // Places on the whole edge; the middle and the quarters are the same from both ends. Where a join comes, none is wanted.
    private static bool AreMet(Edge[] edges, Edge[] along) =>
        edges
            .SelectMany(edge => Own(edge).Select(notch => (At: edge.Stretch.Before + notch.At, notch.Kind)))
            .All(notch =>
                along.Any(edge =>
                    Own(edge).Any(met => IsNear(edge.Stretch.Before + met.At, notch.At) && met.Kind == notch.Kind)
                    || IsAtJoin(edge, notch.At)
                    || IsAtJoin(edge, edge.Stretch.Whole - notch.At)
                )
            );

    private static IEnumerable<EdgeNotch> Own(Edge edge) => EdgeNotch.Of(edge with { Joins = [] });

    private static bool IsAtJoin(Edge edge, Length at) =>
        Math.Abs((edge.Stretch.Before - at).Nanometres) <= JoinNotches.Nearest.Nanometres
        || Math.Abs((edge.Stretch.Before + edge.Length - at).Nanometres) <= JoinNotches.Nearest.Nanometres;

    private static bool IsNear(Length one, Length other) => Math.Abs((one - other).Nanometres) <= 1000;

    [Theory]
    [InlineData(4)]
    [InlineData(7)]
    [InlineData(8)]
    public void The_base_of_a_gored_pouf_is_notched_where_the_panels_of_its_wall_join_and_in_the_middle_of_each(int gores)
    {
        // Sources.Mathematics: n joins and n middles round the rim, 360°/2n apart, a join at the back, which is up.
        CutPiece bottom = Pieces(Pouf(20, gores, HandSewn)).Single(piece => piece.Part == PartName.Bottom);
        double[] angles =
        [
            .. PieceMarks
                .Of(bottom)
                .Where(mark => mark.Kind is MarkKind.Notch or MarkKind.DoubleNotch)
                .Select(mark =>
                    Math.Atan2((mark.From.X - bottom.Width.HalfUp()).Nanometres, (mark.From.Y - bottom.Length.HalfUp()).Nanometres)
                )
                .Select(angle => (angle * 180 / Math.PI + 360.0001) % 360)
                .Order(),
        ];

        Assert.Equal(2 * gores, angles.Length);
        Assert.All(angles.Index(), one => Assert.Equal(one.Index * 180.0 / gores, one.Item, 0.01));
        // The panels of the wall have the middles too, above and below.
        Assert.All(
            Pieces(Pouf(20, gores, HandSewn)).Where(piece => piece.Part.Kind == PartKind.Wall),
            wall => Assert.Equal(2, PieceMarks.Of(wall).Count(mark => Says(mark, "Notch middle of gore-")))
        );
    }

    [Fact]
    public void The_wall_of_a_gored_pouf_is_notched_where_the_halves_of_its_base_meet()
    {
        // Sources.Mathematics: a quarter of the way round from the back is 7/4 of a panel: 3/4 along the second, and of the second to last.
        ZipperClosure zipper = new(Side.Bottom, Length.Zero, In(0.75m));
        string[] joins =
        [
            .. Pieces(Pouf(20, 7, zipper))
                .Where(piece => PieceMarks.Of(piece).Any(mark => Says(mark, "where a join comes")))
                .Select(piece => piece.Part.ToString()),
        ];
        Assert.Equal(["wall-2", "wall-6"], joins);

        // Of eight panels two end there.
        Assert.DoesNotContain(Pieces(Pouf(20, 8, zipper)).SelectMany(PieceMarks.Of), mark => Says(mark, "where a join comes"));
    }

    [Fact]
    public void The_base_of_a_drum_has_its_double_notch_where_the_wall_has()
    {
        CushionSpecification drum = Pouf(28, 0, HookAndLoop(0.5m, 1, Side.Bottom));
        CutPiece[] pieces = Pieces(drum);

        foreach (string notch in new[] { "middle", "first quarter", "last quarter" })
        {
            foreach (string side in new[] { "front", "back" })
            {
                PieceMark onBase = Single(pieces, $"bottom-{side}", $"Notch {notch} of {side};");
                MarkKind kind = side == "back" && notch == "middle" ? MarkKind.DoubleNotch : MarkKind.Notch;
                Assert.Equal(kind, onBase.Kind);
                Assert.Equal(kind, Single(pieces, "wall", $"Notch {notch} of {side}-bottom;").Kind);
            }
        }

        // Flaps run on beyond the middle of the side, which is marked on both.
        Assert.Equal(In(14.5m), Single(pieces, "bottom-front", "Notch where back meets front;").From.Y);
    }

    [Fact]
    public void The_sheet_of_a_waterfall_has_the_double_notches_of_its_back()
    {
        CutPiece[] pieces = Pieces(Boxed(20, 20, 4, HandSewn) with { Construction = Construction.Waterfall });

        foreach ((string sheet, string back) in new[] { ("upper", "back-top"), ("lower", "back-bottom") })
        {
            Assert.Equal(MarkKind.DoubleNotch, Single(pieces, "main", $"Notch middle of {sheet};").Kind);
            Assert.Equal(MarkKind.DoubleNotch, Single(pieces, "back", $"Notch middle of {back};").Kind);
        }
    }

    private static CushionSpecification Pouf(decimal diameter, int gores, ClosureSpecification closure) =>
        Boxed(1, 1, 14, closure) with
        {
            Construction = Construction.Pouf,
            Outline = new CircleOutline(In(diameter)),
            Gores = gores,
        };

    private static CutPiece[] Pieces(CushionSpecification cushion) =>
        [.. Drafting.Of(Order(cushion, Fabric with { Width = In(120) })).Pieces];

    private static PieceMark Single(CutPiece[] pieces, string part, string what) =>
        Assert.Single(PieceMarks.Of(pieces.Single(piece => piece.Part.ToString() == part)), mark => Says(mark, what));

    private static bool Says(PieceMark mark, string what) => mark.Because.ToString().Contains(what, StringComparison.Ordinal);
}
