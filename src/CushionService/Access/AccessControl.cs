using System.Security.Claims;
using CushionService.Rejections;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.JwtBearer;
using Microsoft.Extensions.Primitives;

namespace CushionService.Access;

/// <summary>Finds out who calls, and admits the call when the caller has its scope. The same for REST and gRPC: to
/// both, a key or a token is a header.</summary>
/// <param name="next">The rest of the pipeline.</param>
/// <param name="policies">Who may call, as configured now.</param>
/// <param name="clock">For keys that expire.</param>
/// <param name="tokens">Present when an authority of tokens is configured.</param>
internal sealed class AccessControl(
    RequestDelegate next,
    AccessPolicyMonitor policies,
    TimeProvider clock,
    IAuthenticationSchemeProvider? tokens = null
)
{
    /// <summary>The header of an API key.</summary>
    public const string KeyHeader = "X-Api-Key";

    private const string Bearer = "Bearer ";

    /// <summary>Passes a call on with its <see cref="Caller"/> among the features, or rejects it: with 401 when the
    /// caller is not known, or has shown neither key nor token where one is needed; with 403 when a known caller lacks
    /// the scope.</summary>
    public async Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint()?.Metadata.GetMetadata<RequiresScopeAttribute>() is not { } needs)
        {
            await next(http);
            return;
        }

        bool isAnonymous = !http.Request.Headers.ContainsKey(KeyHeader) && !HasToken(http);
        AccessPolicy policy = policies.Current;
        Caller? caller = isAnonymous
            ? new Caller(CallerAddress.Of(http), policy.Anonymous) { IsGuest = policy.IsGuarded }
            : await KnownAsync(http, policy);
        if (caller is null)
        {
            await RejectionWriter.UnknownCallerAsync(http, "The key or the token is not known here, or no longer.");
        }
        else if (!caller.Grant.Scopes.HasFlag(needs.Scope))
        {
            string why = $"The call needs the scope {ScopeNames.Of(needs.Scope)}.";
            await (isAnonymous ? RejectionWriter.UnknownCallerAsync(http, why) : RejectionWriter.ForbiddenAsync(http, why));
        }
        else
        {
            http.Features.Set(caller);
            await next(http);
        }
    }

    // The caller of a key or of a token; null when it is not valid. A call with both is ambiguous and counts as
    // neither.
    private async Task<Caller?> KnownAsync(HttpContext http, AccessPolicy policy)
    {
        if (http.Request.Headers.TryGetValue(KeyHeader, out StringValues key))
        {
            return key.Count == 1 && !HasToken(http) ? policy.CallerOf(key.ToString(), clock.GetUtcNow()) : null;
        }

        // Without an authority no token can be verified.
        AuthenticateResult? token = tokens is null ? null : await http.AuthenticateAsync(JwtBearerDefaults.AuthenticationScheme);
        return token is { Succeeded: true } ? CallerOf(token.Principal, policy.Tokens) : null;
    }

    // The client that the token was issued to, by the claims that authorities use for it (RFC 9068, section 2.2).
    private static Caller? CallerOf(ClaimsPrincipal principal, Grant limits)
    {
        string? name = principal.FindFirstValue("client_id") ?? principal.FindFirstValue("azp") ?? principal.FindFirstValue("sub");
        IEnumerable<string> scopes = principal.FindAll(claim => claim.Type is "scope" or "scp").SelectMany(claim => claim.Value.Split(' '));
        return name is null ? null : new Caller("token " + name, limits with { Scopes = ScopeNames.Named(scopes) }) { IsKnown = true };
    }

    private static bool HasToken(HttpContext http) =>
        http.Request.Headers.Authorization.ToString().StartsWith(Bearer, StringComparison.OrdinalIgnoreCase);
}
