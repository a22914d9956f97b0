using System.Security.Claims;
using CushionService.Engine.Messages;
using CushionService.Rejections;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.JwtBearer;
using Microsoft.IdentityModel.Tokens;

namespace CushionService.Access;

/// <summary>Finds out who calls, and admits the call when the caller has its scope. The same for REST and gRPC: to
/// both, a key or a token is a header. Rejections are those of RFC 6750.</summary>
/// <param name="next">The rest of the pipeline.</param>
/// <param name="policies">Who may call, as configured now.</param>
/// <param name="failures">Addresses that come with wrong keys or tokens.</param>
/// <param name="retry">When a rejected caller may try again.</param>
/// <param name="authority">Present when an authority of tokens is configured.</param>
internal sealed class AccessControl(
    RequestDelegate next,
    AccessPolicyMonitor policies,
    FailedAttempts failures,
    RetryDelay retry,
    AuthorityKeys? authority = null
)
{
    private const string Bearer = "Bearer ";

    /// <summary>Passes a call on with its <see cref="Caller"/> among the features, or rejects it: with 401 when the
    /// caller is not known, or has shown neither key nor token where one is needed; with 403 when a known caller lacks
    /// the scope; with 503 when the authority of tokens is away and the token cannot be judged; with 429 when the address
    /// has failed too often.</summary>
    /// <param name="http">The call, its endpoint known; one whose endpoint names no scope passes without a
    /// caller.</param>
    public async Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint()?.Metadata.GetMetadata<RequiresScopeAttribute>() is not { } needs)
        {
            await next(http);
            return;
        }

        bool hasKey = http.Request.Headers.ContainsKey(KeyHandler.Header),
            hasToken = HasToken(http);
        AccessPolicy policy = policies.Current;
        string address = CallerAddress.Of(http);
        if (!hasKey && !hasToken)
        {
            await AdmitAsync(http, new Caller(address, policy.Anonymous) { IsGuest = policy.IsGuarded }, needs.Scope);
        }
        else if (hasKey && hasToken)
        {
            await RejectionWriter.UnknownCallerAsync(http, AccessTexts.KeyAndToken, "invalid_request");
        }
        // Finding a key costs next to nothing, and so a valid one is admitted whatever else comes from its address: many callers may
        // share one. Verifying a token costs more.
        else if (hasToken && !failures.MayVerify(address))
        {
            await RejectionWriter.TooManyCallsAsync(http, AccessTexts.Barred, retry.NextSeconds());
        }
        else
        {
            AuthenticateResult result = await ResultAsync(http, hasKey);
            if (result.Succeeded && CallerOf(result.Ticket, policy.Tokens) is { } caller)
            {
                await AdmitAsync(http, caller, needs.Scope);
            }
            else if (CannotJudge(result.Failure))
            {
                await RejectionWriter.AuthorityAwayAsync(http, retry.NextSeconds(AuthorityKeys.Again));
            }
            else if (failures.Count(address, hasToken))
            {
                await RejectionWriter.UnknownCallerAsync(http, AccessTexts.Unknown, "invalid_token");
            }
            else
            {
                await RejectionWriter.TooManyCallsAsync(http, AccessTexts.Barred, retry.NextSeconds());
            }
        }
    }

    // Without an authority no token can be verified.
    private Task<AuthenticateResult> ResultAsync(HttpContext http, bool hasKey) =>
        hasKey ? http.AuthenticateAsync(KeyHandler.SchemeName)
        : authority is null ? Task.FromResult(AuthenticateResult.Fail("There is no authority of tokens."))
        : TokenResultAsync(http, authority);

    // The handler would log an authority that is away as an error of each call.
    private static async Task<AuthenticateResult> TokenResultAsync(HttpContext http, AuthorityKeys authority)
    {
        try
        {
            await authority.GetConfigurationAsync(http.RequestAborted);
        }
        catch (AuthorityAwayException away)
        {
            return AuthenticateResult.Fail(away);
        }

        return await http.AuthenticateAsync(JwtBearerDefaults.AuthenticationScheme);
    }

    // A key that is not known here may be a new one while the authority cannot be asked.
    private bool CannotJudge(Exception? failure) =>
        failure is AuthorityAwayException || (failure is SecurityTokenSignatureKeyNotFoundException && authority is { IsAway: true });

    private async Task AdmitAsync(HttpContext http, Caller caller, Scopes needed)
    {
        if (caller.Page is { } page && !page.Origins.Contains(http.Request.Headers.Origin.ToString()))
        {
            await RejectionWriter.ForbiddenAsync(http, AccessTexts.OtherOrigin, ScopeNames.Of(needed));
            return;
        }

        // A page's key also opens the calls that pages make, whatever its scopes.
        if (caller.Grant.Scopes.HasFlag(needed) || (caller.Page is not null && IsOfPages(http)))
        {
            http.Features.Set(caller);
            await next(http);
            return;
        }

        string scope = ScopeNames.Of(needed);
        Message why = AccessTexts.NeedsScope(scope);
        await (caller.IsKnown ? RejectionWriter.ForbiddenAsync(http, why, scope) : RejectionWriter.UnknownCallerAsync(http, why));
    }

    private static bool IsOfPages(HttpContext http) =>
        http.GetEndpoint()?.Metadata.GetMetadata<PageCallAttribute>()?.Admits(http.Request) == true;

    private static Caller? CallerOf(AuthenticationTicket ticket, Grant limits) =>
        ticket.AuthenticationScheme == KeyHandler.SchemeName ? KeyHandler.CallerOf(ticket) : CallerOf(ticket.Principal, limits);

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
