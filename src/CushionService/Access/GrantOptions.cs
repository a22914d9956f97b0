namespace CushionService.Access;

/// <summary>A grant as it is configured; what is left out has a default.</summary>
internal class GrantOptions
{
    /// <summary>Names of scopes.</summary>
    public string[]? Scopes { get; init; }

    /// <summary>Pieces of an order, at most, 1 to 10 000.</summary>
    public int? Pieces { get; init; }

    /// <summary>Calls a second, 1 to 1 000 000.</summary>
    public int? Rate { get; init; }

    /// <summary>Calls at once after a rest, 1 to 10 000 000.</summary>
    public int? Burst { get; init; }

    /// <summary>Open streams, 1 to 1 000.</summary>
    public int? Streams { get; init; }

    /// <summary>The grant, and what is wrong with its configuration.</summary>
    /// <param name="otherwise">What it is where nothing is said.</param>
    /// <param name="place">Where it stands, for the faults.</param>
    /// <param name="faults">Gets every fault.</param>
    public Grant Read(Grant otherwise, string place, List<string> faults)
    {
        foreach (string name in Scopes ?? [])
        {
            if (ScopeNames.Named(name) == Access.Scopes.None)
            {
                faults.Add($"{place}:Scopes: there is no scope {name}; the scopes are {ScopeNames.Of(Access.Scopes.All)}.");
            }
        }

        return new Grant(
            Scopes is null ? otherwise.Scopes : ScopeNames.Named(Scopes),
            Within(Pieces, nameof(Pieces), 10_000, otherwise.Pieces),
            Within(Rate, nameof(Rate), 1_000_000, otherwise.Rate),
            Within(Burst, nameof(Burst), 10_000_000, otherwise.Burst),
            Within(Streams, nameof(Streams), 1_000, otherwise.Streams)
        );

        int Within(int? value, string name, int most, int unsaid)
        {
            if (value < 1 || value > most)
            {
                faults.Add($"{place}:{name} must be between 1 and {most}.");
            }

            return value ?? unsaid;
        }
    }
}
