namespace CushionService.Engine.Specifications.Closures;

/// <summary>The pair of sides that the flaps of an envelope come from.</summary>
public enum FlapSides
{
    /// <summary>The long sides: the opening runs along them.</summary>
    LongSide,

    /// <summary>The short sides: the opening runs along them. Of a square, the left and the right one.</summary>
    ShortSide,
}
