using System.Net;
using System.Net.Sockets;
using System.Security.Claims;
using CushionService.Rejections;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.JwtBearer;

namespace CushionService.Access;

/// <summary>Finds out who calls, and lets in who may. REST and gRPC alike: a key or a token is a header to both.</summary>
internal sealed class AccessControl(
    RequestDelegate next,
    AccessPolicyMonitor registers,
    TimeProvider clock,
    IAuthenticationSchemeProvider? tokens = null
)
{
    /// <summary>The header of an API key.</summary>
    public const string KeyHeader = "X-Api-Key";

    private const string Bearer = "Bearer ";

    // Nothing waits here but a token's check: most calls pass through without a state to keep.
    public Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint()?.Metadata.GetMetadata<RequiresScopeAttribute>() is not { } needs)
        {
            return next(http);
        }

        AccessPolicy register = registers.Current;
        bool hasToken = HasToken(http);
        if (http.Request.Headers.TryGetValue(KeyHeader, out Microsoft.Extensions.Primitives.StringValues key))
        {
            // Two ways to say who one is are one too many.
            return LetInAsync(http, needs, key.Count == 1 && !hasToken ? register.Holder(key.ToString(), clock.GetUtcNow()) : null);
        }

        return hasToken
            ? IdentifyAsync(http, needs, register)
            : LetInAsync(http, needs, new Caller(AddressOf(http), register.Anonymous), anonymous: true);
    }

    private async Task IdentifyAsync(HttpContext http, RequiresScopeAttribute needs, AccessPolicy register)
    {
        // Without an authority there is none who could vouch for a token.
        AuthenticateResult? token = tokens is null ? null : await http.AuthenticateAsync(JwtBearerDefaults.AuthenticationScheme);
        await LetInAsync(http, needs, token is { Succeeded: true } ? Holder(token.Principal, register.Tokens) : null);
    }

    private Task LetInAsync(HttpContext http, RequiresScopeAttribute needs, Caller? caller, bool anonymous = false)
    {
        if (caller is null)
        {
            return RejectionWriter.UnknownCallerAsync(http, "The key or the token is not known here, or no longer.");
        }

        if (!caller.Grant.Scopes.HasFlag(needs.Scope))
        {
            string scope = $"The call needs the scope {ScopeNames.Of(needs.Scope)}.";
            return anonymous ? RejectionWriter.UnknownCallerAsync(http, scope) : RejectionWriter.ForbiddenAsync(http, scope);
        }

        http.Features.Set(caller);
        return next(http);
    }

    private static Caller? Holder(ClaimsPrincipal principal, Grant limits)
    {
        string? name = principal.FindFirstValue("client_id") ?? principal.FindFirstValue("azp") ?? principal.FindFirstValue("sub");
        IEnumerable<string> scopes = principal.FindAll(claim => claim.Type is "scope" or "scp").SelectMany(claim => claim.Value.Split(' '));
        return name is null ? null : new Caller("token " + name, limits with { Scopes = ScopeNames.Named(scopes) }) { IsKnown = true };
    }

    private static bool HasToken(HttpContext http) =>
        http.Request.Headers.Authorization.ToString().StartsWith(Bearer, StringComparison.OrdinalIgnoreCase);

    // A household or a machine holds a whole /64 of addresses of version 6 (RFC 6177).
    private static string AddressOf(HttpContext http)
    {
        if (http.Connection.RemoteIpAddress is not { } address)
        {
            return "no address";
        }

        if (address.AddressFamily == AddressFamily.InterNetwork || address.IsIPv4MappedToIPv6)
        {
            return address.IsIPv4MappedToIPv6 ? address.MapToIPv4().ToString() : address.ToString();
        }

        byte[] bytes = address.GetAddressBytes();
        bytes.AsSpan(8).Clear();
        return new IPAddress(bytes).ToString();
    }
}
