namespace CushionService.Operations;

/// <summary>Asks the service in the same container whether it is alive. The image has no shell and no other program
/// that could ask.</summary>
internal static class HealthProbe
{
    /// <summary>The option of the command line.</summary>
    public const string Option = "--check-health";

    /// <summary>Asks the first address of <c>MANAGEMENT_URLS</c>, or else of <c>ASPNETCORE_URLS</c>, through
    /// loopback.</summary>
    /// <returns>The exit code: 0 when the service is alive, 1 when it answers otherwise or not within four
    /// seconds.</returns>
    public static async Task<int> AskAsync()
    {
        string url = (
            Environment.GetEnvironmentVariable(ManagementPort.Setting)
            ?? Environment.GetEnvironmentVariable("ASPNETCORE_URLS")
            ?? "http://localhost:8080"
        ).Split(';')[0];
        int port = BindingAddress.Parse(url).Port;
        // A platform gives a probe a few seconds; an answer that takes longer counts as none.
        using HttpClient http = new() { Timeout = TimeSpan.FromSeconds(4) };
        try
        {
            using HttpResponseMessage answer = await http.GetAsync(new Uri($"http://127.0.0.1:{port}/health/live"));
            return answer.IsSuccessStatusCode ? 0 : 1;
        }
        catch (Exception exception) when (exception is HttpRequestException or TaskCanceledException)
        {
            return 1;
        }
    }
}
