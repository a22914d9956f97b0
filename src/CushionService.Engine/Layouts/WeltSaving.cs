using CushionService.Engine.Measures;

namespace CushionService.Engine.Layouts;

/// <summary>How much of a fabric would be bought if the welt that is cut on the bias for want of another word were cut straight.</summary>
/// <param name="Pointer">The first such edging in the order, as a JSON Pointer.</param>
/// <param name="Sold">The length that would be bought.</param>
public sealed record WeltSaving(string Pointer, Length Sold);
