using Microsoft.Extensions.DependencyInjection;

namespace CushionService.Tests.Hosting;

/// <summary>A service whose desk cannot even be made, for what callers are told then.</summary>
internal static class FailingDesk
{
    public const string Secret = "the drawer with the scissors is stuck";

    public static void AddFailingDesk(this IServiceCollection services) =>
        services.AddSingleton<OrderDesk>(_ => throw new InvalidOperationException(Secret));
}
