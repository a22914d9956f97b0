using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>What every piece of work on one cover must know.</summary>
internal sealed class CoverPlan
{
    /// <summary>The plan of one cover.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">The cover's pattern, without an inner cover's.</param>
    /// <param name="pieces">The pieces of the cushion.</param>
    /// <param name="workroom">How the workroom sews.</param>
    /// <param name="care">How its top is pressed.</param>
    public CoverPlan(
        CushionSpecification cushion,
        Pattern pattern,
        IReadOnlyList<CutPiece> pieces,
        WorkroomPractice workroom,
        FabricCare care
    )
    {
        (Cushion, Pattern, Pieces, Workroom, Care) = (cushion, pattern, pieces, workroom, care);
        Units = CoverUnits.Of(pattern);
        Seams = [.. pattern.Seams.Select((seam, i) => (i, seam)).Where(one => !pattern[one.seam.Other[0].Part].IsAddition)];
        // Gathered or notched corners leave no point to turn at the machine or to push out.
        bool soft = pattern.Panels.Any(panel => !panel.Gathers.IsEmpty) || pattern.Seams.Any(CoverSeams.IsNotch);
        HasCorners = !soft && cushion.Outline.HasOutsideCorners;
        HasInsideCorners = cushion.Outline.HasInsideCorners;
        HasCurves = cushion.Outline.Sides.Any(side => side.Path.Any(segment => segment.Sweep > 0));
        HasHollows = cushion.Outline.Sides.Any(side => side.Path.Any(segment => segment.Sweep < 0));
        HasStraights = cushion.Outline.Sides.Any(side => side.Path.Any(segment => segment.IsStraight));
    }

    /// <summary>The cushion as ordered; for an inner cover, the plain one that <see cref="Patterns.Constructions.InnerCover"/> makes of
    /// it.</summary>
    public CushionSpecification Cushion { get; }

    /// <summary>The pattern of this cover alone: never an outer and an inner cover together.</summary>
    public Pattern Pattern { get; }

    /// <summary>All pieces of the cushion, its other cover's too, and the welt that it shares with other cushions.</summary>
    public IReadOnlyList<CutPiece> Pieces { get; }

    /// <summary>Where every distance that the steps state comes from; no step has a figure of its own.</summary>
    public WorkroomPractice Workroom { get; }

    /// <summary>How the fabric of the top is treated. Where the fabrics differ, the top decides, since it is what is seen.</summary>
    public FabricCare Care { get; }

    /// <summary>What the shop stocks, which says how foam comes; empty where nothing is known of it.</summary>
    public ImmutableArray<StockSpecification> Stocks { get; init; } = [];

    /// <summary>The parts whose pieces are laid so that their print meets that of others.</summary>
    public ImmutableHashSet<PartName> Printed { get; init; } = [];

    /// <summary>Whether a zipper that has no closed ends is cut from a roll of chain.</summary>
    public bool BuysChain { get; init; }

    /// <summary>The zipper with closed ends that is bought; null for none, and for one by length.</summary>
    public ClosedZipper? Zipper => HasZipper ? ClosedZipper.For(Cushion, Pattern, Stocks) : null;

    /// <summary>Whether its zipper is chain from a roll, on which sliders are put.</summary>
    public bool HasChain => HasZipper && BuysChain && Zipper is null;

    /// <summary>The units, in the pattern's order.</summary>
    public ImmutableArray<CoverUnit> Units { get; }

    /// <summary>The seams of the shell, with their numbers in the pattern.</summary>
    public ImmutableArray<(int Number, Seam Seam)> Seams { get; }

    /// <summary>Whether the seam line turns at outward corners.</summary>
    public bool HasCorners { get; }

    /// <summary>Whether the seam line turns at inward corners.</summary>
    public bool HasInsideCorners { get; }

    /// <summary>Whether a part of the seam line is curved outward: what goes round it must spread.</summary>
    public bool HasCurves { get; }

    /// <summary>Whether a part of the seam line is curved inward: there the face must spread.</summary>
    public bool HasHollows { get; }

    /// <summary>Whether a part of the seam line is straight.</summary>
    public bool HasStraights { get; }

    /// <summary>How the fabric of the edging is treated.</summary>
    public FabricCare EdgingCare { get; init; }

    /// <summary>Whether clips hold the layers: pins leave holes in a coating.</summary>
    public bool ByClips => Care == FabricCare.Roll;

    /// <summary>Whether it is the cover within the cover.</summary>
    public bool IsInner => Units[0].Name.IsInner;

    /// <summary>Whether the cover opens and closes again.</summary>
    public bool Opens => Cushion.Closure is not HandSewnClosure;

    /// <summary>Whether it opens by a zipper.</summary>
    public bool HasZipper => Cushion.Closure is ZipperClosure;

    /// <summary>Whether an allowance is clipped or notched to go round a curve. One that ends where a clip would is narrow enough to lie
    /// flat as it is (common practice, no source).</summary>
    public bool Clips => Allowance > Workroom.Sewing.ClipMargin;

    /// <summary>Seam allowance.</summary>
    public Length Allowance => Cushion.SeamAllowance;

    /// <summary>What an edging runs round, as its piece is called: a bolster has ends where others have side panels.</summary>
    /// <param name="place">Where the edging is.</param>
    public Message Bearing(EdgingPlace place) => StepTexts.Place(place, Cushion.Construction == Construction.Bolster);

    /// <summary>The unit of a part.</summary>
    /// <exception cref="InvalidOperationException">The part is an addition, such as a tie, or not of this cover.</exception>
    /// <param name="part">A part of the shell.</param>
    public CoverUnit UnitOf(PartName part) => Units.First(unit => unit.Has(part));

    /// <summary>The panel that carries a mark.</summary>
    /// <exception cref="InvalidOperationException">No panel of the cover carries it.</exception>
    /// <param name="purpose">A purpose that one panel alone has.</param>
    public PartName Marked(MarkPurpose purpose) => Pattern.Panels.First(panel => panel.Marks.Any(mark => mark.Purpose == purpose)).Part;

    /// <summary>The panels that carry a mark, at least one where the cover has what it is for.</summary>
    /// <param name="purpose">A purpose whose marks may lie on several panels of a joined part.</param>
    public ImmutableArray<PartName> AllMarked(MarkPurpose purpose) =>
        [.. Pattern.Panels.Where(panel => panel.Marks.Any(mark => mark.Purpose == purpose)).Select(panel => panel.Part)];

    /// <summary>Finished length of several seams.</summary>
    /// <param name="seams">Seams of this cover; each is counted once, by its one side.</param>
    public Length LengthOf(IEnumerable<(int Number, Seam Seam)> seams) =>
        seams.Aggregate(Length.Zero, (sum, one) => sum + Pattern.LengthOf(one.Seam));

    /// <summary>Where the gap for turning is left; null when no seam has one.</summary>
    /// <param name="seams">Seams that are sewn in one go; at most one of them has the gap.</param>
    /// <returns>Null also for a cover whose zipper or flaps make a gap needless.</returns>
    public Message? Gap(IEnumerable<(int Number, Seam Seam)> seams)
    {
        (int Number, Seam Seam)[] gaps = [.. seams.Where(one => one.Seam.Kind == SeamKind.Gap)];
        if (gaps.Length == 0)
        {
            return null;
        }

        Side side = Cushion.Closure.Side;
        Length apart = Closing.GapFromCorner(LengthOf(gaps), Workroom);
        // What is drawn or tied beyond a body is sewn shut.
        return Cushion.Ends is { Kind: not BolsterEndKind.Flat } ? StepTexts.GapBody(apart)
            // The back of a waterfall has two seams.
            : Cushion.Construction == Construction.Waterfall ? StepTexts.GapUnderside(apart)
            : IsCurved(side) ? StepTexts.GapRound(side, apart)
            : StepTexts.Gap(side, apart);
    }

    /// <summary>Whether a side is curved, so that it has ends and no corners.</summary>
    /// <param name="side">A side of the outline.</param>
    public bool IsCurved(Side side) => Cushion.Outline.Sides.Any(stretch => stretch.Side == side && !stretch.IsStraight);
}
