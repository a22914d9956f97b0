using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Contract.Orders;

/// <summary>How a boxing is joined.</summary>
public sealed record Boxing
{
    /// <summary>
    /// Where its panels join; at the corners when left out, except round a zipper with returns, which needs a wrapped strip.
    /// </summary>
    public BoxingJoins? Joins { get; init; }
}
