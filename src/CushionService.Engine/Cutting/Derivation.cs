using System.Text;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;

namespace CushionService.Engine.Cutting;

/// <summary>Says in one line how the size of a cut piece comes about: "44 in + 2 × 1/2 in seam by 18 in + 2 × 1/2 in seam".</summary>
public static class Derivation
{
    /// <summary>The line for a piece, with lengths in a unit.</summary>
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

        AppendSide(line, panel, panel.Width, panel.TakeUpAcross, piece.Width, EdgeFacing.Left, EdgeFacing.Right, panel.Layers, unit);
        line.Append(" by ");
        AppendSide(line, panel, panel.Height, panel.TakeUpAlong, piece.Length, EdgeFacing.Down, EdgeFacing.Up, panel.LayersAlong, unit);
        return line.ToString();
    }

    private static void AppendSide(
        StringBuilder line,
        Panel panel,
        Length finished,
        Length takeUp,
        Length cut,
        EdgeFacing first,
        EdgeFacing second,
        int layers,
        LengthUnit unit
    )
    {
        line.Append(
            layers == 1
                ? LengthText.Format(finished, unit)
                : $"{layers} layers of {LengthText.Format(Length.FromNanometres(finished.Nanometres / layers), unit)}"
        );
        if (takeUp > Length.Zero)
        {
            line.Append(" + ").Append(LengthText.Format(takeUp, unit)).Append(" drawn in by stitching");
        }

        EdgeFinish one = Finish(panel, first),
            other = Finish(panel, second);
        if (one == other)
        {
            Append(line, one, 2 * one.Turns, unit);
        }
        else
        {
            Append(line, one, one.Turns, unit);
            Append(line, other, other.Turns, unit);
        }

        if (cut != finished + takeUp + one.Allowance + other.Allowance)
        {
            line.Append(", up to ").Append(LengthText.Format(cut, unit));
        }
    }

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

    private static EdgeFinish Finish(Panel panel, EdgeFacing facing)
    {
        EdgeFinish deepest = default;
        foreach (Edge edge in panel.Edges)
        {
            if (edge.Facing == facing && (edge.Finish.Allowance > deepest.Allowance || deepest == default))
            {
                deepest = edge.Finish;
            }
        }

        return deepest;
    }
}
