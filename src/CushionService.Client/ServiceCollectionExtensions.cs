using CushionService.Client;

// As the platform has it: found without a using of its own.
namespace Microsoft.Extensions.DependencyInjection;

/// <summary>Registers <see cref="CushionClient"/>.</summary>
public static class CushionClientServiceCollectionExtensions
{
    /// <summary>Adds a client with its own <see cref="HttpClient"/>, which sends rejected calls again.</summary>
    /// <param name="services">The services.</param>
    /// <param name="configure">Says where the service is.</param>
    /// <returns>The builder of the HTTP client, for handlers of your own.</returns>
    public static IHttpClientBuilder AddCushionClient(this IServiceCollection services, Action<CushionClientOptions> configure)
    {
        CushionClientOptions options = new();
        configure(options);
        return services
            .AddHttpClient<CushionClient>(http => CushionClient.Prepare(http, options))
            .AddHttpMessageHandler(() => new SendAgainHandler(options.Attempts, TimeProvider.System));
    }
}
