using CushionService.Rejections;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace CushionService.Admission;

/// <summary>Registers admission: the limits, the turns and the workers.</summary>
internal static class AdmissionSetup
{
    /// <summary>Adds the services. Options outside their range stop the start.</summary>
    /// <param name="builder">Its configuration decides whether limits are shared: without <c>Admission:Redis</c> no
    /// connection is made.</param>
    public static void AddAdmission(this WebApplicationBuilder builder)
    {
        builder
            .Services.AddOptions<AdmissionOptions>()
            .BindConfiguration(AdmissionOptions.Section)
            .ValidateDataAnnotations()
            .ValidateOnStart();
        builder.Services.AddOptions<RetryOptions>().BindConfiguration(AdmissionOptions.Section).ValidateDataAnnotations().ValidateOnStart();
        builder.Services.AddSingleton(Random.Shared);
        builder.Services.AddSingleton<RetryDelay>();
        builder.Services.AddSingleton<Turns>();
        builder.Services.AddSingleton<WorkLimits>();
        if (!string.IsNullOrEmpty(builder.Configuration[$"{AdmissionOptions.Section}:{nameof(AdmissionOptions.Redis)}"]))
        {
            builder.Services.TryAddSingleton(TimeProvider.System);
            builder.Services.AddSingleton<SharedBuckets>();
            builder.Services.AddHealthChecks().AddCheck<SharedBucketHealth>("shared-limits");
        }

        builder.Services.AddSingleton<RateLimits>();
        builder.Services.AddSingleton<OrderDispatcher>();
    }

    /// <summary>Rejects calls beyond the limits. Comes after access, since the limits are those of the
    /// caller.</summary>
    /// <param name="app">The pipeline.</param>
    public static void UseAdmission(this WebApplication app) => app.UseMiddleware<AdmissionControl>();
}
