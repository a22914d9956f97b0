namespace CushionService.Tests.Orders;

/// <summary>A convex outline on the fabric. Two of them are apart when some edge of either has the other wholly beyond it (the separating
/// axis theorem).</summary>
internal sealed record ConvexOutline(string Name, (double X, double Y)[] Corners)
{
    /// <summary>An outline turned counter-clockwise and moved until its lowest and leftmost extents stand at a place.</summary>
    public static ConvexOutline Laid(string name, (double X, double Y)[] corners, int degrees, double x, double y)
    {
        (double X, double Y)[] turned =
        [
            .. corners.Select(corner =>
                degrees switch
                {
                    90 => (-corner.Y, corner.X),
                    180 => (-corner.X, -corner.Y),
                    270 => (corner.Y, -corner.X),
                    _ => corner,
                }
            ),
        ];
        (double left, double low) = (turned.Min(corner => corner.X), turned.Min(corner => corner.Y));
        return new ConvexOutline(name, [.. turned.Select(corner => (corner.X - left + x, corner.Y - low + y))]);
    }

    /// <summary>Whether the outlines share more than a slack of room.</summary>
    public bool Overlaps(ConvexOutline other, double slack) => !Separates(other, slack) && !other.Separates(this, slack);

    private bool Separates(ConvexOutline other, double slack)
    {
        for (int i = 0; i < Corners.Length; i++)
        {
            ((double ax, double ay), (double bx, double by)) = (Corners[i], Corners[(i + 1) % Corners.Length]);
            double size = Math.Sqrt(((bx - ax) * (bx - ax)) + ((by - ay) * (by - ay)));
            if (size > 0 && other.Corners.All(corner => (((bx - ax) * (corner.Y - ay)) - ((by - ay) * (corner.X - ax))) / size <= slack))
            {
                return true;
            }
        }

        return false;
    }
}
