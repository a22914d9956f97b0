namespace CushionService.Engine.Fitting;

/// <summary>Whether pieces fit onto the fabric on hand, and how that is known.</summary>
public enum FitVerdict
{
    /// <summary>They fit: there is a layout.</summary>
    Fits,

    /// <summary>They cannot: a bound shows that no layout exists.</summary>
    Impossible,

    /// <summary>No layout was found at the effort spent.</summary>
    NotFound,
}
