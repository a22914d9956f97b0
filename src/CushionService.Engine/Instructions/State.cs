using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>Something that one piece of work leaves done, and others need.</summary>
/// <param name="Kind">What.</param>
/// <param name="Part">The part or the unit that it is done to; none for the whole cover.</param>
/// <param name="Seam">The seam's number in the pattern, where it is a seam.</param>
/// <remarks>Two states are the same when all three are; the defaults mean "the whole cover" and "no seam".</remarks>
internal readonly record struct State(StateKind Kind, PartName Part = default, int Seam = 0);
