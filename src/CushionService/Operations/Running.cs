namespace CushionService.Operations;

/// <summary>Runs a host until it has to end.</summary>
internal static class Running
{
    /// <summary>Runs until the process is to end; ends without a fault also when it has to while it starts.</summary>
    public static async Task RunToEndAsync(this WebApplication app)
    {
        CancellationToken stopping = app.Lifetime.ApplicationStopping;
        try
        {
            await app.RunAsync();
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
            // The host gives its start up that way.
        }
    }
}
