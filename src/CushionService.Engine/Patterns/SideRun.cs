using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns;

/// <summary>A run of the seam line round a face, counter-clockwise as one looks down on it.</summary>
/// <param name="Name">Names the run, and the edges on it.</param>
/// <param name="Side">The side that it lies on.</param>
/// <param name="Length">Finished length; a run without length is left out.</param>
internal readonly record struct SideRun(string Name, Side Side, Length Length);
