namespace CushionService.Nesting.Outlines;

/// <summary>A length that no layout can beat: the outlines' area over the width, and the longest copy as it lies shortest.</summary>
internal readonly record struct OutlineBound(long Length, string Figures)
{
    public static OutlineBound Of(Copies copies)
    {
        Int128 doubleArea = 0;
        long longest = 0;
        for (var copy = 0; copy < copies.Count; copy++)
        {
            var turns = copies.TurnsOf(copy);
            doubleArea += copies.Book[turns[0].Shape].DoubleArea;
            var shortest = long.MaxValue;
            foreach (var (shape, _) in turns)
            {
                shortest = Math.Min(shortest, copies.Book[shape].Length);
            }

            longest = Math.Max(longest, shortest);
        }

        var byArea = (long)((doubleArea + 2 * copies.Width - 1) / (2 * copies.Width));
        return byArea >= longest
            ? new(byArea, $"area {doubleArea / 2} / width {copies.Width} gives at least {byArea}")
            : new(longest, $"one piece alone is {longest} long");
    }
}
