using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.HttpOverrides;

namespace CushionService.Access;

/// <summary>Registers access: keys, tokens, the origins of pages, and the proxies that are believed.</summary>
internal static class AccessSetup
{
    /// <summary>Adds the services. A wrong configuration stops the start.</summary>
    /// <param name="builder">The service; its configuration has the section <c>Access</c>.</param>
    public static void AddAccess(this WebApplicationBuilder builder)
    {
        // A file of its own for keys, such as a mounted secret, is read after the rest and watched.
        if (builder.Configuration["Access:File"] is { } file)
        {
            AccessFile.Add(builder.Configuration, file);
        }

        builder.Services.AddSingleton<AccessPolicyMonitor>();
        builder.Services.AddSingleton<FailedAttempts>();
        builder.Services.AddSingleton(TimeProvider.System);
        builder.AddOrigins();
        AuthenticationBuilder schemes = builder.Services.AddAuthentication();
        schemes.AddScheme<AuthenticationSchemeOptions, KeyHandler>(KeyHandler.SchemeName, null);
        TokenOptions tokens = builder.Configuration.GetSection("Access:Tokens").Get<TokenOptions>() ?? new();
        if (tokens.Authority is not null)
        {
            builder.AddTokens(schemes, tokens);
        }

        System.Net.IPNetwork[] proxies = Proxies.Of(builder.Configuration);
        builder.Services.Configure<ForwardedHeadersOptions>(options =>
        {
            options.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            // The defaults believe loopback: here only what is configured is believed.
            options.KnownProxies.Clear();
            options.KnownIPNetworks.Clear();
            foreach (System.Net.IPNetwork proxy in proxies)
            {
                options.KnownIPNetworks.Add(proxy);
            }
        });
    }

    /// <summary>Takes the caller's address and scheme from the headers of a known proxy. Comes first, since limits are
    /// counted by address.</summary>
    /// <param name="app">The pipeline.</param>
    public static void UseProxies(this WebApplication app)
    {
        // Without a known proxy no header is believed about where a call comes from.
        if (app.Configuration.GetSection("Access:Proxies").Exists())
        {
            app.UseForwardedHeaders();
        }
    }

    /// <summary>Authenticates callers, and rejects those without the scope of their call.</summary>
    /// <param name="app">The pipeline; comes after routing, since the endpoint names the scope.</param>
    public static void UseAccess(this WebApplication app)
    {
        // Made now, so that a wrong configuration stops the start and not the first call.
        _ = app.Services.GetRequiredService<AccessPolicyMonitor>();
        app.UseMiddleware<AccessControl>();
    }
}
