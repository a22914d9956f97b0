using CushionService.Engine.Instructions;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>The order of sewing of rolls: with sewn-in, gathered and tied ends (common practice, no source).</summary>
public sealed class BolsterStepFacts
{
    internal static CushionSpecification Roll =>
        KnifeEdge(1, 1, new ZipperClosure(Side.Back, Length.Zero, In(0.75m))) with
        {
            Construction = Construction.Bolster,
            Outline = new CircleOutline(In(8)),
            Length = In(24),
        };

    [Fact]
    public void A_bolster_is_closed_to_a_tube_before_its_ends_are_sewn_in() =>
        InOrder(
            Roll,
            "closure edges of body under by 3/4 in",
            "Sew left-end to it, right sides together",
            "Open the zipper halfway",
            "Sew right-end to it"
        );

    // Its piece is called "Stirnseite", and so is what the edging is sewn to; a waterfall has side panels there.
    [Theory]
    [InlineData(true, "auf die rechte Stoffseite der linken Stirnseite", "le panneau d’extrémité gauche", "el extremo izquierdo")]
    [InlineData(false, "auf die rechte Stoffseite des linken Seitenteils", "le panneau latéral gauche", "el paño lateral izquierdo")]
    public void An_edging_is_on_what_its_piece_is_called(bool end, string german, string french, string spanish)
    {
        Message text = StepTexts.WeltRound(StepTexts.Place(EdgingPlace.Left, end), In(25), false, In(2));

        Assert.Contains(german, new MessageWriter(Language.German, LengthUnit.Inch).Text(text), StringComparison.Ordinal);
        Assert.Contains(french, new MessageWriter(Language.French, LengthUnit.Inch).Text(text), StringComparison.Ordinal);
        Assert.Contains(spanish, new MessageWriter(Language.Spanish, LengthUnit.Inch).Text(text), StringComparison.Ordinal);
    }

    [Fact]
    public void An_edging_of_a_bolster_is_on_its_ends()
    {
        var gimp = new BoughtTrimSpecification([EdgingPlace.Left], EdgingKind.Gimp, TrimAttachment.SewnOn, In(0.5m));
        InOrder(Roll with { Trim = Roll.Trim with { Edging = gimp } }, "over the seam of the left end");
    }

    [Fact]
    public void A_gathered_roll_is_drawn_up_and_a_sweet_is_tied_once_it_is_filled()
    {
        InOrder(
            Roll with
            {
                Ends = new BolsterEnds(BolsterEndKind.Gathered, Length.Zero, In(1)),
            },
            "zipper",
            "draw it up to the middle of the end"
        );
        InOrder(
            Roll with
            {
                Ends = new BolsterEnds(BolsterEndKind.Tied, In(6), In(0.75m)),
            },
            "stitch the hem",
            "zipper",
            "Close the zipper",
            "Once it is filled, wind cord round body"
        );
    }

    [Fact]
    public void A_loose_filling_goes_between_ends_that_are_tied_before_it() =>
        // Common practice, no source: fibre would run out into the tails.
        InOrder(
            Roll with
            {
                Ends = new BolsterEnds(BolsterEndKind.Tied, In(6), In(0.75m)),
                Fill = new FillSpecification(FillKind.Loose, "fibre", 20, Length.Zero, 0.9m),
            },
            "right side out through an open end",
            "Wind cord round body at each of its two tie marks, and tie it tight, so that the filling stays between them",
            "Fill the cover",
            "Close the zipper"
        );

    [Fact]
    public void A_tied_roll_is_tied_where_its_fabric_has_come_over_the_end_to_the_middle()
    {
        // Common practice, no source: 10 in across and 30 long with tails of 4; the fabric runs 5 in over each end, so 4 in are beyond the
        // tie, 4 3/4 with the hem, and 40 between the ties; the edges of the ends are 9 in from the finished ends.
        CushionSpecification sweet = Roll with
        {
            Outline = new CircleOutline(In(10)),
            Length = In(30),
            Ends = new BolsterEnds(BolsterEndKind.Tied, In(4), In(0.75m)),
        };
        Panel body = Drafting.Of(Order(sweet)).Patterns[0].Panels[0];

        Assert.Equal(In(48), body.Height);
        Assert.Equal([In(4), In(44)], At(body, MarkPurpose.TieBody));
        Assert.Equal([In(9), In(39)], At(body, MarkPurpose.EdgeOfEnd));
    }

    [Fact]
    public void Fastenings_lie_along_the_body_alone_and_the_steps_name_the_edge_that_laps_over()
    {
        // Common practice, no source: a roll of 24 in, 7 in across: 3 1/2 in more are gathered at each end.
        CushionSpecification drawn = Roll with
        {
            Outline = new CircleOutline(In(7)),
            Closure = HookAndLoop(0.5m, 1),
            Ends = new BolsterEnds(BolsterEndKind.Gathered, Length.Zero, In(0.75m)),
        };
        Pattern pattern = Drafting.Of(Order(drawn)).Patterns[0];

        Assert.Equal(In(31), pattern.Panels[0].Height);
        Assert.Equal(In(24), Fastenings.Run(pattern));
        InOrder(
            drawn,
            "Fold the right closure edge of body twice by 1/2 in",
            "Fold the left closure edge of body twice by 1/2 in",
            "Sew the hook tape to the right side of the left closure edge of body and the loop tape to the wrong side of "
                + "the right closure edge of body",
            "short of the marks where the ends begin. Close them, the right closure edge of body lapping over the left closure edge of "
                + "body by 1 in, and stitch them together beyond the marks",
            "draw it up"
        );
        PanelMark[] buttons =
        [
            .. Drafting
                .Of(Order(drawn with { Closure = new ButtonClosure(Side.Back, Length.Zero, In(0.5m), In(1.25m), In(0.75m)) }))
                .Patterns[0]
                .Panels[0]
                .Marks.Where(mark => mark.Kind == MarkKind.Button),
        ];
        Assert.NotEmpty(buttons);
        Assert.All(buttons, mark => Assert.True(mark.From.Y > In(3.5m) && mark.From.Y < In(27.5m), $"{mark.From.Y}"));
    }

    private static IEnumerable<Length> At(Panel body, MarkPurpose purpose) =>
        body.Marks.Where(mark => mark.Purpose == purpose).Select(mark => mark.From.Y).Order();

    [Fact]
    public void The_zipper_of_a_tied_roll_runs_along_the_body_alone_and_the_tails_are_sewn_shut_before_it()
    {
        CushionSpecification sweet = Roll with { Ends = new BolsterEnds(BolsterEndKind.Tied, In(6), In(0.75m)) };
        Pattern pattern = Drafting.Of(Order(sweet)).Patterns[0];

        // 24 in of body; half of 8 in and a tail of 6 in beyond it at either end.
        Assert.Equal(In(24), pattern.LengthOf(Assert.Single(pattern.Seams, seam => seam.Kind == SeamKind.Zipper)));
        Assert.Equal([In(10), In(10)], pattern.Seams.Where(seam => seam.Kind == SeamKind.Plain).Select(pattern.LengthOf));
        InOrder(
            sweet,
            "beyond both ends of the zipper, right sides together, 20 in in all with 3/4 in seams",
            "closure edges of body under",
            "wind cord round body"
        );
    }
}
