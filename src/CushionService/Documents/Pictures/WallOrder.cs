using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Puts upright things in the order in which they are drawn: what hides another comes after it.</summary>
internal static class WallOrder
{
    private const double Slack = 0.05;

    // Each thing is compared with every other, again after each that is placed: the cube of their number. A long list is only sorted.
    private const int Most = 200;

    /// <summary>The things from the furthest to the nearest.</summary>
    /// <param name="things">Each with where it begins and ends on the floor, as the camera's plan says; of two that lie on each other the
    /// one listed later is drawn later.</param>
    /// <typeparam name="T">What is drawn; things are compared by reference.</typeparam>
    public static List<T> Of<T>(List<(PlanePoint From, PlanePoint To, T Thing)> things)
    {
        if (things.Count > Most)
        {
            return [.. things.OrderByDescending(one => one.From.Y + one.To.Y).Select(one => one.Thing)];
        }

        var ordered = new List<T>(things.Count);
        List<(PlanePoint From, PlanePoint To, T Thing)> left = [.. things.OrderByDescending(one => one.From.Y + one.To.Y)];
        while (left.Count > 0)
        {
            // Three things may hide each other in turn only where they cross; then the furthest goes first.
            int next = left.FindIndex(one => !left.Any(other => !ReferenceEquals(other.Thing, one.Thing) && Hides(one, other)));
            next = Math.Max(next, 0);
            ordered.Add(left[next].Thing);
            left.RemoveAt(next);
        }

        return ordered;
    }

    // Whether the first is nearer where both are seen in one line of sight.
    private static bool Hides<T>((PlanePoint From, PlanePoint To, T Thing) one, (PlanePoint From, PlanePoint To, T Thing) other)
    {
        double low = Math.Max(Math.Min(one.From.X, one.To.X), Math.Min(other.From.X, other.To.X)),
            high = Math.Min(Math.Max(one.From.X, one.To.X), Math.Max(other.From.X, other.To.X));
        return high - low > Slack && At(one.From, one.To, (low + high) / 2) < At(other.From, other.To, (low + high) / 2) - Slack;
    }

    private static double At(PlanePoint from, PlanePoint to, double x) =>
        Math.Abs(to.X - from.X) < 1e-9 ? Math.Min(from.Y, to.Y) : from.Y + (x - from.X) / (to.X - from.X) * (to.Y - from.Y);
}
