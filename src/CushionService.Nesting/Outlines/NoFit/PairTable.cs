using System.Diagnostics;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The no-fit polygon of each pair of shapes, to be found from either of the two in one read.</summary>
internal sealed class PairTable
{
    private NoFitPolygon?[][] _pairs = [];

    /// <summary>The no-fit polygon of two shapes; null when it is not made yet.</summary>
    public NoFitPolygon? this[int one, int other] => _pairs[one][other];

    /// <summary>Makes room; only once it is known that the pairs are not too many.</summary>
    /// <param name="shapes">Number of shapes.</param>
    public void MakeRoom(int shapes)
    {
        if (_pairs.Length == 0)
        {
            _pairs = new NoFitPolygon?[shapes][];
            for (var shape = 0; shape < shapes; shape++)
            {
                _pairs[shape] = new NoFitPolygon?[shapes];
            }
        }
    }

    /// <summary>The no-fit polygons of one shape with each other; those not made yet are null.</summary>
    public NoFitPolygon?[] Around(int shape) => _pairs[shape];

    /// <summary>Keeps a no-fit polygon.</summary>
    /// <param name="lying">The shape of the lower number, which lies.</param>
    /// <param name="moving">The shape of the higher number, or the same.</param>
    /// <param name="pair">What to keep.</param>
    public NoFitPolygon Keep(int lying, int moving, NoFitPolygon pair)
    {
        Debug.Assert(lying <= moving, "the shape of the lower number lies");
        _pairs[moving][lying] = pair;
        return _pairs[lying][moving] = pair;
    }
}
