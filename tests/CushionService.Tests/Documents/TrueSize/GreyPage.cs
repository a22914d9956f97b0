using System.Globalization;
using System.Text;
using CushionService.Documents.Drawings;

namespace CushionService.Tests.Documents.TrueSize;

/// <summary>A page in greys (Netpbm's P5), measured in millimetres from its upper left corner.</summary>
internal sealed class GreyPage
{
    private readonly byte[] _dots;
    private readonly int _start;
    private readonly double _dotsInMillimetre;

    private GreyPage(byte[] dots, int start, int width, int height, double dotsInMillimetre) =>
        (_dots, _start, Width, Height, _dotsInMillimetre) = (dots, start, width, height, dotsInMillimetre);

    /// <summary>In dots.</summary>
    public int Width { get; }

    /// <summary>In dots.</summary>
    public int Height { get; }

    public static GreyPage Read(byte[] image, int dotsInInch)
    {
        // "P5 width height 255", each followed by one white space.
        List<string> head = [];
        int at = 0;
        while (head.Count < 4)
        {
            int end = at;
            while (!char.IsWhiteSpace((char)image[end]))
            {
                end++;
            }

            head.Add(Encoding.ASCII.GetString(image, at, end - at));
            at = end + 1;
        }

        Assert.Equal("P5", head[0]);
        int Number(int i) => int.Parse(head[i], CultureInfo.InvariantCulture);
        return new GreyPage(image, at, Number(1), Number(2), dotsInInch / 25.4);
    }

    /// <summary>How far the middle of the darkest line near a spot is from it.</summary>
    /// <param name="spot">In millimetres.</param>
    /// <param name="across">The way across the line, one long.</param>
    /// <param name="reach">How far to look either way, in millimetres.</param>
    /// <returns>In millimetres; null where there is no ink.</returns>
    public double? Off(Spot spot, Spot across, double reach)
    {
        const double step = 0.02;
        double ink = 0,
            moment = 0;
        for (double off = -reach; off <= reach; off += step)
        {
            double dark = 255 - At(spot + off * across);
            (ink, moment) = (ink + dark, moment + dark * off);
        }

        return ink < 255 * 3 ? null : moment / ink;
    }

    /// <summary>The dots of a rectangle of the page, given in millimetres.</summary>
    public (byte[] Dots, int Across, int Down) Part(double left, double top, double width, double height)
    {
        (int x, int y) = ((int)(left * _dotsInMillimetre), (int)(top * _dotsInMillimetre));
        int across = Math.Min((int)(width * _dotsInMillimetre), Width - x);
        int down = Math.Min((int)(height * _dotsInMillimetre), Height - y);
        byte[] part = new byte[across * down];
        for (int row = 0; row < down; row++)
        {
            Array.Copy(_dots, _start + (y + row) * Width + x, part, row * across, across);
        }

        return (part, across, down);
    }

    private double At(Spot spot)
    {
        (int x, int y) = ((int)(spot.X * _dotsInMillimetre), (int)(spot.Y * _dotsInMillimetre));
        return x >= 0 && y >= 0 && x < Width && y < Height ? _dots[_start + y * Width + x] : 255;
    }
}
