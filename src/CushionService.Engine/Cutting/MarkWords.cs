using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>What marks are for, in words.</summary>
internal static class MarkWords
{
    /// <summary>A few words, for one who marks or sews.</summary>
    /// <param name="purpose">What the mark is for.</param>
    /// <exception cref="ArgumentOutOfRangeException">A purpose that has no words.</exception>
    public static string Of(MarkPurpose purpose) =>
        purpose switch
        {
            MarkPurpose.NameTop => "TOP, right side up",
            MarkPurpose.NameUnderside => "UNDERSIDE, right side up: the mirror image of the top",
            MarkPurpose.StitchBody => "Stitch the body's edge through all layers",
            MarkPurpose.FoldFlangeBack => "Fold the flange back",
            MarkPurpose.FoldLengthwise => "Fold lengthwise, right side out",
            MarkPurpose.FoldInFour => "Fold the long edges to the middle, then fold in half",
            MarkPurpose.FoldTube => "Fold in half, right side in",
            MarkPurpose.Tuft => "Tuft",
            MarkPurpose.CatchTies => "Catch a pair of ties in the seam here",
            MarkPurpose.CatchStrap => "Catch an end of a strap in the seam here",
            MarkPurpose.SewPocket => "Sew the pocket down on this line",
            MarkPurpose.SewHandleEnd => "Sew an end of the handle down here with a boxed X",
            MarkPurpose.SetEyelet => "Set an eyelet here",
            MarkPurpose.StitchChannel => "Stitch between two channels",
            MarkPurpose.TieBody => "Tie the body here",
            MarkPurpose.EdgeOfEnd => "The edge of the end",
            MarkPurpose.SewClosureTie => "Sew a tie of the closure on here",
            MarkPurpose.StopZipper => "The zipper starts or stops here",
            MarkPurpose.LapZipper => "Lap line of the zipper",
            MarkPurpose.Button => "Button or buttonhole",
            MarkPurpose.TaperCorner => "New seam line to the drawn-in corner",
            MarkPurpose.CutDiagonal => "Cut on the diagonal into two triangles",
            MarkPurpose.CutStripsApart => "Cut the strips apart",
            _ => throw new ArgumentOutOfRangeException(nameof(purpose)),
        };
}
