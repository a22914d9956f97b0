namespace CushionService.Engine.Specifications.Outlines;

/// <summary>The finished outline of a cushion's face, seen from above with the front towards one.</summary>
public enum OutlineKind
{
    /// <summary>A rectangle.</summary>
    Rectangle,

    /// <summary>A rectangle with round corners.</summary>
    RoundedRectangle,

    /// <summary>A circle.</summary>
    Circle,

    /// <summary>An ellipse.</summary>
    Oval,

    /// <summary>Half a circle, its straight side at the back.</summary>
    HalfRound,

    /// <summary>A rectangle with half a circle before it, its straight side at the back.</summary>
    DShape,

    /// <summary>A rectangle with half a circle at its left and right ends.</summary>
    RoundEnded,

    /// <summary>Front and back of different widths, for bays; it may lean to one side.</summary>
    Trapezoid,

    /// <summary>A rectangle with an ear at each front corner, which lies before the arms of a chair.</summary>
    Tee,

    /// <summary>A rectangle without its right or left back corner.</summary>
    Ell,

    /// <summary>A rectangle without the middle of its back.</summary>
    U,

    /// <summary>A polygon with equal sides and angles, one side at the front.</summary>
    RegularPolygon,

    /// <summary>Any simple polygon, its corners sharp or rounded.</summary>
    Polygon,
}
