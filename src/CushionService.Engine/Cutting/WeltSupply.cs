using CushionService.Engine.Measures;

namespace CushionService.Engine.Cutting;

/// <summary>A way of cutting the strips of a welt: pieces all the same, and the length of welt that they make when joined.</summary>
/// <param name="Kind">The way.</param>
/// <param name="Pieces">How many pieces are cut, at least 1.</param>
/// <param name="Strips">Straight strips: one a piece. Whole bias strips: how many one piece gives. A square: turns of the continuous
/// strip.</param>
/// <param name="Strip">Width of the strip.</param>
/// <param name="Width">Across the fabric, of one piece.</param>
/// <param name="Length">Along the fabric, of one piece.</param>
/// <param name="Supplied">Length of welt that all pieces make, joins deducted.</param>
public sealed record WeltSupply(WeltSupplyKind Kind, int Pieces, int Strips, Length Strip, Length Width, Length Length, Length Supplied)
{
    /// <summary>The fabric that it takes, the corner triangles beside whole bias strips too.</summary>
    public Area Fabric => new(Pieces * Area.Of(Width, Length).SquareNanometres);
}
