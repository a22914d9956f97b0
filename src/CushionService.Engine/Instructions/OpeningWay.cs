namespace CushionService.Engine.Instructions;

/// <summary>What a cover is turned and filled through.</summary>
internal enum OpeningWay
{
    /// <summary>A gap in a seam.</summary>
    Gap,

    /// <summary>A zipper.</summary>
    Zipper,

    /// <summary>Flaps over each other.</summary>
    Envelope,

    /// <summary>An end of a body that is drawn up or tied later.</summary>
    End,

    /// <summary>Another closure that opens.</summary>
    Closure,
}
