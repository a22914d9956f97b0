namespace CushionService.Admission;

/// <summary>Puts admission in its place.</summary>
internal static class AdmissionSetup
{
    public static void AddAdmission(this WebApplicationBuilder builder)
    {
        builder
            .Services.AddOptions<AdmissionOptions>()
            .BindConfiguration(AdmissionOptions.Section)
            .ValidateDataAnnotations()
            .ValidateOnStart();
        builder.Services.AddSingleton<WorkerPool>();
        builder.Services.AddSingleton<RateLimits>();
        builder.Services.AddSingleton<OrderDispatcher>();
    }

    public static void UseAdmission(this WebApplication app) => app.UseMiddleware<AdmissionControl>();
}
