using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>An edging made, and basted to what it edges before the seam that catches it.</summary>
internal static class EdgingWork
{
    /// <summary>The work.</summary>
    /// <param name="plan">The cover; an inner cover has no edging.</param>
    /// <returns>Making the edging first, then basting it at each place that has one.</returns>
    public static IEnumerable<Work> Of(CoverPlan plan) =>
        plan.Cushion.Trim.Edging switch
        {
            SeamStripSpecification strip => Strip(plan, strip),
            BoughtTrimSpecification trim => TrimWork.Bought(plan, trim),
            TopstitchSpecification topstitch => TrimWork.Topstitched(plan, topstitch),
            RuffleSpecification ruffle => Ruffle(plan, ruffle),
            FlangeStripSpecification flange => Flange(plan, flange),
            _ => [],
        };

    // Strips are joined, wrapped round the cord or folded flat, then basted.
    // The length at each place is that of the seam line, not of the strip.
    private static IEnumerable<Work> Strip(CoverPlan plan, SeamStripSpecification strip)
    {
        bool flat = strip.Kind == EdgingKind.FlatPiping;
        var part = new PartName(flat ? PartKind.FlatPiping : PartKind.Welt);
        var made = new State(StateKind.Made, part);
        CutPiece piece = plan.Pieces.First(piece => piece.Part == part);
        WeltSupply supply = piece.Welt!;
        Length seam = plan.Workroom.Trims.WeltJoin;
        int covers = piece.Serves.Sum(share => share.Covers);
        Message strips = supply.Kind switch
        {
            WeltSupplyKind.StraightStrips => StepTexts.WeltStraight(seam, covers, plan.EdgingCare, flat),
            WeltSupplyKind.BiasStrips => StepTexts.WeltBiasStrips(seam, covers, plan.EdgingCare, flat),
            _ => StepTexts.WeltContinuous(piece.Quantity, seam, supply.Strip, covers, flat),
        };
        var joined = new State(StateKind.Joined, part);
        // The strips of several cushions are joined once, with the first of them.
        if (piece.Cushion?.Id == plan.Cushion.Id)
        {
            yield return new Work(strips, part).Making(joined);
        }

        yield return new Work(flat ? StepTexts.PipingFold(strip.Size, plan.EdgingCare) : StepTexts.WeltWrap(strip.Size), part)
            .After(joined)
            .Making(made);
        foreach (EdgingLoop loop in strip.At.Select(place => EdgingLoop.Of(plan.Pattern, place)))
        {
            Message where = plan.Bearing(loop.Place);
            Message text =
                flat ? StepTexts.PipingBaste(where, loop.Length, loop.IsClosed, plan.Workroom.Trims.WeltOverlap)
                : loop.Place == EdgingPlace.Corners ? StepTexts.WeltCorners(loop.Length)
                : !loop.IsClosed ? StepTexts.WeltSides(where, loop.Length)
                : StepTexts.WeltRound(where, loop.Length, plan.HasCorners, plan.Workroom.Trims.WeltOverlap);
            yield return Basted(plan, loop, text, [part]).After(made);
        }
    }

    // The mitres of a flange are sewn before it is basted: afterwards the face would be in the way.
    private static IEnumerable<Work> Flange(CoverPlan plan, FlangeStripSpecification flange)
    {
        ImmutableArray<PartName> strips = [.. plan.Pattern.Panels.Select(panel => panel.Part).Where(part => part.Kind == PartKind.Flange)];
        var made = new State(StateKind.Made, strips[0]);
        yield return new Work(StepTexts.FlangeMake, strips).Making(made);
        foreach (EdgingLoop loop in flange.At.Select(place => EdgingLoop.Of(plan.Pattern, place)))
        {
            yield return Basted(plan, loop, StepTexts.FlangeBaste(plan.Bearing(loop.Place), loop.Length), strips).After(made);
        }
    }

    // A folded ruffle has its fold as its outer edge and so needs no hem, which is what null means.
    private static IEnumerable<Work> Ruffle(CoverPlan plan, RuffleSpecification ruffle)
    {
        foreach (EdgingLoop loop in ruffle.At.Select(place => EdgingLoop.Of(plan.Pattern, place)))
        {
            Seam gathering = plan.Pattern.Seams.First(seam => seam.Kind == SeamKind.Gathered && seam.One.SequenceEqual(loop.Edges));
            ImmutableArray<PartName> strips = [.. gathering.Other.Select(edge => edge.Part)];
            var made = new State(StateKind.Made, strips[0]);
            Length? hem = ruffle.Lining == RuffleLining.Folded ? null : plan.Workroom.Trims.RuffleHem;
            yield return new Work(StepTexts.RuffleMake(strips.Length, hem), strips).Making(made);
            Message text = StepTexts.RuffleBaste(plan.Bearing(loop.Place), gathering.OtherFor(loop.Length), loop.Length, plan.HasCorners);
            yield return Basted(plan, loop, text, strips).After(made);
        }
    }

    /// <summary>An edging that is basted to what it is caught in.</summary>
    // Welt in the corners is caught when the boxing is closed to a loop, before any face is sewn on; it therefore waits for its panels
    // alone. Elsewhere what carries the edging must be whole first, with its base.
    public static Work Basted(CoverPlan plan, EdgingLoop loop, Message text, ImmutableArray<PartName> edging)
    {
        if (loop.Place == EdgingPlace.Corners)
        {
            ImmutableArray<PartName> panels = [.. loop.Edges.Select(edge => edge.Part).Distinct()];
            return new Work(text, [.. edging, .. panels])
                .After([
                    new State(StateKind.RawEdges),
                    .. panels.Select(part => plan.UnitOf(part).Is(StateKind.Fastened)),
                    .. panels.Select(part => new State(StateKind.Joined, CoverSeams.Base(part))),
                ])
                .Making(new State(StateKind.Edged, PartName.Boxing));
        }

        // A place may be on several units where an edging runs round panels that are joined later; all of them must be
        // whole.
        CoverUnit[] bearers =
        [
            .. plan.Units.Where(unit => unit.Parts.Any(part => EdgingLoop.HasEdging(plan.Pattern, new EdgeRef(part, default), loop.Place))),
        ];
        return new Work(text, [.. edging, .. bearers.SelectMany(unit => unit.Parts)])
            .After([.. bearers.SelectMany(CaughtWork.Whole), .. bearers.Select(unit => unit.Is(StateKind.Based))])
            .Making([.. bearers.Select(unit => unit.Is(StateKind.Edged))]);
    }
}
