using CushionService.Engine.Messages;

namespace CushionService.Engine.Instructions;

/// <summary>The tools that a step asks for, by what its sentence says (common practice, no source).</summary>
internal static class StepTools
{
    /// <summary>The tools of a step, those of the sentences within it among them; a tool may come twice.</summary>
    /// <param name="text">What the step says.</param>
    public static IEnumerable<Tool> Of(Message text)
    {
        string key = text.Key[(text.Key.IndexOf('.', StringComparison.Ordinal) + 1)..];
        return Own(key, text).Concat(text.Arguments.Select(argument => argument.Value).OfType<Message>().SelectMany(Of));
    }

    private static IEnumerable<Tool> Own(string key, Message text) =>
        key switch
        {
            "wash-sample" => [Tool.TapeMeasure],
            "cut-fabric" => [Tool.Ruler, Tool.Shears, Tool.Marker, .. Pressing(text)],
            "throughout" => Is(text, "clips")
                ? [Tool.SewingMachine, Tool.SharpNeedle, Tool.Clips]
                : [Tool.SewingMachine, Tool.UniversalNeedle, Tool.Pins],
            "finish-raw-edges" => Word(text, "finish") switch
            {
                "overedge" => [Tool.OveredgeMachine],
                "pinked" => [Tool.PinkingShears],
                _ => [Tool.SewingMachine],
            },
            "join-run" or "welt-straight" => Pressing(text),
            "welt-bias-strips" => [Tool.Shears, .. Pressing(text)],
            "close-loop" or "join-strip" => [Tool.TapeMeasure, .. Pressing(text)],
            "stay-stitch-hollows" => [Tool.Shears],
            "taper" => [Tool.Ruler, Tool.Marker, Tool.Shears],
            "channels" => [Tool.Ruler, Tool.Marker, Tool.TapeMeasure],
            "tuft-pleats" => [Tool.TapeMeasure],
            "zipper-shorten" => [Tool.TapeMeasure, Tool.HandNeedle, Tool.Shears],
            "zipper-chain" => [Tool.TapeMeasure, Tool.Shears],
            "zipper-centred" or "zipper-lapped" => [Tool.ZipperFoot, .. Pressing(text), .. Clipping(text, "trim")],
            "seam-zipper-edged" or "seam-zipper-lapped" => [Tool.ZipperFoot, .. Pressing(text)],
            "hook-and-loop" or "overlap" => Clipping(text, "trim"),
            // It is sewn over a basting, which is taken out again.
            "seam-zipper-centred" => [Tool.ZipperFoot, Tool.SeamRipper, .. Pressing(text)],
            "buttons" => [Tool.ButtonholeFoot, Tool.HandNeedle],
            "vents" => [Tool.EyeletSetter],
            "strip-tube" => [Tool.Bodkin, .. Pressing(text)],
            "welt-continuous" => [Tool.Ruler, Tool.Marker, Tool.Shears],
            "welt-round" => [Tool.CordingFoot, Tool.Shears],
            "welt-wrap" or "welt-sides" or "welt-corners" => [Tool.CordingFoot],
            "piping-fold" or "french-second" => Pressing(text),
            "piping-baste" => Clipping(text, "closed"),
            "trim-baste" => Word(text, "kind") == "lip-cord" ? [Tool.CordingFoot, .. Clipping(text, "closed")] : Clipping(text, "closed"),
            "to-boxing" => Clipping(text, "curves", "corners", "inside"),
            "to-body" => Clipping(text, "within", "corners"),
            "waterfall-side" => Clipping(text, "square", "within"),
            "together" or "rest-together" => Clipping(text, "inside"),
            "trim-on" => [Tool.HandNeedle],
            "french-first" => [Tool.Shears],
            "base" => [Tool.Shears],
            "turn-out" =>
            [
                .. Clipping(text, "corners", "curves", "hollows"),
                .. Is(text, "corners") ? [Tool.PointTurner] : Array.Empty<Tool>(),
                .. Pressing(text),
            ],
            "turn-flanges" => [Tool.PointTurner, .. Pressing(text)],
            "draw-ends" or "close-gap" or "wrap" or "wrap-roll" => [Tool.HandNeedle],
            "cut-foam" or "cut-foam-layers" or "round-foam" or "cut-foam-wedge" or "cut-foam-roll" =>
            [
                Tool.FoamKnife,
                Tool.Ruler,
                Tool.Marker,
            ],
            "check-box" or "check-wedge" or "check-round" or "check-roll" => [Tool.TapeMeasure],
            "button-covers" => [Tool.Shears, Tool.ButtonPress],
            "tufts" => [Tool.TuftingNeedle],
            _ => [],
        };

    // Coated fabric is rolled flat and creased with a finger; pile is steamed.
    private static IEnumerable<Tool> Pressing(Message text) =>
        Word(text, "care") switch
        {
            "roll" => [],
            "steam" or "wash-pile" => [Tool.Steamer],
            _ => [Tool.Iron],
        };

    // Allowances are clipped, notched or trimmed where a flag is set or a depth is given.
    private static Tool[] Clipping(Message text, params ReadOnlySpan<string> where)
    {
        foreach (string name in where)
        {
            MessageArgument argument = text.Arguments[text.Template.Names.IndexOf(name)];
            if (argument.Kind == ArgumentKind.Flag ? argument.Number == 1 : argument.Kind != ArgumentKind.None)
            {
                return [Tool.Shears];
            }
        }

        return [];
    }

    private static bool Is(Message text, string flag) => text.Arguments[text.Template.Names.IndexOf(flag)].Number == 1;

    private static string? Word(Message text, string name) =>
        (text.Arguments[text.Template.Names.IndexOf(name)].Value as ContractWord)?.Text;
}
