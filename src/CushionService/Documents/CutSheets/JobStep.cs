namespace CushionService.Documents.CutSheets;

/// <summary>A step as documents show it.</summary>
/// <param name="Number">From 1, over all steps of the order.</param>
/// <param name="Cushion">The id of the cushion that it is about; null for a step of the whole order.</param>
/// <param name="Key">What it says, for programs, without the cushion: "step.join-run"; empty when not known.</param>
/// <param name="Text">What to do, without the name of the cushion.</param>
/// <param name="Pieces">The ids of the pieces that it handles.</param>
internal sealed record JobStep(int Number, string? Cushion, string Key, string Text, IReadOnlyList<string> Pieces);
