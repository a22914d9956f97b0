namespace CushionService.Engine.Scenes;

/// <summary>A strip that is gathered to a seam line and reaches out from it; a folded one comes back from its fold.</summary>
/// <param name="Line">The seam line.</param>
/// <param name="Outward">The way out at each of its points.</param>
/// <param name="Fullness">Length of the strip for each length of the line.</param>
/// <param name="Depth">How far it reaches out, in millimetres.</param>
public sealed record RuffleSurface(IReadOnlyList<Vector> Line, IReadOnlyList<Vector> Outward, double Fullness, double Depth) : Surface
{
    /// <inheritdoc />
    /// <remarks>X runs along the gathered strip: divided by the fullness it is the distance along the seam. Beyond the
    /// line's end lies its end.</remarks>
    public override Vector At(PlanePoint point)
    {
        double rest = point.X / Fullness,
            beyond = point.Y <= Depth ? point.Y : (2 * Depth) - point.Y;
        for (var i = 0; i + 1 < Line.Count; i++)
        {
            double length = (Line[i + 1] - Line[i]).Size;
            if (rest <= length && length > 0)
            {
                double share = rest / length;
                return Line[i] + (share * (Line[i + 1] - Line[i])) + (beyond * (Outward[i] + (share * (Outward[i + 1] - Outward[i]))));
            }

            rest -= length;
        }

        return Line[^1] + (beyond * Outward[^1]);
    }

    /// <inheritdoc />
    /// <remarks>Taken as level, which a ruffle at a face nearly is: it shades the strip, no more.</remarks>
    public override Vector Normal(PlanePoint point) => Vector.Up;
}
