using System.Text;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>Says in one line how the size of a cut piece comes about: "44 in + 2 × 1/2 in seam by 18 in + 2 × 1/2 in seam".</summary>
public static class Derivation
{
    /// <summary>The line for a piece, with lengths in a unit.</summary>
    /// <param name="piece">A cut piece.</param>
    /// <param name="unit">The unit in which lengths are written.</param>
    /// <returns>One line without an end mark; for a piece of the maker's own, only its size.</returns>
    public static string Of(CutPiece piece, LengthUnit unit)
    {
        if (piece.Panel is not { } panel)
        {
            return $"{LengthText.Format(piece.Width, unit)} by {LengthText.Format(piece.Length, unit)}, as ordered";
        }

        var line = new StringBuilder();
        if (panel.Because is { } because)
        {
            line.Append(because(unit)).Append("; ");
        }

        AppendSide(line, piece.WidthTerms, unit);
        line.Append(" by ");
        AppendSide(line, piece.LengthTerms, unit);
        return line.ToString();
    }

    // One side: finished size, take-up, the allowance at either edge, and last what rounding adds or takes off.
    private static void AppendSide(StringBuilder line, in CutSize size, LengthUnit unit)
    {
        line.Append(
            size.Layers == 1
                ? LengthText.Format(size.Finished, unit)
                : $"{size.Layers} layers of {LengthText.Format(Length.FromNanometres(size.Finished.Nanometres / size.Layers), unit)}"
        );
        if (size.TakeUp > Length.Zero)
        {
            line.Append(" + ").Append(LengthText.Format(size.TakeUp, unit)).Append(" drawn in by stitching");
        }

        if (size.First == size.Second)
        {
            Append(line, size.First, 2 * size.First.Turns, unit);
        }
        else
        {
            Append(line, size.First, size.First.Turns, unit);
            Append(line, size.Second, size.Second.Turns, unit);
        }

        if (size.Cut != size.Exact)
        {
            line.Append(size.Cut > size.Exact ? ", up to " : ", down to ").Append(LengthText.Format(size.Cut, unit));
        }
    }

    // Edges without an allowance, such as folds, are not mentioned.
    private static void Append(StringBuilder line, EdgeFinish finish, int times, LengthUnit unit)
    {
        if (times > 0 && finish.Depth > Length.Zero)
        {
            line.Append(" + ")
                .Append(times == 1 ? "" : $"{times} × ")
                .Append(LengthText.Format(finish.Depth, unit))
                .Append(' ')
                .Append(finish.Name);
        }
    }
}
