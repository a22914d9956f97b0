using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;
using CushionService.Documents.Pictures;
using CushionService.Engine.Layouts;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Scenes;
using CushionService.Intake;
using CushionService.Nesting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Documents.Pictures;

/// <summary>Pictures held against the scene and the layout that they are drawn from.</summary>
public sealed class DrawnSceneTests
{
    [Theory]
    [InlineData("")]
    [InlineData("railroaded")]
    public void A_striped_cushion_carries_the_stripe_where_the_layout_has_it(string grain)
    {
        Drafting drafting = Striped(grain);
        ImmutableArray<FabricLayout> layouts = PictureSource.LayOut(drafting, 0, Effort.Quick, CancellationToken.None);
        var source = PictureSource.Of(drafting, 0, layouts);
        var sketch = new Sketch(new Camera(CameraTurn.None), new Frame(1, default));
        new ScenePainter(source, sketch, 0).Paint();
        Spot[] drawn = [.. sketch.Shapes.Where(shape => shape.Ink.Fill == Tint.Print).SelectMany(shape => shape.Points)];
        ScenePart top = source.Scene[PartName.Top]!;
        LaidPiece laid = layouts[0].Placements.First(placed => placed.Piece.Part == PartName.Top);
        double repeat = Mm(drafting.Order.Fabrics[0].LaidRepeat!.Width!.Value),
            size = grain == "" ? Mm(top.Panel.Width) : Mm(top.Panel.Height);
        int found = 0;

        // Each stripe's middle, told from the layout alone: where its line of the fabric crosses the face's edge.
        for (int column = 0; column < 20; column++)
        {
            double across = Mm(layouts[0].MotifX!.Value) + column * repeat - Mm(laid.X),
                origin = Mm(grain == "" ? laid.Piece.Origin.X : laid.Piece.Origin.Y),
                length = Mm(laid.Piece.Length),
                at = grain == "" ? across - origin : length - across - origin;
            foreach (double edge in new[] { at - 0.17 * repeat, at + 0.17 * repeat }.Where(edge => edge > 1 && edge < size - 1))
            {
                var point = grain == "" ? new PlanePoint(edge, 0) : new PlanePoint(0, edge);
                Spot expected = sketch.At(top.Patches[0].Surface.At(point));
                Assert.Contains(drawn, spot => (spot - expected).Size < 0.5);
                found++;
            }
        }

        Assert.True(found > 4, "The face has no stripes.");
    }

    [Fact]
    public void Nearer_parts_of_a_tee_are_drawn_over_those_behind()
    {
        Drafting drafting = Draft(
            """ "construction": "boxed", "thickness": 4, "closure": { "kind": "hand-sewn" },"""
                + """ "outline": { "kind": "u", "width": 30, "depth": 24, "notchWidth": 8, "notchDepth": 16 } """
        );
        var scene = CushionScene.Of(drafting.Order.Cushions[0], drafting.Patterns[0]);
        var camera = new Camera(CameraTurn.None);
        VisiblePatch[] seen = [.. VisiblePatch.Of(scene, camera)];

        // Of the two walls beside the notch one faces the viewer; the arm before it hides a part of it.
        Assert.Equal(1 + 3, seen.Length);
        Assert.All(seen, patch => Assert.True(camera.Facing(patch.Patch.Surface.Normal(patch.Middle)) > 0));
    }

    [Fact]
    public void What_hides_a_wall_is_drawn_after_it()
    {
        List<(PlanePoint From, PlanePoint To, string Thing)> walls =
        [
            (new(0, 0), new(10, 0), "near"),
            (new(-20, 3), new(30, 12), "far"),
            (new(2, 2), new(4, 3), "between"),
        ];

        Assert.Equal(["far", "between", "near"], WallOrder.Of(walls));
    }

    [Fact]
    public void A_step_shows_the_pieces_that_it_handles_and_the_seam_between_them()
    {
        Drafting drafting = Striped("");
        Quote quote = QuotePipeline.Of(drafting, CancellationToken.None);
        string[] pictures =
        [
            .. Enumerable
                .Range(0, quote.Steps.Length)
                .Select(step => CushionPicture.WriteStep(quote, step, Language.English))
                .OfType<string>(),
        ];

        Assert.NotEmpty(pictures);
        Assert.Contains(pictures, picture => picture.Contains(Tint.Accent.Value, StringComparison.Ordinal));
        Assert.All(pictures, picture => Assert.True(picture.Length <= CushionPicture.UsualBytes));
    }

    [Fact]
    public void Pictures_of_steps_stop_when_the_caller_is_gone_and_are_the_same_from_one_scene_as_from_many()
    {
        Quote quote = QuotePipeline.Of(Striped(""), CancellationToken.None);
        var sources = new StepSources(quote);
        using var gone = new CancellationTokenSource();
        gone.Cancel();

        Assert.All(
            Enumerable.Range(0, quote.Steps.Length),
            step =>
                Assert.Equal(
                    CushionPicture.WriteStep(quote, step, Language.English),
                    CushionPicture.WriteStep(quote, sources, step, Language.English)
                )
        );
        Assert.Throws<OperationCanceledException>(() =>
            JobPictures.Of(quote, Language.English, gone.Token).Cushion(quote.Drafting.Order.Cushions[0].Id)
        );
    }

    private static double Mm(Engine.Measures.Length length) => length.Nanometres / 1e6;

    private static Drafting Striped(string grain) =>
        Draft(
            """ "construction": "boxed", "outline": { "kind": "rectangle", "width": 30, "depth": 18 }, "thickness": 3,"""
                + """ "closure": { "kind": "zipper" }"""
                + (grain == "" ? "" : $", \"grain\": \"{grain}\""),
            """ "repeat": { "width": 4.5, "motif": { "x": 1 } }, """
        );

    private static Drafting Draft(string cushion, string fabric = "")
    {
        JsonObject order = ConstructionOrders.Of(cushion);
        if (fabric.Length > 0)
        {
            foreach (
                (string name, JsonNode? value) in System
                    .Text.Json.Nodes.JsonNode.Parse($$"""{ {{fabric.Trim().TrimEnd(',')}} }""")!
                    .AsObject()
            )
            {
                order["fabrics"]![0]![name] = value!.DeepClone();
            }
        }

        IntakeResult intake = OrderIntake.Read(
            order.Deserialize<CushionService.Contract.Orders.Order>(CushionService.Json.ContractJson.Options)!,
            null,
            Purpose.Making
        );
        Assert.Empty(intake.Violations);
        return Drafting.Of(intake.Specification!);
    }
}
