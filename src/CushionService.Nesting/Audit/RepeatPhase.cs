namespace CushionService.Nesting.Audit;

/// <summary>Checks that aligned copies lie on their phase of the repeat, by the definition of <see cref="RepeatLattice"/> alone.</summary>
internal static class RepeatPhase
{
    /// <summary>Throws when an aligned copy does not lie at its phase plus a point of the
    /// lattice.</summary>
    public static void Check(StripProblem problem, Placement placement)
    {
        if (problem.Pieces[placement.Piece].Alignment is not { } phase)
        {
            return;
        }

        var lattice = problem.Repeat!;
        long dx = placement.X - phase.PhaseX;
        // Whole columns of the lattice from the phase: each drops the heights by the same amount.
        long column = lattice.Width == 0 ? 0 : dx / lattice.Width;
        bool acrossHolds = lattice.Width == 0 || dx % lattice.Width == 0;
        bool alongHolds = (placement.Y - phase.PhaseY - column * lattice.Drop) % lattice.Length == 0;
        if (!acrossHolds || !alongHolds)
        {
            throw new LayoutAuditException($"A copy is off its phase: {placement}.");
        }
    }
}
