using CushionService.Nesting;

namespace CushionService.Access;

/// <summary>A grant as it is configured. What is left out has the default of its kind, which the operations page
/// lists.</summary>
internal class GrantOptions
{
    /// <summary>Names of scopes: estimate, quote, batch, prices:inline.</summary>
    public string[]? Scopes { get; init; }

    /// <summary>Pieces of an order, at most, 1 to 10 000.</summary>
    public int? Pieces { get; init; }

    /// <summary>Calls a second, 1 to 1 000 000.</summary>
    public int? Rate { get; init; }

    /// <summary>Calls at once after a pause, 1 to 10 000 000.</summary>
    public int? Burst { get; init; }

    /// <summary>Open streams, 1 to 1 000.</summary>
    public int? Streams { get; init; }

    /// <summary>The greatest effort outside of streams: quick, standard or thorough.</summary>
    public Effort? Effort { get; init; }

    /// <summary>Steps of search, in millions a second, 1 to 20 000 000.</summary>
    public int? Steps { get; init; }

    /// <summary>Steps at once after a pause, in millions, 1 to 20 000 000.</summary>
    public int? StepsBurst { get; init; }

    /// <summary>Reads the grant. One with errors is returned too, since the caller gathers the errors of every grant
    /// first.</summary>
    /// <param name="otherwise">The defaults.</param>
    /// <param name="place">Where it is in the configuration, as <c>Access:Keys:0</c>.</param>
    /// <param name="errors">Gets a sentence for each value out of its range.</param>
    public Grant Read(Grant otherwise, string place, List<string> errors)
    {
        foreach (string name in Scopes ?? [])
        {
            if (ScopeNames.Named(name) == Access.Scopes.None)
            {
                errors.Add($"{place}:Scopes: there is no scope {name}; the scopes are {ScopeNames.Of(Access.Scopes.All)}.");
            }
        }

        Grant grant = new(
            Scopes is null ? otherwise.Scopes : ScopeNames.Named(Scopes),
            Within(Pieces, nameof(Pieces), 10_000, otherwise.Pieces),
            Within(Rate, nameof(Rate), 1_000_000, otherwise.Rate),
            Within(Burst, nameof(Burst), 10_000_000, otherwise.Burst),
            Within(Streams, nameof(Streams), 1_000, otherwise.Streams)
        )
        {
            Steps = Within(Steps, nameof(Steps), 20_000_000, otherwise.Steps),
            StepsBurst = Within(StepsBurst, nameof(StepsBurst), 20_000_000, otherwise.StepsBurst),
        };
        if (Effort == Nesting.Effort.Overnight)
        {
            errors.Add($"{place}:Effort must be quick, standard or thorough: overnight is for streams.");
        }

        return (Effort ?? otherwise.OwnEffort) is { } most ? grant with { Effort = most } : grant;

        int Within(int? value, string name, int most, int absent)
        {
            if (value < 1 || value > most)
            {
                errors.Add($"{place}:{name} must be between 1 and {most}.");
            }

            return value ?? absent;
        }
    }
}
