namespace CushionService.Engine.Scenes;

/// <summary>A round corner of a sheet that is drawn up round a square corner of the cushion.</summary>
/// <param name="Centre">Of the round, on the sheet.</param>
/// <param name="Radius">Of the round.</param>
/// <param name="Corner">The corner of the cushion at the seam.</param>
/// <param name="Before">To the corner, along the side that comes first, as one goes round counter-clockwise.</param>
/// <param name="After">From the corner, along the next side.</param>
/// <param name="Rise">From the seam to the sheet's face.</param>
/// <param name="Start">The direction on the sheet from the centre to where the round starts, in radians.</param>
/// <param name="Sweep">The angle of the round, below zero when it runs clockwise on the sheet.</param>
public sealed record GatheredSurface(
    PlanePoint Centre,
    double Radius,
    Vector Corner,
    Vector Before,
    Vector After,
    Vector Rise,
    double Start,
    double Sweep
) : Surface
{
    /// <inheritdoc />
    /// <remarks>The first half of the round goes along the side before the corner, the second along the side after it. A
    /// point's distance from the centre is how far it has come down to the seam.</remarks>
    public override Vector At(PlanePoint point)
    {
        PlanePoint from = point - Centre;
        double turn = Math.IEEERemainder(Math.Atan2(from.Y, from.X) - Start, 2 * Math.PI) / Sweep,
            share = Math.Clamp(turn, 0, 1),
            half = Radius / 2;
        Vector along = share < 0.5 ? (((2 * share) - 1) * half * Before) : (((2 * share) - 1) * half * After);
        return Corner + along + ((1 - Math.Min(1, from.Size / Radius)) * Rise);
    }

    /// <inheritdoc />
    public override Vector Normal(PlanePoint point) => (Before - After).Unit();
}
