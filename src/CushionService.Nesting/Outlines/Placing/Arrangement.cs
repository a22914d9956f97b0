using System.Diagnostics;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Where every copy lies at the moment, overlaps allowed; the flaws follow the copies and never move.</summary>
internal sealed class Arrangement
{
    private readonly Copies _copies;

    /// <summary>Sizes everything once; the flaws are laid, the copies are not.</summary>
    /// <param name="copies">The copies and flaws.</param>
    public Arrangement(Copies copies)
    {
        _copies = copies;
        All = copies.Count + copies.Flaws.Length;
        // Vectors of four read these arrays to the end of the last block.
        var padded = (All + 3) & ~3;
        (X, Y) = (new double[padded], new double[padded]);
        (Turn, Shape) = (new int[All], new int[All]);
        (Across, Along) = (new double[padded], new double[padded]);
        for (var flaw = 0; flaw < copies.Flaws.Length; flaw++)
        {
            X[copies.Count + flaw] = copies.Flaws[flaw].X;
            Y[copies.Count + flaw] = copies.Flaws[flaw].Y;
            Take(copies.Count + flaw, copies.FlawShapes[flaw]);
        }
    }

    /// <summary>Copies and flaws.</summary>
    public int All { get; }

    /// <summary>Left edges of the bounding boxes, whole grid units.</summary>
    public double[] X { get; }

    /// <summary>Lower edges of the bounding boxes, whole grid units.</summary>
    public double[] Y { get; }

    /// <summary>Which of its turns each copy lies in, an index into <see cref="Copies.TurnsOf(int)"/>.</summary>
    public int[] Turn { get; }

    /// <summary>The shape that each copy is in that turn.</summary>
    public int[] Shape { get; }

    /// <summary>Extents across the strip.</summary>
    public double[] Across { get; }

    /// <summary>Extents along the strip.</summary>
    public double[] Along { get; }

    /// <summary>Where the last copy ends.</summary>
    public double Length
    {
        get
        {
            var length = 0.0;
            for (var copy = 0; copy < _copies.Count; copy++)
            {
                length = Math.Max(length, Y[copy] + _copies.Along[Shape[copy]]);
            }

            return length;
        }
    }

    /// <summary>Lays a copy somewhere.</summary>
    /// <param name="copy">Which.</param>
    /// <param name="turn">One of its turns.</param>
    /// <param name="x">Left edge of its box, whole grid units, at least 0.</param>
    /// <param name="y">Lower edge of its box, likewise.</param>
    public void Put(int copy, int turn, double x, double y)
    {
        Debug.Assert(x >= 0 && y >= 0 && x == Math.Floor(x) && y == Math.Floor(y), "places are whole and on the strip");
        Debug.Assert(x + _copies.Across[_copies.TurnsOf(copy)[turn].Shape] <= _copies.Width, "a copy lies within the width");
        (X[copy], Y[copy], Turn[copy]) = (x, y, turn);
        Take(copy, _copies.TurnsOf(copy)[turn].Shape);
    }

    /// <summary>Takes over where all copies of another lie.</summary>
    /// <param name="other">An arrangement of the same copies.</param>
    public void CopyFrom(Arrangement other)
    {
        Array.Copy(other.X, X, All);
        Array.Copy(other.Y, Y, All);
        Array.Copy(other.Turn, Turn, All);
        Array.Copy(other.Shape, Shape, All);
        Array.Copy(other.Across, Across, All);
        Array.Copy(other.Along, Along, All);
    }

    /// <summary>How deep two copies (or a copy and a flaw) overlap.</summary>
    /// <param name="one">A copy or a flaw.</param>
    /// <param name="other">Another.</param>
    /// <returns>Grid units; 0 when they are apart or touch.</returns>
    public double Depth(int one, int other)
    {
        var (dx, dy) = (X[other] - X[one], Y[other] - Y[one]);
        if (dx >= Across[one] || dy >= Along[one] || -dx >= Across[other] || -dy >= Along[other])
        {
            return 0;
        }

        return _copies.Book.Depth(Shape[one], Shape[other], dx, dy);
    }

    /// <summary>Takes over the shape of a copy, and its extents beside its place, where the search
    /// reads them.</summary>
    private void Take(int copy, int shape)
    {
        (Shape[copy], Across[copy], Along[copy]) = (shape, _copies.Across[shape], _copies.Along[shape]);
    }
}
