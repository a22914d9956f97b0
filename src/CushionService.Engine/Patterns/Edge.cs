using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns;

/// <summary>One edge of a panel's finished outline, from one corner or notch to the next, counter-clockwise.</summary>
/// <param name="Name">Distinct within the panel.</param>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends; level with or plumb to the start.</param>
/// <param name="Finish">What happens there.</param>
public sealed record Edge(string Name, Point From, Point To, EdgeFinish Finish)
{
    /// <summary>Finished length.</summary>
    public Length Length
    {
        get
        {
            (Length dx, Length dy) = (To.X - From.X, To.Y - From.Y);
            return Length.FromNanometres(Math.Abs(dx.Nanometres) + Math.Abs(dy.Nanometres));
        }
    }

    /// <summary>Whether the panel lies above the edge (a lower edge), and so on counter-clockwise.</summary>
    public EdgeFacing Facing =>
        To.X > From.X ? EdgeFacing.Down : To.X < From.X ? EdgeFacing.Up : To.Y > From.Y ? EdgeFacing.Right : EdgeFacing.Left;

    /// <summary>The middle of the edge.</summary>
    public Point Middle => new(From.X + (To.X - From.X).HalfUp(), From.Y + (To.Y - From.Y).HalfUp());
}
