using CushionService.Nesting.Rectangles;

namespace CushionService.Nesting.Outlines;

/// <summary>One way down from a first layout, with chances of its own: where it stands.</summary>
internal sealed class Descent
{
    /// <summary>The share of the length that is asked for at first.</summary>
    private const double FirstShrink = 0.02;

    public Descent(Copies copies, Arrangement start, ulong seed)
    {
        (Best, Length, Shrink, Random) = (new Arrangement(copies), start.Length, FirstShrink, new Xorshift(seed));
        Best.CopyFrom(start);
    }

    /// <summary>The shortest layout that it found; no two copies overlap.</summary>
    public Arrangement Best { get; }

    /// <summary>Its length.</summary>
    public double Length { get; set; }

    /// <summary>The share of the length that the next try asks for.</summary>
    public double Shrink { get; set; }

    /// <summary>Tries in vain since the last success.</summary>
    public int Fails { get; set; }

    public Xorshift Random;
}
