using System.Collections.Immutable;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Scenes;

/// <summary>A seam of the pattern on the finished cushion.</summary>
/// <param name="Seam">The seam.</param>
/// <param name="Lines">The edges of its one side as they lie, each with the panel and the patch that it is of.</param>
public sealed record SceneSeam(Seam Seam, ImmutableArray<SceneLine> Lines);
