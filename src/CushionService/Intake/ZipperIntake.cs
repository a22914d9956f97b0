using CushionService.Contract.Orders;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Intake;

/// <summary>Checks a zipper against the seam or the boxing that it opens, and specifies it.</summary>
/// <remarks>A centred zipper has a turn-under at each edge. A lapped one is hidden by a fold of one edge, the lap, which reaches over it;
/// the fold is stitched down at the edge distance beyond the lap.</remarks>
internal static class ZipperIntake
{
    private static readonly LengthField<Closure> TurnUnder = RecordForm<Closure>.Length(nameof(Closure.TurnUnder)),
        Lap = RecordForm<Closure>.Length(nameof(Closure.Lap));

    /// <summary>The zipper; null where one of its lengths was refused.</summary>
    /// <param name="closure">The closure as written.</param>
    /// <param name="fields">The closure's fields.</param>
    /// <param name="side">The side that it opens.</param>
    /// <param name="body">The cushion, the closure's return read.</param>
    /// <param name="findings">Takes what is wrong with the closure.</param>
    public static ZipperClosure? Read(Closure closure, Fields<Closure> fields, Side side, CushionBody body, Findings findings)
    {
        if (
            body.Return is not { } turn
            || fields.Or(TurnUnder, body.Practice.ZipperTurnUnder) is not { } under
            || fields.Or(Lap, Length.Zero) is not { } lap
        )
        {
            return null;
        }

        // A section of the boxing has its own height; a seam has none, only a length.
        if (body.ZipsSeam)
        {
            FitsSeam(side, lap, body, findings);
        }
        // The fold of a lap lies within the section that it hides.
        else if (lap >= Across(side, body))
        {
            Length across = Across(side, body)!.Value;
            findings.RefuseRange(Lap.Name, "out-of-range", ClosureTexts.Lap(across), Length.Zero, across);
        }

        // The fold that hides the zipper is stitched down through its own turn-under.
        Length stitched = lap + body.Practice.EdgeDistance;
        if (lap > Length.Zero && stitched > under)
        {
            findings.RefuseRange(
                Lap.Name,
                "lap-too-deep",
                ClosureTexts.LapTooDeep(lap, stitched, under),
                Length.Zero,
                under - body.Practice.EdgeDistance
            );
        }

        // The seam that shuts the ends beyond the zipper would be as deep as the lap.
        if (lap > Length.Zero && body.Written.Ends?.Kind is BolsterEndKind.Gathered or BolsterEndKind.Tied)
        {
            findings.Refuse(Lap.Name, "not-combinable", ClosureTexts.LapOnDrawnEnds);
        }

        if (closure.ZipperSize is { } size && size is >= 3 and <= 10 && !ZipperClosure.Sizes.Contains(size))
        {
            findings.Refuse(
                nameof(closure.ZipperSize),
                "out-of-range",
                ClosureTexts.ZipperSize(ZipperClosure.Sizes.Select(one => $"{one}")),
                new FindingRange(3, 10)
            );
        }

        if (body.ZipsThree && body.Outline is { } outline && !ClosureLine.RunsRound(outline, side))
        {
            findings.Refuse(nameof(closure.Extent), "not-combinable", ClosureTexts.NoThreeSides(side));
        }

        return new ZipperClosure(side, turn, under, lap)
        {
            ThreeSides = body.ZipsThree,
            Size = closure.ZipperSize,
            Sliders = closure.Sliders ?? 1,
            Colour = closure.ZipperColour is { Length: > 0 } colour ? colour : null,
        };
    }

    // A zipper in a seam ends short of the corners, and a lap needs a straight seam.
    private static void FitsSeam(Side side, Length lap, CushionBody body, Findings findings)
    {
        // A gathered corner shortens the seam by half its radius at each end.
        Length? seam = body.Offer.Kind == Construction.GatheredCorner ? body.SideLength(side) - body.Thickness : body.SideLength(side);
        // A side that the outline lacks is refused already.
        if (
            body.SideLength(side) is { Nanometres: > 0 } whole
            && seam is { } length
            && Closing.ZipperInSeam(length, body.Practice.Closures) < body.Practice.Closures.ShortestZipper
        )
        {
            findings.Refuse(nameof(Closure.Side), "side-too-short", ClosureTexts.SideTooShort(length > Length.Zero ? length : whole));
        }

        if (lap > Length.Zero && body.Outline is { HasCorners: false } curved)
        {
            findings.Refuse(Lap.Name, "not-combinable", ClosureTexts.LapOnCurves(curved.Kind));
        }

        // A lap needs a deeper allowance than the edging has, which would then lie beside the seam.
        if (lap > Length.Zero && EdgingIntake.IsSewnIn(body.Written.Edging))
        {
            findings.Refuse(Lap.Name, "not-combinable", ClosureTexts.LapBesideEdging);
        }
    }

    // What the opening lies across: the underside's depth, the boxing's height, or a cover without thickness all round.
    private static Length? Across(Side side, CushionBody body) =>
        side == Side.Bottom ? body.Outline?.Depth
        : body.Offer.Thickness ? body.BoxingHeight
        : body.Outline?.Perimeter;
}
