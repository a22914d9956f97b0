using CushionService.Engine.Messages;

namespace CushionService.Documents.Projects;

/// <summary>How a first-time sewer does a step, beside the step itself.</summary>
/// <param name="Title">What is done, in a few plain words.</param>
/// <param name="How">How it is done (common practice, no source).</param>
internal sealed record Lesson(Message Title, Message How)
{
    /// <summary>The lesson of a step.</summary>
    /// <param name="key">What the step says: "step.join-run".</param>
    /// <returns>Null for a step that has none.</returns>
    public static Lesson? Of(string key) =>
        key switch
        {
            "step.wash-sample" => new(LessonTexts.WashSampleTitle, LessonTexts.WashSampleHow),
            "step.cut-fabric" => new(LessonTexts.CutFabricTitle, LessonTexts.CutFabricHow),
            "step.throughout" => new(LessonTexts.ThroughoutTitle, LessonTexts.ThroughoutHow),
            "step.finish-raw-edges" => new(LessonTexts.FinishRawEdgesTitle, LessonTexts.FinishRawEdgesHow),
            "step.match-print" => new(LessonTexts.MatchPrintTitle, LessonTexts.MatchPrintHow),
            "step.join-run" or "step.join-strip" or "step.waterfall-ends" => new(LessonTexts.JoinTitle, LessonTexts.JoinHow),
            "step.close-loop" => new(LessonTexts.CloseLoopTitle, LessonTexts.CloseLoopHow),
            "step.hem" => new(LessonTexts.HemTitle, LessonTexts.HemHow),
            "step.stay-stitch" => new(LessonTexts.StayStitchTitle, LessonTexts.StayStitchHow),
            "step.stay-stitch-hollows" => new(LessonTexts.StayStitchHollowsTitle, LessonTexts.StayStitchHollowsHow),
            "step.taper" => new(LessonTexts.TaperTitle, LessonTexts.TaperHow),
            "step.channels" => new(LessonTexts.ChannelsTitle, LessonTexts.ChannelsHow),
            "step.tuft-pleats" => new(LessonTexts.TuftPleatsTitle, LessonTexts.TuftPleatsHow),
            "step.gather" => new(LessonTexts.GatherTitle, LessonTexts.GatherHow),
            "step.zipper-shorten" => new(LessonTexts.ZipperShortenTitle, LessonTexts.ZipperShortenHow),
            "step.zipper-chain" => new(LessonTexts.ZipperChainTitle, LessonTexts.ZipperChainHow),
            "step.zipper-tails" => new(LessonTexts.ZipperTailsTitle, LessonTexts.ZipperTailsHow),
            "step.zipper-centred"
            or "step.zipper-lapped"
            or "step.seam-zipper-centred"
            or "step.seam-zipper-lapped"
            or "step.seam-zipper-edged" => new(LessonTexts.ZipperTitle, LessonTexts.ZipperHow),
            "step.seam-zipper-ends" => new(LessonTexts.SeamZipperTitle, LessonTexts.SeamZipperHow),
            "step.hook-and-loop" => new(LessonTexts.HookAndLoopTitle, LessonTexts.HookAndLoopHow),
            "step.buttons" => new(LessonTexts.ButtonsTitle, LessonTexts.ButtonsHow),
            "step.closure-ties" or "step.tie-ends" => new(LessonTexts.TiesTitle, LessonTexts.TiesHow),
            "step.overlap" => new(LessonTexts.OverlapTitle, LessonTexts.OverlapHow),
            "step.handle-webbing" or "step.handle-ends" => new(LessonTexts.HandleEndsTitle, LessonTexts.HandleEndsHow),
            "step.handle-strap" => new(LessonTexts.HandleTitle, LessonTexts.HandleHow),
            "step.pocket" => new(LessonTexts.PocketTitle, LessonTexts.PocketHow),
            "step.vents" => new(LessonTexts.VentsTitle, LessonTexts.VentsHow),
            "step.strip-folded" => new(LessonTexts.StripFoldedTitle, LessonTexts.StripFoldedHow),
            "step.strip-tube" => new(LessonTexts.StripTubeTitle, LessonTexts.StripTubeHow),
            "step.baste-ties" or "step.baste-straps" => new(LessonTexts.BasteOnTitle, LessonTexts.BasteOnHow),
            "step.base" => new(LessonTexts.BaseTitle, LessonTexts.BaseHow),
            "step.welt-straight" or "step.welt-bias-strips" => new(LessonTexts.WeltStripsTitle, LessonTexts.WeltStripsHow),
            "step.welt-continuous" => new(LessonTexts.WeltStripsTitle, LessonTexts.WeltContinuousHow),
            "step.welt-wrap" => new(LessonTexts.WeltWrapTitle, LessonTexts.WeltWrapHow),
            "step.welt-corners" or "step.welt-sides" or "step.welt-round" => new(LessonTexts.WeltOnTitle, LessonTexts.WeltOnHow),
            "step.piping-fold" => new(LessonTexts.PipingFoldTitle, LessonTexts.PipingFoldHow),
            "step.piping-baste" => new(LessonTexts.PipingOnTitle, LessonTexts.PipingOnHow),
            "step.trim-baste" => new(LessonTexts.TrimInTitle, LessonTexts.TrimInHow),
            "step.trim-on" => new(LessonTexts.TrimOnTitle, LessonTexts.TrimOnHow),
            "step.topstitch" => new(LessonTexts.TopstitchTitle, LessonTexts.TopstitchHow),
            "step.french-first" or "step.french-second" => new(LessonTexts.FrenchTitle, LessonTexts.FrenchHow),
            "step.flange-make" => new(LessonTexts.FlangeMakeTitle, LessonTexts.FlangeMakeHow),
            "step.flange-baste" => new(LessonTexts.FlangeOnTitle, LessonTexts.FlangeOnHow),
            "step.ruffle-make" => new(LessonTexts.RuffleMakeTitle, LessonTexts.RuffleMakeHow),
            "step.ruffle-baste" => new(LessonTexts.RuffleOnTitle, LessonTexts.RuffleOnHow),
            "step.gores" => new(LessonTexts.GoresTitle, LessonTexts.GoresHow),
            "step.mitres" or "step.corner-notches" => new(LessonTexts.CornersTitle, LessonTexts.CornersHow),
            "step.own-edges" => new(LessonTexts.OwnEdgesTitle, LessonTexts.OwnEdgesHow),
            "step.to-boxing" => new(LessonTexts.ToBoxingTitle, LessonTexts.ToBoxingHow),
            "step.to-body" => new(LessonTexts.ToBodyTitle, LessonTexts.ToBodyHow),
            "step.together" or "step.rest-together" => new(LessonTexts.TogetherTitle, LessonTexts.TogetherHow),
            "step.waterfall-side" => new(LessonTexts.WaterfallSideTitle, LessonTexts.WaterfallSideHow),
            "step.waterfall-back" => new(LessonTexts.WaterfallBackTitle, LessonTexts.WaterfallBackHow),
            "step.turn-out" => new(LessonTexts.TurnOutTitle, LessonTexts.TurnOutHow),
            "step.turn-flanges" => new(LessonTexts.TurnFlangesTitle, LessonTexts.TurnFlangesHow),
            "step.body-line" or "step.body-line-rest" => new(LessonTexts.BodyLineTitle, LessonTexts.BodyLineHow),
            "step.draw-ends" or "step.tie-body" => new(LessonTexts.DrawEndsTitle, LessonTexts.DrawEndsHow),
            "step.cut-foam" or "step.cut-foam-layers" or "step.cut-foam-wedge" or "step.cut-foam-roll" or "step.round-foam" => new(
                LessonTexts.CutFoamTitle,
                LessonTexts.CutFoamHow
            ),
            "step.wrap" or "step.wrap-roll" => new(LessonTexts.WrapTitle, LessonTexts.WrapHow),
            "step.insert-foam" => new(LessonTexts.InsertFoamTitle, LessonTexts.InsertFoamHow),
            "step.insert-roll" => new(LessonTexts.FillTitle, LessonTexts.InsertRollHow),
            "step.fill-loose" => new(LessonTexts.FillTitle, LessonTexts.FillHow),
            "step.insert-form" or "step.insert-inner" => new(LessonTexts.InsertFormTitle, LessonTexts.InsertFormHow),
            "step.close-gap" => new(LessonTexts.CloseGapTitle, LessonTexts.CloseGapHow),
            "step.close-closure" => new(LessonTexts.CloseClosureTitle, LessonTexts.CloseClosureHow),
            "step.check-box" or "step.check-round" or "step.check-roll" or "step.check-wedge" => new(
                LessonTexts.CheckTitle,
                LessonTexts.CheckHow
            ),
            "step.button-covers" => new(LessonTexts.ButtonCoversTitle, LessonTexts.ButtonCoversHow),
            "step.tufts" => new(LessonTexts.TuftsTitle, LessonTexts.TuftsHow),
            "step.glue-foam" or "step.glue-sheets" => new(LessonTexts.GlueFoamTitle, LessonTexts.GlueFoamHow),
            _ => null,
        };
}
