using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>How far the flaps of an envelope overlap: more on a larger face (common practice, no source: 3 in up to 14 in across, 4 in up
/// to 18 in, 5 in above).</summary>
/// <param name="Small">The largest small face across, and its overlap.</param>
/// <param name="Middle">The largest face of middle size across, and its overlap.</param>
/// <param name="Large">The overlap of a larger one.</param>
public sealed record EnvelopePractice((Length Across, Length Overlap) Small, (Length Across, Length Overlap) Middle, Length Large)
{
    /// <summary>The overlap on a face.</summary>
    /// <param name="across">Finished size across the overlap.</param>
    public Length Overlap(Length across) =>
        across <= Small.Across ? Small.Overlap
        : across <= Middle.Across ? Middle.Overlap
        : Large;
}
