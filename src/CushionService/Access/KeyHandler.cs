using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;
using Microsoft.Extensions.Primitives;

namespace CushionService.Access;

/// <summary>Authenticates a caller by the API key in its header.</summary>
internal sealed class KeyHandler(
    IOptionsMonitor<AuthenticationSchemeOptions> options,
    ILoggerFactory logger,
    UrlEncoder encoder,
    AccessPolicyMonitor policies,
    TimeProvider clock
) : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    /// <summary>The name of the scheme.</summary>
    public const string SchemeName = "key";

    /// <summary>The header of the key.</summary>
    public const string Header = "X-Api-Key";

    private const string CallerOfTicket = "caller";

    /// <summary>The caller that a ticket of this scheme is for.</summary>
    public static Caller CallerOf(AuthenticationTicket ticket) => ticket.Properties.GetParameter<Caller>(CallerOfTicket)!;

    /// <summary>Finds the caller of the key; fails for a key that is unknown, has expired, or is one of several.</summary>
    protected override Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (!Request.Headers.TryGetValue(Header, out StringValues key))
        {
            return Task.FromResult(AuthenticateResult.NoResult());
        }

        AccessPolicy policy = policies.Current;
        if (key.Count != 1 || (policy.CallerOf(key.ToString(), clock.GetUtcNow()) ?? PageOf(policy, key.ToString())) is not { } caller)
        {
            return Task.FromResult(AuthenticateResult.Fail("The key is not known here, or no longer."));
        }

        AuthenticationProperties properties = new();
        properties.SetParameter(CallerOfTicket, caller);
        ClaimsPrincipal principal = new(new ClaimsIdentity([new Claim(ClaimTypes.Name, caller.Name)], SchemeName));
        return Task.FromResult(AuthenticateResult.Success(new AuthenticationTicket(principal, properties, SchemeName)));
    }

    // Each shopper has limits of their own, and all share the workers that pages get.
    private Caller? PageOf(AccessPolicy policy, string key) =>
        policy.Pages.TryGetValue(key, out PageKey? page)
            ? new Caller($"page {page.Name} {CallerAddress.Of(Context)}", page.Grant)
            {
                IsKnown = true,
                IsGuest = true,
                Page = page,
            }
            : null;
}
