using Microsoft.Extensions.Options;

namespace CushionService.Operations;

/// <summary>Registers the start and the end: warming up, readiness, draining.</summary>
internal static class LifetimeSetup
{
    /// <summary>Adds the services. Draining comes first, so that it is the first to learn of the end.</summary>
    /// <param name="builder">Its configuration has the section <c>Lifetime</c>; a value out of its range stops the start.</param>
    public static void AddLifetime(this WebApplicationBuilder builder)
    {
        builder
            .Services.AddOptions<LifetimeOptions>()
            .BindConfiguration(LifetimeOptions.Section)
            .ValidateDataAnnotations()
            .ValidateOnStart();
        builder.Services.AddSingleton<Draining>();
        builder.Services.AddHostedService(services => services.GetRequiredService<Draining>());
        builder.Services.AddHostedService<WarmUp>();
        // After it, since most of what the process opens for itself is open by then.
        builder.Services.AddSingleton<ConnectionLimits>();
        builder.Services.AddHostedService(services => services.GetRequiredService<ConnectionLimits>());
        builder.Services.AddSingleton<Readiness>();
        builder.Services.AddHealthChecks().AddCheck<Readiness>("desk").AddCheck<PriceBookHealth>("price-books");
        builder
            .Services.AddOptions<HostOptions>()
            .Configure<IOptions<LifetimeOptions>>((host, own) => host.ShutdownTimeout = TimeSpan.FromSeconds(own.Value.ShutdownSeconds));
    }
}
