using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>A pattern that would not close is refused by the engine itself.</summary>
public sealed class ClosedPatternFacts
{
    private static readonly Pattern Pillow = ConstructionRegistry.Of(Construction.KnifeEdge).Draft(KnifeEdge(18, 14, HandSewn));

    [Fact]
    public void A_pillow_closes() => Assert.Same(Pillow, Pillow.Closed());

    [Fact]
    public void An_edge_left_open_is_refused() => Refused("is in no seam", Pillow with { Seams = Pillow.Seams.RemoveAt(0) });

    [Fact]
    public void An_edge_sewn_twice_is_refused() => Refused("is in two seams", Pillow with { Seams = Pillow.Seams.Add(Pillow.Seams[0]) });

    [Fact]
    public void Edges_of_different_lengths_are_not_sewn_together()
    {
        Seam front = Pillow.Seams[0],
            right = Pillow.Seams[1];

        Refused(
            "is not as long as",
            Pillow with
            {
                Seams = Pillow.Seams.Replace(front, front with { Other = right.Other }).Replace(right, right with { Other = front.Other }),
            }
        );
    }

    [Fact]
    public void A_panel_a_nanometre_too_short_is_refused()
    {
        Panel top = Pillow.Panel("top");
        ImmutableArray<Edge> shorter =
        [
            .. top.Edges.Select(edge => edge with { Path = [new Segment(Nearer(edge.From), Nearer(edge.To))] }),
        ];
        Point Nearer(Point point) => point.X == top.Width ? point with { X = point.X - Length.FromNanometres(1) } : point;

        Refused("is not as long as", Pillow with { Panels = Pillow.Panels.Replace(top, top with { Edges = shorter }) });
    }

    [Fact]
    public void An_outline_that_does_not_return_to_its_start_is_refused()
    {
        Panel top = Pillow.Panel("top");

        Refused(
            "does not meet the next edge",
            Pillow with
            {
                Panels = Pillow.Panels.Replace(top, top with { Edges = top.Edges.RemoveAt(1) }),
            }
        );
    }

    [Fact]
    public void A_hem_is_in_no_seam()
    {
        Panel top = Pillow.Panel("top");
        Edge front = top.Edge("front");
        Panel hemmed = top with { Edges = top.Edges.Replace(front, front with { Finish = EdgeFinish.DoubleHem(In(0.5m)) }) };

        Refused("is not finished for one", Pillow with { Panels = Pillow.Panels.Replace(top, hemmed) });
    }

    [Fact]
    public void A_seam_of_an_edge_that_is_not_there_is_refused() =>
        Refused(
            "has no edge",
            Pillow with
            {
                Seams = Pillow.Seams.Add(
                    new Seam(
                        SeamKind.Plain,
                        new EdgeRef(PartName.Top, new EdgeName(EdgeWord.Middle)),
                        new EdgeRef(PartName.Bottom, EdgeName.Front)
                    )
                ),
            }
        );

    private static void Refused(string why, Pattern pattern) =>
        Assert.Contains(why, Assert.Throws<InvalidPatternException>(pattern.Closed).Message, StringComparison.Ordinal);
}
