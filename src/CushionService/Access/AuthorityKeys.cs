using Microsoft.IdentityModel.Protocols;
using Microsoft.IdentityModel.Protocols.OpenIdConnect;

namespace CushionService.Access;

/// <summary>What the authority of tokens says of itself: its name and its keys (OpenID Connect Discovery). Fetched ahead
/// and kept, so that no call waits for the authority, and tokens are verified while it is away. Only a service that has
/// never heard from it cannot tell a right token from a wrong one.</summary>
/// <param name="tokens">Where the authority is.</param>
/// <param name="clients">Makes the client that asks.</param>
/// <param name="log">Told when the authority goes away and when it is back.</param>
internal sealed partial class AuthorityKeys(TokenOptions tokens, IHttpClientFactory clients, ILogger<AuthorityKeys> log)
    : BackgroundService,
        IConfigurationManager<OpenIdConnectConfiguration>
{
    /// <summary>The name of the client that asks.</summary>
    public const string Client = "authority";

    // How long the first calls wait for the first answer.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>Seconds between two looks while the authority is away, or a token names a key that is not known.</summary>
    public const int Again = 5;

    // The same, and between two looks while all is well.
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(Again),
        Usual = TimeSpan.FromMinutes(5);

    private readonly TaskCompletionSource _first = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly SemaphoreSlim _wanted = new(0, 1);
    private volatile OpenIdConnectConfiguration? _current;

    /// <summary>Whether the last attempt failed, so that a key which is not known here may be a new one.</summary>
    public bool IsAway { get; private set; }

    /// <summary>What is known; waits a little for the first answer.</summary>
    /// <exception cref="AuthorityAwayException">The authority has never answered.</exception>
    /// <param name="cancel">The call's.</param>
    public async Task<OpenIdConnectConfiguration> GetConfigurationAsync(CancellationToken cancel)
    {
        if (_current is null)
        {
            await _first.Task.WaitAsync(Patience, cancel).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }

        return _current ?? throw new AuthorityAwayException();
    }

    /// <summary>Asks the authority again soon: a token names a key that is not known here.</summary>
    public void RequestRefresh()
    {
        // One wish is enough, however many tokens name unknown keys.
        if (_wanted.CurrentCount == 0)
        {
            _wanted.Release();
        }
    }

    /// <summary>Fetches at once, and from then on every few minutes.</summary>
    /// <param name="stoppingToken">Cancelled when the service ends.</param>
    /// <remarks>Never more often than every five seconds, whatever tokens come.</remarks>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            await FetchAsync(stoppingToken);
            _first.TrySetResult();
            await Task.Delay(Soon, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            if (!IsAway && !stoppingToken.IsCancellationRequested)
            {
                await ((Task)_wanted.WaitAsync(Usual, stoppingToken)).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
        }
    }

    /// <summary>Ends the asking.</summary>
    public override void Dispose()
    {
        _wanted.Dispose();
        base.Dispose();
    }

    private async Task FetchAsync(CancellationToken stopping)
    {
        try
        {
            using HttpClient http = clients.CreateClient(Client);
            OpenIdConnectConfiguration given = await OpenIdConnectConfigurationRetriever.GetAsync(
                $"{tokens.Authority!.TrimEnd('/')}/.well-known/openid-configuration",
                new HttpDocumentRetriever(http) { RequireHttps = !tokens.IsLocal },
                stopping
            );
            if (FaultOf(given) is { } fault)
            {
                Lost(fault);
                return;
            }

            _current = given;
            if (IsAway)
            {
                LogBack(log);
            }

            IsAway = false;
        }
        catch (Exception exception) when (!stopping.IsCancellationRequested)
        {
            Lost(exception.GetBaseException().GetType().Name);
        }
    }

    // What answers may be another than the authority, such as a page of a balancer or a server that is half set up: what it gives must
    // not take the place of keys that are good. The name must be that of its address (OpenID Connect Discovery, section 4.3), or
    // the one that it has had from the start.
    private string? FaultOf(OpenIdConnectConfiguration given) =>
        given.SigningKeys.Count == 0 ? "it gives no keys"
        : string.IsNullOrEmpty(given.Issuer) ? "it gives no name"
        : _current is { } known && given.Issuer != known.Issuer && given.Issuer.TrimEnd('/') != tokens.Authority!.TrimEnd('/')
            ? "it gives another name than before"
        : null;

    private void Lost(string reason)
    {
        FailedAttempts.CountAuthority();
        if (!IsAway)
        {
            LogAway(log, reason, _current is null ? "answered with 503" : "verified with the keys it gave before");
        }

        IsAway = true;
    }

    [LoggerMessage(LogLevel.Warning, "The authority of tokens does not answer as it should ({Reason}); tokens are {Kept}")]
    private static partial void LogAway(ILogger log, string reason, string kept);

    [LoggerMessage(LogLevel.Information, "The authority of tokens answers again")]
    private static partial void LogBack(ILogger log);
}
