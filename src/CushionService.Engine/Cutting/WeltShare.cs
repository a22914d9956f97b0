using CushionService.Engine.Measures;

namespace CushionService.Engine.Cutting;

/// <summary>How much of a welt that is cut for several cushions goes to one of them.</summary>
/// <param name="Cushion">The cushion's id.</param>
/// <param name="Covers">How many covers are made of it.</param>
/// <param name="Length">Finished length, over all of them.</param>
public readonly record struct WeltShare(string Cushion, int Covers, Length Length);
