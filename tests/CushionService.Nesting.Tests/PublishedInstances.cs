namespace CushionService.Nesting.Tests;

/// <summary>Small instances of the literature whose optimum is known exactly, with one optimal layout each.</summary>
public static class PublishedInstances
{
    /// <summary>C1_1 of Hopper and Turton, European Journal of Operational Research 128(1), 2001: 16 rectangles, optimum 20
    /// without turns, no waste.</summary>
    public static StripProblem C1P1 { get; } =
        Problem(
            20,
            (2, 12),
            (7, 12),
            (8, 6),
            (3, 6),
            (3, 5),
            (5, 5),
            (3, 12),
            (3, 7),
            (5, 7),
            (2, 6),
            (3, 2),
            (4, 2),
            (3, 4),
            (4, 4),
            (9, 2),
            (11, 2)
        );

    /// <summary>A layout of <see cref="C1P1"/> of length 20.</summary>
    public static StripLayout C1P1Layout { get; } =
        Layout(
            20,
            (18, 0),
            (0, 0),
            (7, 0),
            (0, 12),
            (12, 13),
            (7, 13),
            (15, 0),
            (12, 6),
            (7, 6),
            (15, 12),
            (17, 16),
            (3, 16),
            (17, 12),
            (3, 12),
            (11, 18),
            (0, 18)
        );

    /// <summary>SCP1 of Hifi, 1998: 10 rectangles on a strip 5 wide, exact optimum 13 without turns.</summary>
    public static StripProblem Scp1 { get; } = Problem(5, (1, 3), (1, 3), (1, 3), (1, 3), (2, 2), (2, 2), (4, 3), (4, 3), (3, 2), (3, 5));

    /// <summary>A layout of <see cref="Scp1"/> of length 13.</summary>
    public static StripLayout Scp1Layout { get; } =
        Layout(13, (3, 2), (4, 2), (4, 5), (4, 8), (3, 0), (3, 11), (0, 5), (0, 8), (0, 11), (0, 0));

    private static StripProblem Problem(long width, params (long Width, long Length)[] sizes) =>
        new() { Width = width, Pieces = [.. sizes.Select(size => new NestingPiece { Width = size.Width, Length = size.Length })] };

    private static StripLayout Layout(long length, params (long X, long Y)[] corners) =>
        new()
        {
            Length = length,
            LowerBound = length,
            ProvenMinimal = true,
            Proof = ProofKind.Area,
            Placements = [.. corners.Select((corner, piece) => new Placement(piece, 0, 0, corner.X, corner.Y, 0))],
            Steps = 0,
        };
}
