using CushionService.Engine.Measures;

namespace CushionService.Engine.Cutting;

/// <summary>Bias strips for a welt: from continuous squares or by whole strips, whichever takes less fabric.</summary>
/// <remarks>True bias lies at 45° to both thread systems (The New Dressmaker, 1921, page 15). So a strip from selvedge to selvedge is
/// Fw√2 long, strips of width w stand w√2 apart along the selvedge, and a square of side S gives whole turns n = ⌊(S − 2j)/(w√2)⌋ of a
/// strip 2n²w long (general geometry).</remarks>
public static class BiasSupply
{
    // A bound for a fabric so narrow that no number of squares fits it.
    private const int MostSquares = 64;

    // What a further join must save of the fabric to be worth its sewing, about 1/8 yd (common practice, no source).
    private static readonly Length WorthAJoin = Length.FromMillimetres(100);

    /// <summary>The way that is sold shortest where nothing else is cut from the fabric, squares side by side across it; a further join
    /// must save 10 cm.</summary>
    /// <param name="need">Length of welt, above zero.</param>
    /// <param name="strip">Width of the strip, above zero.</param>
    /// <param name="allowance">Allowance of a join, on each strip.</param>
    /// <param name="usable">Usable width of the fabric.</param>
    /// <param name="step">Cut sizes are multiples of it.</param>
    /// <param name="sold">The length that is sold for a length along the fabric.</param>
    /// <returns>A square wider than the fabric where nothing fits it.</returns>
    public static WeltSupply Alone(Length need, Length strip, Length allowance, Length usable, Length step, Func<Length, Length> sold)
    {
        ArgumentNullException.ThrowIfNull(sold);
        (WeltSupply Way, Length Cost)? best = null;
        for (var squares = 1; squares <= MostSquares; squares++)
        {
            WeltSupply square = Squares(need, strip, squares, allowance, step);
            if (square.Width <= usable)
            {
                long across = usable.Nanometres / square.Width.Nanometres,
                    rows = (squares + across - 1) / across;
                Offer(square, rows * square.Length, squares - 1);
            }
        }

        if (WholeStrips(need, strip, allowance, usable, step) is { } strips)
        {
            Offer(strips, strips.Length, strips.Strips - 1);
        }

        return best?.Way ?? Squares(need, strip, 1, allowance, step);

        // Of equal ways the first: the one with the fewest joins.
        void Offer(WeltSupply way, Length along, int joins)
        {
            Length cost = sold(along) + joins * WorthAJoin;
            if (best is not { } known || cost < known.Cost)
            {
                best = (way, cost);
            }
        }
    }

    /// <summary>The way that takes less area, for a fabric of which other pieces are cut beside it.</summary>
    /// <param name="need">Length of welt, above zero.</param>
    /// <param name="strip">Width of the strip, above zero.</param>
    /// <param name="allowance">Allowance of a join, on each strip.</param>
    /// <param name="usable">Usable width of the fabric.</param>
    /// <param name="step">Cut sizes are multiples of it.</param>
    /// <returns>A square wider than the fabric where nothing fits it.</returns>
    public static WeltSupply For(Length need, Length strip, Length allowance, Length usable, Length step)
    {
        WeltSupply? best = WholeStrips(need, strip, allowance, usable, step);
        var widest = 1;
        while (widest < MostSquares && Squares(need, strip, widest, allowance, step).Width > usable)
        {
            widest++;
        }

        // Many small squares would save a little fabric and cost a join each: the fewest that the width allows, or one more.
        // "No more" and not "less": of equal amounts of fabric the continuous strip has fewer joins to sew.
        for (int squares = widest; squares <= widest + 1; squares++)
        {
            WeltSupply square = Squares(need, strip, squares, allowance, step);
            if (square.Width <= usable && (best is null || square.Fabric.SquareNanometres <= best.Fabric.SquareNanometres))
            {
                best = square;
            }
        }

        return best ?? Squares(need, strip, 1, allowance, step);
    }

    /// <summary>Squares of one size: n = ⌈√(need / 2w)⌉ turns each, side n w√2 and two join allowances.</summary>
    /// <param name="need">Length of welt, above zero.</param>
    /// <param name="strip">Width of the strip, above zero.</param>
    /// <param name="squares">How many, at least 1; their strips are joined on the slant, which takes a strip's width each time.</param>
    /// <param name="allowance">Allowance of a join, on each strip.</param>
    /// <param name="step">Cut sizes are multiples of it.</param>
    public static WeltSupply Squares(Length need, Length strip, int squares, Length allowance, Length step)
    {
        Length joined = need + (squares - 1) * strip;
        long each = (joined.Nanometres + squares - 1) / squares;
        var turns = (int)Math.Ceiling(Math.Sqrt(each / (2.0 * strip.Nanometres)));
        // The square root is rounded; in whole nanometres the turns must give the whole length.
        while ((Int128)2 * turns * turns * strip.Nanometres < each)
        {
            turns++;
        }

        Length side = (turns * Diagonal(strip) + 2 * allowance).RoundUpTo(step);
        return new WeltSupply(
            WeltSupplyKind.ContinuousSquare,
            squares,
            turns,
            strip,
            side,
            side,
            (squares * 2L * turns * turns * strip) - ((squares - 1) * strip)
        );
    }

    /// <summary>Whole strips from selvedge to selvedge, side by side: a slanted piece n w√2 along the selvedge. Their ends lie along the
    /// thread, so that a join takes only its two allowances, 2j√2 along the strip.</summary>
    // Null where a strip from selvedge to selvedge is no longer than the join that it would take.
    private static WeltSupply? WholeStrips(Length need, Length strip, Length allowance, Length usable, Length step)
    {
        // Down to a cutting step, so that the block is never cut wider than the fabric.
        Length across = Length.FromNanometres(usable.Nanometres - (usable.Nanometres % step.Nanometres));
        Length join = Diagonal(2 * allowance);
        Length whole = Length.FromNanometres((long)Math.Floor(across.Nanometres * Math.Sqrt(2)));
        if (whole <= join)
        {
            return null;
        }

        long each = (whole - join).Nanometres,
            strips = Math.Max(1, ((need - join).Nanometres + each - 1) / each);
        Length along = (strips * Diagonal(strip)).RoundUpTo(step);
        return new WeltSupply(
            WeltSupplyKind.BiasStrips,
            1,
            (int)strips,
            strip,
            across,
            across + along,
            (strips * whole) - ((strips - 1) * join)
        );
    }

    /// <summary>The distance along the thread that a width at 45° to it takes, w√2, up to a nanometre.</summary>
    /// <param name="width">A width at right angles to the bias, at least zero.</param>
    /// <returns>Never less than w√2, since a strip that is too narrow is spoilt.</returns>
    public static Length Diagonal(Length width) => Length.FromNanometres((long)Math.Ceiling(width.Nanometres * Math.Sqrt(2)));
}
