using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>What marks are for, in words.</summary>
internal static class MarkWords
{
    /// <summary>A few words, for one who marks or sews.</summary>
    /// <param name="purpose">What the mark is for.</param>
    /// <exception cref="ArgumentOutOfRangeException">A purpose that has no words.</exception>
    public static Message Of(MarkPurpose purpose) =>
        purpose switch
        {
            MarkPurpose.NameTop => MarkTexts.NameTop,
            MarkPurpose.NameUnderside => MarkTexts.NameUnderside,
            MarkPurpose.StitchBody => MarkTexts.StitchBody,
            MarkPurpose.FoldFlangeBack => MarkTexts.FoldFlangeBack,
            MarkPurpose.FoldLengthwise => MarkTexts.FoldLengthwise,
            MarkPurpose.FoldInFour => MarkTexts.FoldInFour,
            MarkPurpose.FoldTube => MarkTexts.FoldTube,
            MarkPurpose.Tuft => MarkTexts.Tuft,
            MarkPurpose.CatchTies => MarkTexts.CatchTies,
            MarkPurpose.CatchStrap => MarkTexts.CatchStrap,
            MarkPurpose.SewPocket => MarkTexts.SewPocket,
            MarkPurpose.SewHandleEnd => MarkTexts.SewHandleEnd,
            MarkPurpose.SetEyelet => MarkTexts.SetEyelet,
            MarkPurpose.StitchChannel => MarkTexts.StitchChannel,
            MarkPurpose.TieBody => MarkTexts.TieBody,
            MarkPurpose.EdgeOfEnd => MarkTexts.EdgeOfEnd,
            MarkPurpose.EdgeOfBody => MarkTexts.EdgeOfBody,
            MarkPurpose.SewClosureTie => MarkTexts.SewClosureTie,
            MarkPurpose.StopZipper => MarkTexts.StopZipper,
            MarkPurpose.LapZipper => MarkTexts.LapZipper,
            MarkPurpose.Button => MarkTexts.Button,
            MarkPurpose.TaperCorner => MarkTexts.TaperCorner,
            MarkPurpose.CutDiagonal => MarkTexts.CutDiagonal,
            MarkPurpose.CutStripsApart => MarkTexts.CutStripsApart,
            _ => throw new ArgumentOutOfRangeException(nameof(purpose)),
        };
}
