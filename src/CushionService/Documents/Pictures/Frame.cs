using CushionService.Documents.Drawings;

namespace CushionService.Documents.Pictures;

/// <summary>Where the millimetres of a view lie in the picture.</summary>
/// <param name="Scale">Units of the picture in a millimetre.</param>
/// <param name="Shift">Where the view's origin lies, in units.</param>
internal readonly record struct Frame(double Scale, Spot Shift)
{
    /// <summary>A point of the view in the picture.</summary>
    /// <param name="seen">In millimetres of the view.</param>
    public Spot At(Spot seen) => Scale * seen + Shift;

    /// <summary>The frame in which a view fills a box as far as it can.</summary>
    /// <param name="seen">The extent of the view, in millimetres.</param>
    /// <param name="box">The box, in units.</param>
    public static Frame Within(Box seen, Box box)
    {
        // At least a millimetre, so that a view without extent does not divide by zero.
        double scale = Math.Min(box.Width / Math.Max(seen.Width, 1), box.Height / Math.Max(seen.Height, 1));
        return new Frame(scale, box.Centre - scale * seen.Centre);
    }
}
