namespace CushionService.Nesting.Solving;

/// <summary>Refuses strip problems that make no sense before a kernel sees them.</summary>
internal static class WellFormedStrip
{
    /// <summary>Returns when the problem can be nested.</summary>
    /// <param name="problem">What a caller made.</param>
    /// <exception cref="ArgumentException">A number is out of range, a piece fits the strip in no allowed turn, or it is aligned to a
    /// repeat that is not there.</exception>
    public static void Check(StripProblem problem)
    {
        WellFormed.Demand(problem.Width is > 0 and <= WellFormed.Largest, "The strip's width must be from 1 to 2^40.");
        WellFormed.Demand(!problem.Pieces.IsDefaultOrEmpty, "There must be at least one piece.");
        WellFormed.Demand(
            problem.Sale is { Step: > 0, Numerator: > 0, Denominator: > 0 },
            "The sale ladder's step and scale must be above 0."
        );
        if (problem.Repeat is { } lattice)
        {
            WellFormed.Demand(
                lattice is { Width: >= 0, Length: > 0, Drop: >= 0 } && lattice.Drop < lattice.Length,
                "The repeat is ill-formed."
            );
        }

        foreach (var flaw in problem.Flaws.IsDefault ? [] : problem.Flaws)
        {
            WellFormed.Demand(flaw is { Width: > 0, Length: > 0 }, "A flaw must have an extent.");
        }

        WellFormed.CheckPieces(problem.Pieces);
        for (var index = 0; index < problem.Pieces.Length; index++)
        {
            var piece = problem.Pieces[index];
            bool fits = piece.Width <= problem.Width || (piece.Rotations == Rotations.QuarterTurns && piece.Length <= problem.Width);
            WellFormed.Demand(fits, index, "is wider than the strip in every allowed turn");
            WellFormed.Demand(
                piece.Alignment is null || (problem.Repeat is not null && piece.Rotations == Rotations.None),
                index,
                "is aligned, but the fabric has no repeat or the piece may turn"
            );
        }
    }
}
