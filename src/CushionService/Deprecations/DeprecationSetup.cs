using System.Globalization;

namespace CushionService.Deprecations;

/// <summary>Which calls are deprecated, by the configuration: <c>Deprecated:estimate:Since</c> and <c>:Sunset</c>, each a
/// day as <c>2027-03-01</c>. A call has the name of its operation in the OpenAPI document, over gRPC too.</summary>
internal static class DeprecationSetup
{
    private const string Section = "Deprecated";

    /// <summary>Adds the deprecated calls, by the names of their operations.</summary>
    /// <exception cref="InvalidDataException">A day is none, or a call would end within a year.</exception>
    public static void AddDeprecations(this WebApplicationBuilder builder) =>
        builder.Services.AddSingleton<IReadOnlyDictionary<string, Deprecation>>(
            builder.Configuration.GetSection(Section).GetChildren().ToDictionary(call => call.Key, Of)
        );

    /// <summary>Tells callers of calls that are deprecated, whatever the answer.</summary>
    public static void UseDeprecations(this IApplicationBuilder app) =>
        app.Use(
            static (http, next) =>
            {
                if (http.GetEndpoint()?.Metadata.GetMetadata<Deprecation>() is { } deprecation)
                {
                    // At the last moment: the answer to a failure begins without the headers set before.
                    http.Response.OnStarting(() =>
                    {
                        deprecation.Write(http.Response);
                        return Task.CompletedTask;
                    });
                }

                return next(http);
            }
        );

    /// <summary>Finds out whether the configuration names a call that there is not.</summary>
    /// <param name="deprecations">The deprecated calls.</param>
    /// <param name="calls">Every call.</param>
    /// <exception cref="InvalidDataException">There is no such call; says which.</exception>
    public static void CheckNames(this IReadOnlyDictionary<string, Deprecation> deprecations, IEnumerable<string> calls)
    {
        if (deprecations.Keys.Except(calls).FirstOrDefault() is { } unknown)
        {
            throw new InvalidDataException($"{Section}:{unknown} is no call; calls have the names of the document's operations.");
        }
    }

    private static Deprecation Of(IConfigurationSection call)
    {
        Deprecation deprecation = new(DayOf(call, nameof(Deprecation.Since)), DayOf(call, nameof(Deprecation.Sunset)));
        return deprecation.Sunset >= deprecation.Since.AddYears(1)
            ? deprecation
            : throw new InvalidDataException($"{call.Path}:Sunset is a year after Since, or later.");
    }

    private static DateOnly DayOf(IConfigurationSection call, string name) =>
        DateOnly.TryParseExact(call[name], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? day
            : throw new InvalidDataException($"{call.Path}:{name} is a day, as 2027-03-01, not \"{call[name]}\".");
}
