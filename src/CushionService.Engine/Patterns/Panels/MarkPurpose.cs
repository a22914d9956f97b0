namespace CushionService.Engine.Patterns.Panels;

/// <summary>What a mark of a panel is for.</summary>
public enum MarkPurpose
{
    /// <summary>A cushion's name on its top.</summary>
    NameTop,

    /// <summary>A cushion's name on its underside, the mirror image of the top.</summary>
    NameUnderside,

    /// <summary>The line round the body of a flanged cover.</summary>
    StitchBody,

    /// <summary>Where a double flange is folded back.</summary>
    FoldFlangeBack,

    /// <summary>Where a strip is folded in half along its length.</summary>
    FoldLengthwise,

    /// <summary>Where a strap is folded in four.</summary>
    FoldInFour,

    /// <summary>Where a tube is folded in half, right side in.</summary>
    FoldTube,

    /// <summary>Where a tuft goes through.</summary>
    Tuft,

    /// <summary>Where a pair of ties is caught.</summary>
    CatchTies,

    /// <summary>Where an end of a strap is caught.</summary>
    CatchStrap,

    /// <summary>Where a pocket is sewn down.</summary>
    SewPocket,

    /// <summary>Where an end of a handle is sewn down.</summary>
    SewHandleEnd,

    /// <summary>Where an eyelet is set.</summary>
    SetEyelet,

    /// <summary>The stitching between two channels.</summary>
    StitchChannel,

    /// <summary>Where a bolster's body is tied.</summary>
    TieBody,

    /// <summary>Where a bolster's end begins.</summary>
    EdgeOfEnd,

    /// <summary>Where the body of a flanged cover ends on a flap.</summary>
    EdgeOfBody,

    /// <summary>Where a tie of the closure is sewn on.</summary>
    SewClosureTie,

    /// <summary>Where a zipper in a seam starts or stops.</summary>
    StopZipper,

    /// <summary>The line that the fold over a lapped zipper comes to, or is stitched on.</summary>
    LapZipper,

    /// <summary>A button or its hole.</summary>
    Button,

    /// <summary>The seam line to a tapered corner.</summary>
    TaperCorner,

    /// <summary>The first cut of a square for a continuous bias strip.</summary>
    CutDiagonal,

    /// <summary>Between two bias strips.</summary>
    CutStripsApart,
}
