namespace CushionService.Documents.Drawings;

/// <summary>Maps the fabric (x across, y up the bolt) to the drawing (y down the page): upright, the bolt running up the page, or
/// turned a quarter clockwise, the bolt running to the right. Neither mirrors the fabric nor changes its units.</summary>
/// <param name="Width">Extent across.</param>
/// <param name="From">Where the part that is shown starts along the fabric.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Turned">Whether the bolt runs to the right.</param>
/// <param name="Corner">Where its upper left corner is in the drawing.</param>
internal sealed record FabricView(double Width, double From, double To, bool Turned, Spot Corner)
{
    /// <summary>The part that is shown.</summary>
    public Box Frame => Turned ? new Box(Corner.X, Corner.Y, To - From, Width) : new Box(Corner.X, Corner.Y, Width, To - From);

    /// <summary>Up the bolt, in the drawing.</summary>
    public Spot Up => Turned ? new Spot(1, 0) : new Spot(0, -1);

    /// <summary>The transform under which coordinates of the fabric may be written as they are.</summary>
    public string Transform =>
        Turned
            ? $"matrix(0 1 1 0 {Canvas.Exact(Corner.X - From)} {Canvas.Exact(Corner.Y)})"
            : $"matrix(1 0 0 -1 {Canvas.Exact(Corner.X)} {Canvas.Exact(Corner.Y + To)})";

    /// <summary>A point of the fabric in the drawing.</summary>
    /// <param name="x">Across the fabric, in the answer's units.</param>
    /// <param name="y">Along the fabric.</param>
    public Spot At(double x, double y) => Turned ? new Spot(Corner.X + y - From, Corner.Y + x) : new Spot(Corner.X + x, Corner.Y + To - y);

    /// <summary>A rectangle of the fabric in the drawing.</summary>
    /// <param name="x">Its least coordinate across the fabric.</param>
    /// <param name="y">Its least coordinate along the fabric.</param>
    /// <param name="width">Across.</param>
    /// <param name="length">Along.</param>
    public Box At(double x, double y, double width, double length) =>
        Turned
            ? new Box(Corner.X + y - From, Corner.Y + x, length, width)
            : new Box(Corner.X + x, Corner.Y + To - y - length, width, length);

    /// <summary>The visible part of a rectangle of the drawing.</summary>
    /// <param name="box">In user units.</param>
    /// <returns>Without extent where nothing of it is seen.</returns>
    public Box Visible(Box box)
    {
        double left = Math.Max(box.X, Frame.X);
        double top = Math.Max(box.Y, Frame.Y);
        return new Box(
            left,
            top,
            Math.Max(0, Math.Min(box.Right, Frame.Right) - left),
            Math.Max(0, Math.Min(box.Bottom, Frame.Bottom) - top)
        );
    }
}
