using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Tests.Scenes;

/// <summary>Where a print lies on the panels of a cushion, held against the layout that the pieces are cut from.</summary>
public sealed class PrintPhaseFacts
{
    public static TheoryData<string, Grain> Prints =>
        new()
        {
            { "stripes", Grain.UpTheBolt },
            { "stripes", Grain.Railroaded },
            { "bands", Grain.UpTheBolt },
            { "straight", Grain.UpTheBolt },
            { "straight", Grain.Railroaded },
            { "half-drop", Grain.UpTheBolt },
            { "half-drop", Grain.Railroaded },
        };

    [Theory]
    [MemberData(nameof(Prints))]
    public void A_motif_of_the_panel_is_a_motif_of_the_fabric(string print, Grain grain)
    {
        (FabricLayout layout, RepeatSpecification repeat) = LaidOut(print, grain);
        foreach (LaidPiece laid in layout.Placements)
        {
            PrintPhase phase = PrintPhase.Of(laid, layout)!;
            foreach ((int i, int j) in new[] { (0, 0), (1, 0), (0, 1), (2, -1), (-3, 2) })
            {
                if ((i != 0 && phase.Across is null) || (j != 0 && phase.Along is null))
                {
                    continue;
                }

                PlanePoint at = phase.Motif + (i * (phase.Across ?? default)) + (j * (phase.Along ?? default));
                (double x, double y) = OnFabric(laid, at);
                IsOnLattice(layout, repeat, x, y);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public void A_matched_panel_has_a_motif_at_its_matching_point(string print, Grain grain)
    {
        (FabricLayout layout, _) = LaidOut(print, grain);
        LaidPiece[] matched = [.. layout.Placements.Where(laid => laid.IsMatched)];
        Assert.NotEmpty(matched);
        foreach (LaidPiece laid in matched)
        {
            PrintPhase phase = PrintPhase.Of(laid, layout)!;
            PlanePoint off = PlanePoint.Of(laid.Piece.Panel!.Match!.Value) - phase.Motif;
            foreach (
                PlanePoint step in new[] { phase.Across, phase.Along }
                    .OfType<PlanePoint>()
                    .Where(_ => phase.Across is null || phase.Along is null)
            )
            {
                double repeats = off.Dot(step) / step.Dot(step);
                Assert.Equal(Math.Round(repeats), repeats, 1e-4);
            }

            if (phase is { Across: { } across, Along: { } along })
            {
                double area = (across.X * along.Y) - (across.Y * along.X),
                    i = ((off.X * along.Y) - (off.Y * along.X)) / area,
                    j = ((across.X * off.Y) - (across.Y * off.X)) / area;
                Assert.Equal(Math.Round(i), i, 1e-4);
                Assert.Equal(Math.Round(j), j, 1e-4);
            }
        }
    }

    private static (FabricLayout Layout, RepeatSpecification Repeat) LaidOut(string print, Grain grain)
    {
        RepeatSpecification repeat = print switch
        {
            "stripes" => new(null, In(4.5m), DropKind.Straight) { MotifX = In(1) },
            "bands" => new(In(5), null, DropKind.Straight) { MotifY = In(2) },
            "straight" => new(In(9), In(6), DropKind.Straight) { MotifX = In(2), MotifY = In(3) },
            _ => new(In(9), In(6), DropKind.Half) { MotifX = In(2), MotifY = In(3) },
        };
        CushionSpecification cushion = Boxed(19, 17, 3, BackZipper) with { Grain = grain };
        Drafting drafting = Drafting.Of(Order(cushion, Fabric with { Repeat = repeat }));
        ImmutableArray<Yardage> yardages = QuotePipeline.LayOut(drafting, CancellationToken.None);
        return (yardages[0].Layout, repeat);
    }

    // Forward from the panel, as the layout's own coordinates say: allowances, then the turn, then the place.
    private static (double X, double Y) OnFabric(LaidPiece laid, PlanePoint at)
    {
        (double x, double y) = (at.X + (laid.Piece.Origin.X.Nanometres / 1e6), at.Y + (laid.Piece.Origin.Y.Nanometres / 1e6));
        (double width, double length) = (laid.Piece.Width.Nanometres / 1e6, laid.Piece.Length.Nanometres / 1e6);
        (x, y) = laid.Turn switch
        {
            90 => (length - y, x),
            180 => (width - x, length - y),
            270 => (y, width - x),
            _ => (x, y),
        };
        return (x + (laid.X.Nanometres / 1e6), y + (laid.Y.Nanometres / 1e6));
    }

    private static void IsOnLattice(FabricLayout layout, RepeatSpecification repeat, double x, double y)
    {
        double columns = 0;
        if (repeat.Width is { } width)
        {
            columns = (x - (layout.MotifX!.Value.Nanometres / 1e6)) / (width.Nanometres / 1e6);
            Assert.Equal(Math.Round(columns), columns, 1e-5);
        }

        if (repeat.Length is { } length)
        {
            double drop = repeat.Drop == DropKind.Half && Math.Round(columns) % 2 != 0 ? 0.5 : 0,
                rows = ((y - (layout.MotifStart.Nanometres / 1e6)) / (length.Nanometres / 1e6)) - drop;
            Assert.Equal(Math.Round(rows), rows, 1e-5);
        }
    }
}
