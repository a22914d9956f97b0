namespace CushionService.Operations;

/// <summary>Puts the ways in and out in their places.</summary>
internal static class LifetimeSetup
{
    public static void AddLifetime(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<Draining>();
        builder.Services.AddHostedService(services => services.GetRequiredService<Draining>());
        builder.Services.AddHostedService<WarmUp>();
        builder.Services.AddSingleton<Readiness>();
        builder.Services.AddHealthChecks().AddCheck<Readiness>("desk");
        builder.Services.Configure<HostOptions>(options =>
            options.ShutdownTimeout = TimeSpan.FromSeconds(builder.Configuration.GetValue("Lifetime:ShutdownSeconds", 30.0))
        );
    }
}
