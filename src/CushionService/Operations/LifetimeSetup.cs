namespace CushionService.Operations;

/// <summary>Registers the start and the end: warming up, readiness, draining.</summary>
internal static class LifetimeSetup
{
    /// <summary>Adds the services. Draining comes first, so that it is the first to learn of the end.</summary>
    /// <param name="builder">Its configuration has the section <c>Lifetime</c>.</param>
    public static void AddLifetime(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<Draining>();
        builder.Services.AddHostedService(services => services.GetRequiredService<Draining>());
        builder.Services.AddHostedService<WarmUp>();
        builder.Services.AddSingleton<Readiness>();
        builder.Services.AddHealthChecks().AddCheck<Readiness>("desk").AddCheck<PriceBookHealth>("price-books");
        // After this long, calls that are still being answered are cut off.
        builder.Services.Configure<HostOptions>(options =>
            options.ShutdownTimeout = TimeSpan.FromSeconds(builder.Configuration.GetValue("Lifetime:ShutdownSeconds", 30.0))
        );
    }
}
