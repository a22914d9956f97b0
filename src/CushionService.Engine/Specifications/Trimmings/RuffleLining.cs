namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>How the outer edge of a ruffle is finished.</summary>
public enum RuffleLining
{
    /// <summary>The strip is folded along its middle, and so lines itself.</summary>
    Folded,

    /// <summary>One layer with a narrow double hem.</summary>
    Single,
}
