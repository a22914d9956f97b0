using CushionService.Contract;

namespace CushionService.Documents.Labels;

/// <summary>A sheet of labels, or a roll of single ones; all lengths in millimetres.</summary>
/// <param name="Name">What callers call it.</param>
/// <param name="Width">Width of the sheet.</param>
/// <param name="Height">Height of the sheet.</param>
/// <param name="Columns">Labels across.</param>
/// <param name="Rows">Labels down.</param>
/// <param name="Across">Width of a label.</param>
/// <param name="Down">Height of a label.</param>
/// <param name="Gap">Between two columns; rows touch.</param>
internal sealed record LabelStock(
    string Name,
    double Width,
    double Height,
    int Columns,
    int Rows,
    double Across,
    double Down,
    double Gap = 0
)
{
    /// <summary>How callers name them, for documentation and refusals.</summary>
    public const string Names =
        "a4 (24 labels of 70 × 37 mm), a4-large (8 of 99.1 × 67.7 mm), letter (30 of 2 5/8 × 1 in), letter-large (10 of 4 × 2 in) "
        + "or roll-62mm (single labels of 62 × 40 mm)";

    // Sizes that are sold everywhere, by their measures alone (common practice, no source).
    private static readonly LabelStock[] All =
    [
        new("a4", 210, 297, 3, 8, 70, 37),
        new("a4-large", 210, 297, 2, 4, 99.1, 67.7, 2.5),
        new("letter", 215.9, 279.4, 3, 10, 66.675, 25.4, 3.175),
        new("letter-large", 215.9, 279.4, 2, 5, 101.6, 50.8, 4.7625),
        new("roll-62mm", 62, 40, 1, 1, 62, 40),
    ];

    /// <summary>Labels on a sheet.</summary>
    public int Count => Columns * Rows;

    /// <summary>From the left edge of the sheet to the first label; the labels are centred.</summary>
    public double Left => (Width - Columns * Across - (Columns - 1) * Gap) / 2;

    /// <summary>From the upper edge of the sheet to the first label.</summary>
    public double Top => (Height - Rows * Down) / 2;

    /// <summary>The stock of a name; null for another name.</summary>
    /// <param name="name">One of <see cref="Names"/>, without what is in brackets.</param>
    public static LabelStock? Named(string name) => Array.Find(All, stock => stock.Name == name);

    /// <summary>The usual one of a workroom that measures in these units.</summary>
    /// <param name="units">The order's unit: a workroom that measures in inches has Letter paper.</param>
    public static LabelStock For(Units units) => Named(units == Units.In ? "letter" : "a4")!;
}
