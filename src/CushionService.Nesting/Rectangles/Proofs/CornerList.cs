namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The rectangles that can lie in a gap's left corner, best fit first, with a list for each depth of the search.</summary>
/// <param name="box">The rectangles and the box.</param>
/// <param name="left">Copies left of each kind, which the search changes.</param>
/// <param name="height">The height that columns can use.</param>
/// <param name="depths">Depths of the search.</param>
internal sealed class CornerList(BoxContents box, int[] left, int height, int depths)
{
    private readonly int[] _codes = new int[2 * left.Length * depths];
    private readonly long[] _worths = new long[2 * left.Length * depths];

    /// <summary>Kind and turn of a listed rectangle.</summary>
    public (int Kind, bool Turned) this[int index] => (_codes[index] >> 1, (_codes[index] & 1) == 1);

    /// <summary>Where the list of a depth begins.</summary>
    public int First(int depth) => depth * 2 * left.Length;

    /// <summary>Lists what fits. The order decides how soon a layout is found, not whether: first what is level with the gap's right end
    /// and its walls, then the larger area.</summary>
    /// <param name="depth">Whose list is written.</param>
    /// <param name="extent">Width of the gap.</param>
    /// <param name="floor">Height of its floor.</param>
    /// <param name="leftWall">Height to its left.</param>
    /// <param name="rightWall">Height to its right.</param>
    /// <returns>Where the list ends.</returns>
    public int Write(int depth, int extent, int floor, int leftWall, int rightWall)
    {
        int first = First(depth);
        int count = first;
        for (var code = 0; code < 2 * left.Length; code++)
        {
            int kind = code >> 1;
            bool turned = (code & 1) == 1;
            var (across, along) = box.Size(kind, turned);
            if (left[kind] == 0 || (turned && !box.Turns[kind]) || across > extent || floor + along > height)
            {
                continue;
            }

            int rise = floor + along;
            long level = (across == extent ? 4 : 0) + (rise == leftWall ? 2 : 0) + (rise == rightWall ? 1 : 0);
            long worth = (level << 40) + (long)across * along;
            int at = count++;
            for (; at > first && _worths[at - 1] < worth; at--)
            {
                (_codes[at], _worths[at]) = (_codes[at - 1], _worths[at - 1]);
            }

            (_codes[at], _worths[at]) = (code, worth);
        }

        return count;
    }
}
