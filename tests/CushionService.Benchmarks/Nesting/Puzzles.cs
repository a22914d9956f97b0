namespace CushionService.Benchmarks.Nesting;

/// <summary>Squares of 200 to 400 units, cut at arbitrary points into 17 to 200 rectangles without waste, so that the optimum is known.
/// Every other one is cut from edge to edge only; the others are cut into pinwheels too, which no such cuts undo.</summary>
internal static class Puzzles
{
    private const int Each = 32;
    private const int LeastSide = 3;

    /// <summary>The classes of sizes: name, fewest and most pieces.</summary>
    public static IReadOnlyList<(string Name, int Fewest, int Most)> Classes { get; } =
    [("puzzles-30", 17, 30), ("puzzles-60", 31, 60), ("puzzles-120", 61, 120), ("puzzles-200", 121, 200)];

    /// <summary>A class of its own for searches that large orders need; its squares are four times as wide.</summary>
    private static readonly (string Name, int Fewest, int Most) Large = ("puzzles-3000", 1_000, 3_000);
    private const int LargeScale = 4;

    /// <summary>The puzzles of a class, or of all; null when the name is neither.</summary>
    public static IReadOnlyList<OpenInstance>? Family(string name)
    {
        var chosen = Classes.Append(Large).Where(one => one.Name == name || (name == "puzzles" && one != Large)).ToList();
        return chosen.Count == 0 ? null : [.. chosen.SelectMany(one => Enumerable.Range(0, Each).Select(seed => Instance(one, seed)))];
    }

    private static OpenInstance Instance((string Name, int Fewest, int Most) size, int seed)
    {
        // Each class has seeds of its own.
        var random = new Random(1_000 * size.Most + seed);
        int side = random.Next(200, 401) * (size == Large ? LargeScale : 1);
        int count = random.Next(size.Fewest, size.Most + 1);
        var parts = new List<Part> { new(side, side) };
        while (parts.Count < count)
        {
            int at = Weighted(parts, random);
            var part = parts[at];
            bool pinwheel = seed % 2 == 1 && parts.Count + 4 <= count && random.Next(2) == 0;
            List<Part>? cut = pinwheel ? Pinwheel(part, random) : Halves(part, random);
            if (cut is not null)
            {
                parts.RemoveAt(at);
                parts.AddRange(cut);
            }
        }

        return new OpenInstance(
            $"{size.Name}_{seed}",
            side,
            side,
            "rotation and fixed",
            null,
            side,
            [.. parts.Select(part => new OpenItem(part.Width, part.Height, 1))]
        );
    }

    /// <summary>A part, the more likely the larger it is.</summary>
    private static int Weighted(List<Part> parts, Random random)
    {
        long at = random.NextInt64(parts.Sum(part => (long)part.Width * part.Height));
        var index = 0;
        for (; at >= (long)parts[index].Width * parts[index].Height; index++)
        {
            at -= (long)parts[index].Width * parts[index].Height;
        }

        return index;
    }

    private static List<Part>? Halves(Part part, Random random)
    {
        bool upright = random.Next(part.Width + part.Height) < part.Width;
        int whole = upright ? part.Width : part.Height;
        if (whole < 2 * LeastSide)
        {
            return null;
        }

        int first = random.Next(LeastSide, whole - LeastSide + 1);
        return upright
            ? [new(first, part.Height), new(whole - first, part.Height)]
            : [new(part.Width, first), new(part.Width, whole - first)];
    }

    /// <summary>Four rectangles round a fifth.</summary>
    private static List<Part>? Pinwheel(Part part, Random random)
    {
        if (part.Width < 3 * LeastSide || part.Height < 3 * LeastSide)
        {
            return null;
        }

        var (x, y) = (Two(part.Width, random), Two(part.Height, random));
        return
        [
            new(x.Second, y.First),
            new(part.Width - x.Second, y.Second),
            new(part.Width - x.First, part.Height - y.Second),
            new(x.First, part.Height - y.First),
            new(x.Second - x.First, y.Second - y.First),
        ];
    }

    private static (int First, int Second) Two(int whole, Random random)
    {
        int first = random.Next(LeastSide, whole - 2 * LeastSide + 1);
        return (first, random.Next(first + LeastSide, whole - LeastSide + 1));
    }

    private readonly record struct Part(int Width, int Height);
}
