using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Nesting;

/// <summary>The verb <c>pictures FOLDER</c>: draws what the guide's page on the search shows, with layouts that the search makes.</summary>
internal static class SearchPictures
{
    private const int Pieces = 26;

    public static void Write(string folder)
    {
        var order = LargeOrders.Problem(Pieces, Rotations.QuarterTurns);
        var onePass = Nester.OnePass(order);
        var searched = Nester.Nest(order, Effort.Standard);
        File.WriteAllText(
            Path.Combine(folder, "search-passes.svg"),
            StripPicture.Draw([(order, onePass, $"one pass: {onePass.Length}"), (order, searched, $"standard: {searched.Length}")])
        );

        var puzzle = Puzzles.Family("puzzles-30")![1];
        var full = new StripProblem
        {
            Width = puzzle.StripWidth,
            Pieces = [.. puzzle.Items.Select(item => new NestingPiece { Width = item.W, Length = item.H })],
        };
        var exact = Nester.Nest(full, Effort.Standard);
        File.WriteAllText(
            Path.Combine(folder, "search-full-box.svg"),
            StripPicture.Draw([(full, exact, $"{puzzle.Rectangles} pieces, no waste: {exact.Length}")])
        );

        var repeat = RepeatOrders.Problem(3);
        var matched = Nester.Nest(repeat, Effort.Standard);
        long rule = Nester.RuleOfThumb(repeat);
        File.WriteAllText(
            Path.Combine(folder, "search-repeat.svg"),
            StripPicture.Draw([(repeat, matched, $"on a repeat: {matched.Length}, rule of thumb {rule}")])
        );
    }
}
