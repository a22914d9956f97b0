using System.Net;
using System.Net.Sockets;
using System.Security.Claims;
using CushionService.Admission;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.JwtBearer;

namespace CushionService.Access;

/// <summary>Finds out who calls, and lets in who may. REST and gRPC alike: a key or a token is a header to both.</summary>
internal sealed class AccessControl(RequestDelegate next, Registers registers, TimeProvider clock, IAuthenticationSchemeProvider? tokens = null)
{
    /// <summary>The header of an API key.</summary>
    public const string KeyHeader = "X-Api-Key";

    private const string Bearer = "Bearer ";

    public async Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint()?.Metadata.GetMetadata<NeedsAttribute>() is not { } needs)
        {
            await next(http);
            return;
        }

        bool anonymous = !http.Request.Headers.ContainsKey(KeyHeader) && !HasToken(http);
        Caller? caller = anonymous ? new Caller(AddressOf(http), registers.Current.Anonymous) : await IdentifyAsync(http);
        if (caller is null)
        {
            await TurnAway.UnknownAsync(http, "The key or the token is not known here, or no longer.");
        }
        else if (!caller.Grant.Scopes.HasFlag(needs.Scope))
        {
            string scope = $"The call needs the scope {ScopeNames.Of(needs.Scope)}.";
            await (anonymous ? TurnAway.UnknownAsync(http, scope) : TurnAway.ForbiddenAsync(http, scope));
        }
        else
        {
            http.Features.Set(caller);
            await next(http);
        }
    }

    private async Task<Caller?> IdentifyAsync(HttpContext http)
    {
        Register register = registers.Current;
        if (http.Request.Headers.TryGetValue(KeyHeader, out Microsoft.Extensions.Primitives.StringValues key))
        {
            // Two ways to say who one is are one too many.
            return key.Count == 1 && !HasToken(http) ? register.Holder(key.ToString(), clock.GetUtcNow()) : null;
        }

        // Without an authority there is none who could vouch for a token.
        if (tokens is null)
        {
            return null;
        }

        AuthenticateResult token = await http.AuthenticateAsync(JwtBearerDefaults.AuthenticationScheme);
        return token.Succeeded ? Holder(token.Principal, register.Tokens) : null;
    }

    private static Caller? Holder(ClaimsPrincipal principal, Grant limits)
    {
        string? name = principal.FindFirstValue("client_id") ?? principal.FindFirstValue("azp") ?? principal.FindFirstValue("sub");
        IEnumerable<string> scopes = principal.FindAll(claim => claim.Type is "scope" or "scp").SelectMany(claim => claim.Value.Split(' '));
        return name is null ? null : new Caller("token " + name, limits with { Scopes = ScopeNames.Named(scopes) });
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
