namespace CushionService.Nesting.Audit;

/// <summary>A copy or a flaw where it lies.</summary>
/// <param name="Number">Which one.</param>
/// <param name="Box">Its bounding box on the strip.</param>
/// <param name="Parts">Its convex parts, measured from the lower left corner of the box.</param>
internal readonly record struct PlacedParts(int Number, GridRectangle Box, ConvexPart[] Parts)
{
    /// <summary>Whether the interiors meet; touching is allowed.</summary>
    /// <param name="other">Another copy, or a flaw.</param>
    /// <remarks>Boxes are compared first; only what shares a part of its box with another is compared
    /// part by part.</remarks>
    public bool Meets(PlacedParts other)
    {
        var (dx, dy) = (other.Box.X - Box.X, other.Box.Y - Box.Y);
        if (dx >= Box.Width || -dx >= other.Box.Width || dy >= Box.Length || -dy >= other.Box.Length)
        {
            return false;
        }

        foreach (var part in Parts)
        {
            foreach (var theirs in other.Parts)
            {
                if (part.Meets(theirs, dx, dy))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
