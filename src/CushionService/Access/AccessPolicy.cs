using System.Collections.Frozen;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Extensions.Options;

namespace CushionService.Access;

/// <summary>Who may call, as configured at one moment.</summary>
internal sealed class AccessPolicy
{
    // Without any configuration, a newcomer's own machine: everything, and more than a person can send.
    private static readonly Grant Open = new(Scopes.All, Pieces: 10_000, Rate: 200, Burst: 2_000, Streams: 8);

    // Behind a shop's page stands one shopper, or a household behind one address.
    private static readonly Grant Page = new(Scopes.Estimate, Pieces: 500, Rate: 10, Burst: 60, Streams: 1);

    private static readonly Grant Known = new(Scopes.Estimate | Scopes.Quote, Pieces: 10_000, Rate: 50, Burst: 200, Streams: 4);

    private const int LongestKey = 200;

    private readonly FrozenDictionary<string, (Caller Caller, DateTimeOffset? NotAfter)> _keys;

    private AccessPolicy(bool guarded, Grant anonymous, Grant tokens, FrozenDictionary<string, (Caller, DateTimeOffset?)> keys) =>
        (IsGuarded, Anonymous, Tokens, _keys) = (guarded, anonymous, tokens, keys);

    /// <summary>Whether there is a key, or an authority whose tokens are taken.</summary>
    public bool IsGuarded { get; }

    /// <summary>What a caller without a key or a token may do.</summary>
    public Grant Anonymous { get; }

    /// <summary>What the holder of a token may do, but for its scopes.</summary>
    public Grant Tokens { get; }

    /// <summary>Reads the configuration.</summary>
    /// <exception cref="OptionsValidationException">It is wrong somewhere; names every place.</exception>
    public static AccessPolicy Of(AccessOptions options)
    {
        List<string> faults = [];
        bool guarded = options.Keys.Length > 0 || options.Tokens.Authority is not null;
        Grant anonymous = (options.Anonymous ?? new GrantOptions()).Read(guarded ? Page : Open, "Access:Anonymous", faults);
        Grant tokens = options.Tokens.Read(Known, "Access:Tokens", faults);
        if (options.Tokens is { Authority: not null, Audience: null })
        {
            faults.Add("Access:Tokens:Audience is required with an authority: a token for another service must not open this one.");
        }

        Dictionary<string, (Caller, DateTimeOffset?)> keys = [];
        foreach ((int index, KeyOptions key) in options.Keys.Index())
        {
            string place = $"Access:Keys:{index}";
            Grant grant = key.Read(Known, place, faults);
            if (string.IsNullOrWhiteSpace(key.Name))
            {
                faults.Add($"{place}:Name is required.");
            }

            if (key.Sha256 is not { Length: 64 } digest || !digest.All(char.IsAsciiHexDigit))
            {
                faults.Add($"{place}:Sha256 must be 64 hexadecimal digits.");
            }
            else if (!keys.TryAdd(digest.ToUpperInvariant(), (new Caller("key " + key.Name, grant) { IsKnown = true }, key.NotAfter)))
            {
                faults.Add($"{place}:Sha256 stands twice.");
            }
        }

        return faults.Count == 0
            ? new AccessPolicy(guarded, anonymous, tokens, keys.ToFrozenDictionary(StringComparer.Ordinal))
            : throw new OptionsValidationException(AccessOptions.Section, typeof(AccessOptions), faults);
    }

    /// <summary>The caller that a key makes known; null when it is none of ours, or ended.</summary>
    /// <remarks>Found by its digest: how long that takes says nothing about the key. A key is 256 random bits, so that a plain digest
    /// cannot be guessed back.</remarks>
    public Caller? Holder(string key, DateTimeOffset now) =>
        key.Length <= LongestKey
        && _keys.TryGetValue(DigestOf(key), out (Caller Caller, DateTimeOffset? NotAfter) found)
        && !(found.NotAfter <= now)
            ? found.Caller
            : null;

    /// <summary>The digest by which a key is configured.</summary>
    public static string DigestOf(string key) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(key)));
}
