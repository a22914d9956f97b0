namespace CushionService.Documents.Drawings;

/// <summary>How a line is drawn. Each meaning has a width and a dash of its own, so that nothing depends on seeing colour.</summary>
/// <param name="Width">In millimetres of the nominal print.</param>
/// <param name="Colour">As SVG writes it.</param>
/// <param name="Dash">Lengths of dashes and gaps in millimetres of the nominal print; empty for a solid line.</param>
internal sealed record Stroke(double Width, string Colour, params double[] Dash)
{
    /// <summary>Nearly black: what is cut, marked and read.</summary>
    public const string Ink = "#111";

    /// <summary>Dark grey: figures' lines and what is not cut.</summary>
    public const string Soft = "#555";

    /// <summary>Where scissors go.</summary>
    public static Stroke Cut { get; } = new(0.3, Ink);

    /// <summary>A fold: a long dash, then a short one.</summary>
    public static Stroke Fold { get; } = new(0.3, Ink, 4, 1, 0.6, 1);

    public static Stroke Mark { get; } = new(0.35, Ink);

    public static Stroke Fine { get; } = new(0.2, Soft);

    public static Stroke Hatch { get; } = new(0.18, "#777");

    public static Stroke Edge { get; } = new(0.3, Soft);

    /// <summary>Where a drawing ends and the fabric goes on.</summary>
    public static Stroke Torn { get; } = new(0.3, Ink, 1.5, 1);

    /// <summary>Where a motif repeats.</summary>
    public static Stroke Lattice { get; } = new(0.25, Soft, 0.4, 1.2);
}
