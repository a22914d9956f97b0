namespace CushionService.Tests.Hosting;

/// <summary>Throws after a call during which the service has logged an error, so that no test passes over one.</summary>
internal sealed class ErrorWatch(ServerErrors errors, bool mayFail) : DelegatingHandler
{
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        HttpResponseMessage response = await base.SendAsync(request, cancellationToken);
        return mayFail || errors.Logged.Count == 0
            ? response
            : throw new InvalidOperationException($"The service logged errors: {string.Join('\n', errors.Logged)}");
    }
}
