namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>What a search for a layout in a box ended with.</summary>
internal enum BoxOutcome
{
    /// <summary>The steps ran out: this proves nothing.</summary>
    Unknown,

    /// <summary>A layout was found.</summary>
    Found,

    /// <summary>Every possibility was ruled out.</summary>
    Impossible,
}
