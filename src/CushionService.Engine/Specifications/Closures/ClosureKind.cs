namespace CushionService.Engine.Specifications.Closures;

/// <summary>How the cover opens for its fill.</summary>
public enum ClosureKind
{
    /// <summary>A zipper.</summary>
    Zipper,

    /// <summary>Two hemmed strips or flaps that overlap, held by hook-and-loop tape.</summary>
    HookAndLoop,

    /// <summary>Two hemmed flaps that overlap, held by nothing.</summary>
    Envelope,

    /// <summary>A gap in a seam, closed by hand when the cover is filled.</summary>
    HandSewn,

    /// <summary>Two hemmed strips or flaps that overlap, held by buttons.</summary>
    Buttons,

    /// <summary>Two hemmed strips or flaps that overlap, held by pairs of ties.</summary>
    Ties,
}
