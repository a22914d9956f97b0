using System.Collections.Frozen;
using System.Security.Cryptography;
using System.Text;
using CushionService.Nesting;
using Microsoft.Extensions.Options;

namespace CushionService.Access;

/// <summary>Who may call, as configured at one moment.</summary>
internal sealed class AccessPolicy
{
    // Without any configuration, a newcomer's own machine: everything, and more than a person can send.
    private static readonly Grant Open = new(Scopes.All, Pieces: 10_000, Rate: 200, Burst: 2_000, Streams: 8)
    {
        Steps = 1_000_000,
        StepsBurst = 10_000_000,
    };

    // Behind a shop's page is one shopper, or a household that shares an address. What it may keep up is a tenth of a
    // processor, after five seconds of one at once.
    private static readonly Grant Page = new(Scopes.Estimate, Pieces: 500, Rate: 10, Burst: 60, Streams: 1)
    {
        Effort = Effort.Quick,
        Steps = 16,
        StepsBurst = 800,
    };

    private static readonly Grant Known = new(Scopes.Estimate | Scopes.Quote, Pieces: 10_000, Rate: 50, Burst: 200, Streams: 4);

    // In characters: a key is 64 hexadecimal digits, and a header may be kilobytes that nobody should pay to digest.
    private const int LongestKey = 200;

    private readonly FrozenDictionary<string, (Caller Caller, DateTimeOffset? NotAfter)> _keys;

    private AccessPolicy(
        bool guarded,
        Grant anonymous,
        Grant tokens,
        FrozenDictionary<string, (Caller, DateTimeOffset?)> keys,
        FrozenDictionary<string, PageKey> pages
    ) => (IsGuarded, Anonymous, Tokens, _keys, Pages) = (guarded, anonymous, tokens, keys, pages);

    /// <summary>Whether a key or an authority of tokens is configured.</summary>
    public bool IsGuarded { get; }

    /// <summary>What a caller without a key or a token may do.</summary>
    public Grant Anonymous { get; }

    /// <summary>The limits of a caller with a token. Its scopes are those of the token.</summary>
    public Grant Tokens { get; }

    /// <summary>The publishable keys, each by itself.</summary>
    public FrozenDictionary<string, PageKey> Pages { get; }

    /// <summary>Reads the configuration.</summary>
    /// <exception cref="OptionsValidationException">It is wrong somewhere; names every place.</exception>
    /// <param name="section">The configuration section.</param>
    public static AccessPolicy Of(IConfigurationSection section)
    {
        List<string> errors = [];
        AccessShape.Check(section, typeof(AccessOptions), errors);
        return Of(section.Get<AccessOptions>() ?? new AccessOptions(), errors);
    }

    /// <summary>The same of options that are bound.</summary>
    /// <param name="options">The options.</param>
    /// <param name="errors">What is wrong already.</param>
    public static AccessPolicy Of(AccessOptions options, params List<string> errors)
    {
        bool guarded = options.Keys.Length > 0 || options.Publishable.Length > 0 || options.Tokens.Authority is not null;
        Grant anonymous = (options.Anonymous ?? new GrantOptions()).Read(guarded ? Page : Open, "Access:Anonymous", errors);
        Grant tokens = options.Tokens.Read(Known, "Access:Tokens", errors);
        if (options.Tokens is { Authority: not null, Audience: null })
        {
            errors.Add("Access:Tokens:Audience is required with an authority: a token for another service must not open this one.");
        }

        if (options.Tokens is { Authority: null, Audience: not null })
        {
            errors.Add("Access:Tokens:Authority is required with an audience: without it no token is accepted, and nothing is guarded.");
        }

        if (options.Tokens.Fault is { } fault)
        {
            errors.Add(fault);
        }

        FrozenDictionary<string, (Caller, DateTimeOffset?)> keys = KeysOf(options.Keys, errors);
        FrozenDictionary<string, PageKey> pages = PagesOf(options.Publishable, errors);
        return errors.Count == 0
            ? new AccessPolicy(guarded, anonymous, tokens, keys, pages)
            : throw new OptionsValidationException(AccessOptions.Section, typeof(AccessOptions), errors);
    }

    /// <summary>The caller that a key identifies; null for a key that is unknown or has expired.</summary>
    /// <remarks>Found by its digest, so that the time it takes says nothing about the key. A key is 256 random bits,
    /// which cannot be guessed back from a plain digest.</remarks>
    /// <param name="key">The key, as it was sent.</param>
    /// <param name="now">The time of the call.</param>
    public Caller? CallerOf(string key, DateTimeOffset now) =>
        key.Length <= LongestKey
        && _keys.TryGetValue(DigestOf(key), out (Caller Caller, DateTimeOffset? NotAfter) found)
        && !(found.NotAfter <= now)
            ? found.Caller
            : null;

    /// <summary>The digest that a key is configured by: SHA-256, in upper-case hexadecimal.</summary>
    /// <param name="key">The key.</param>
    public static string DigestOf(string key) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(key)));

    private static FrozenDictionary<string, PageKey> PagesOf(PageKeyOptions[] configured, List<string> errors)
    {
        Dictionary<string, PageKey> pages = new(StringComparer.Ordinal);
        foreach ((int index, PageKeyOptions key) in configured.Index())
        {
            string place = $"Access:Publishable:{index}";
            if (!pages.TryAdd(key.Key ?? "", key.ReadKey(Page, place, errors)))
            {
                errors.Add($"{place}:Key is another's too.");
            }
        }

        return pages.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private static FrozenDictionary<string, (Caller, DateTimeOffset?)> KeysOf(KeyOptions[] configured, List<string> errors)
    {
        Dictionary<string, (Caller, DateTimeOffset?)> keys = [];
        foreach ((int index, KeyOptions key) in configured.Index())
        {
            string place = $"Access:Keys:{index}";
            Grant grant = key.Read(Known, place, errors);
            if (string.IsNullOrWhiteSpace(key.Name))
            {
                errors.Add($"{place}:Name is required.");
            }

            if (key.Sha256 is not { Length: 64 } digest || !digest.All(char.IsAsciiHexDigit))
            {
                errors.Add($"{place}:Sha256 must be 64 hexadecimal digits.");
            }
            else if (!keys.TryAdd(digest.ToUpperInvariant(), (new Caller("key " + key.Name, grant) { IsKnown = true }, key.NotAfter)))
            {
                errors.Add($"{place}:Sha256 is the digest of another key too.");
            }
        }

        return keys.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
