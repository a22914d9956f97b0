using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Materials;

/// <summary>How much zipper chain or tape a closure takes.</summary>
public static class Closing
{
    /// <summary>Length of zipper chain for one cover. In a section of its own it runs from raw edge to raw edge, and its ends are caught in
    /// the joins; in a side seam it is 2 1/2 in, or 6 cm, shorter than the side, centred (common practice, no source).</summary>
    /// <param name="cushion">A cushion with a zipper.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <returns>Rounded up to what a tape measure is read by, for one cover.</returns>
    public static Length ZipperChain(CushionSpecification cushion, Pattern pattern)
    {
        (Length seam, bool ownSection) = ZipperSeam(pattern);
        Length chain = ownSection ? seam + 2 * cushion.SeamAllowance : ZipperInSeam(seam, cushion.Practice.Closures);
        return chain.RoundUpTo(cushion.Practice.MeasuringStep);
    }

    /// <summary>Finished length of the seam in which a zipper is set, and whether that is a section of its own.</summary>
    /// <param name="pattern">A pattern with a zipper.</param>
    /// <returns>The sum of all zipper seams, since a boxing may be pieced along its zipper; zero where the pattern has
    /// none.</returns>
    public static (Length Seam, bool OwnSection) ZipperSeam(Pattern pattern)
    {
        (Length section, bool hasSection) = (Length.Zero, false);
        foreach (Seam seam in pattern.Seams)
        {
            if (seam.Kind == SeamKind.Zipper)
            {
                section += pattern.LengthOf(seam);
                hasSection = pattern[seam.One[0].Part][seam.One[0].Edge].Finish.Kind == FinishKind.ZipperTurnUnder;
            }
        }

        return (section, hasSection);
    }

    /// <summary>Length of a zipper set in a side seam.</summary>
    /// <param name="side">Finished length of the side.</param>
    /// <param name="practice">How much of the side is kept closed, both ends together.</param>
    /// <returns>Below zero where the side is shorter than what is kept closed.</returns>
    public static Length ZipperInSeam(Length side, ClosurePractice practice) => side - practice.ZipperKeptClosed;

    /// <summary>How far a gap for turning ends from each corner: at most a quarter of its seam, so that half of a short one stays open
    /// (common practice, no source).</summary>
    /// <param name="seam">Finished length of the seam.</param>
    /// <param name="practice">The usual distance, and what a tape measure is read by.</param>
    public static Length GapFromCorner(Length seam, WorkroomPractice practice)
    {
        long quarter = seam.Nanometres / 4;
        return Length.Min(practice.Sewing.GapFromCorner, Length.FromNanometres(quarter - (quarter % practice.MeasuringStep.Nanometres)));
    }

    /// <summary>Length of hook tape, and as much loop tape: the section less the clearance at each end.</summary>
    /// <param name="section">Finished length of the section.</param>
    /// <param name="practice">The workroom's clearance.</param>
    public static Length Tape(Length section, ClosurePractice practice) => section - 2 * practice.TapeClearance;
}
