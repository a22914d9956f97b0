namespace CushionService.Client;

/// <summary>The service has refused a call.</summary>
public sealed class RefusedException : Exception
{
    private static readonly string[] Later = ["busy", "too-many-requests", "authority-away"];

    /// <summary>A refusal.</summary>
    /// <param name="problem">Why.</param>
    public RefusedException(Problem problem)
        : base(string.Join(" ", [problem.Title, .. problem.Violations.Select(violation => $"{violation.Pointer}: {violation.Detail}")])) =>
        Problem = problem;

    /// <summary>Why, with every violation.</summary>
    public Problem Problem { get; }

    /// <summary>Whether the same call may be answered later. Any other has the same answer each time.</summary>
    public bool MaySendAgain => Later.Contains(Problem.Code);
}
